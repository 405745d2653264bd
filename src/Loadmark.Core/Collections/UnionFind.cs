namespace Loadmark.Core.Collections;

/// <summary>Things that are joined into groups, directly or by way of others; each group is known by one of its things.</summary>
/// <remarks>A disjoint-set forest: Galler and Fischer, "An Improved Equivalence Algorithm", Communications of the ACM 7, 1964.</remarks>
/// <typeparam name="T">What is joined.</typeparam>
/// <param name="comparer">Tells which things are the same; null for the usual equality, which of texts is ordinal.</param>
public sealed class UnionFind<T>(IEqualityComparer<T>? comparer = null)
    where T : notnull
{
    private readonly IEqualityComparer<T> _comparer = comparer ?? EqualityComparer<T>.Default;
    private readonly Dictionary<T, T> _joinedTo = new(comparer);

    /// <summary>Joins the groups of two things; the group is then known by what the first one's was known by.</summary>
    /// <param name="one">The first.</param>
    /// <param name="other">The second; in the same group already, nothing changes.</param>
    public void Join(T one, T other)
    {
        var (first, second) = (Find(one), Find(other));
        if (!_comparer.Equals(first, second))
            _joinedTo[second] = first;
    }

    /// <summary>What the group of a thing is known by: the same for all that are joined with it, itself where nothing is.</summary>
    /// <param name="thing">The thing, whether it was joined with any or not.</param>
    public T Find(T thing)
    {
        // Each step halves the path behind it, or a long chain would be walked again and again.
        while (_joinedTo.TryGetValue(thing, out var next))
        {
            if (_joinedTo.TryGetValue(next, out var beyond))
                _joinedTo[thing] = beyond;
            thing = next;
        }

        return thing;
    }
}
