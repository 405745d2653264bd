namespace Loadmark.Planning.Splitting;

/// <summary>Which of some things have to do with one another, directly or by way of others.</summary>
/// <remarks>A disjoint-set forest: Galler and Fischer, "An Improved Equivalence Algorithm", Communications of the ACM 7, 1964.</remarks>
internal sealed class Ties
{
    private readonly int[] _above;

    /// <summary>Begins with nothing tied.</summary>
    public Ties(int count) => _above = [.. Enumerable.Range(0, count)];

    /// <summary>Ties two things, and with them all that is tied to either.</summary>
    public void Tie(int one, int other)
    {
        var (first, second) = (HeadOf(one), HeadOf(other));
        _above[Math.Max(first, second)] = Math.Min(first, second);
    }

    /// <summary>The first of all that are tied to a thing: the same for each of them.</summary>
    public int HeadOf(int one)
    {
        while (_above[one] != one)
            one = _above[one] = _above[_above[one]];
        return one;
    }
}
