namespace Loadmark.Planning.Model;

/// <summary>What the search came to.</summary>
/// <param name="Values">The best solution: the variables' values by their indices; null where only its levels are known.</param>
/// <param name="Levels">The levels of that solution.</param>
/// <param name="Gaps">For each level how far the solution may be from the best; null when nothing is proven of it.</param>
internal sealed record ModelAnswer(long[]? Values, long[] Levels, long?[] Gaps)
{
    /// <summary>Whether nothing is better.</summary>
    public bool IsProven => Gaps.All(static gap => gap == 0);

    /// <summary>The first levels of a vector that no solution's is before in order.</summary>
    public long[] ObjectiveBounds()
    {
        var bounds = new List<long>();
        foreach (var (value, gap) in Levels.Zip(Gaps))
        {
            if (gap is not { } known)
                break;
            bounds.Add(value - known);
            if (known > 0)
                break;
        }

        return [.. bounds];
    }
}
