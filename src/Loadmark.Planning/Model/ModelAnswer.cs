namespace Loadmark.Planning.Model;

/// <summary>What the search came to.</summary>
/// <param name="Values">The best solution: the variables' values by their indices.</param>
/// <param name="Gaps">For each level how far the solution may be from the best; null when nothing is proven of it.</param>
internal sealed record ModelAnswer(long[] Values, long?[] Gaps)
{
    /// <summary>Whether nothing is better.</summary>
    public bool IsProven => Gaps.All(static gap => gap == 0);

    /// <summary>The levels of the solution.</summary>
    public long[] LevelsIn(WiringModel model) => [.. Enum.GetValues<Level>().Select(level => model[level].ValueIn(Values))];
}
