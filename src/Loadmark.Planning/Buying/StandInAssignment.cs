namespace Loadmark.Planning.Buying;

/// <summary>
/// Gives supplies of one basket to those of another that they can stand in for, each to one: a transportation problem, by augmenting paths
/// (L. R. Ford and D. R. Fulkerson, Maximal flow through a network, Canad. J. Math. 8, 1956).
/// </summary>
internal sealed class StandInAssignment
{
    private readonly bool[,] _order;
    private readonly int[] _kinds;
    private readonly int[] _free;
    private readonly int[,] _given;

    /// <summary>Begins with nothing given.</summary>
    /// <param name="basket">What stands in.</param>
    /// <param name="order">Whether one supply of the first index can stand in for one of the second.</param>
    public StandInAssignment(Basket basket, bool[,] order)
    {
        _order = order;
        _kinds = [.. basket.Kinds];
        _free = Array.ConvertAll(_kinds, kind => basket.Counts[kind]);
        _given = new int[_kinds.Length, order.GetLength(0)];
    }

    /// <summary>Gives some to so many of a kind. False where they cannot all have one, beside those that have one.</summary>
    /// <param name="kind">The kind, by its place in the order.</param>
    /// <param name="count">How many, 0 or more.</param>
    public bool TryGive(int kind, int count)
    {
        for (var one = 0; one < count; one++)
        {
            if (!Give(kind, new bool[_kinds.Length]))
                return false;
        }

        return true;
    }

    /// <summary>Gives one to a kind: a free one, or one whose holder can have another.</summary>
    private bool Give(int kind, bool[] tried)
    {
        for (var place = 0; place < _kinds.Length; place++)
        {
            if (tried[place] || !_order[_kinds[place], kind])
                continue;
            tried[place] = true;
            if (_free[place] == 0 && !TakeBack(place, tried))
                continue;
            _free[place]--;
            _given[place, kind]++;
            return true;
        }

        return false;
    }

    /// <summary>Frees one of a kind by giving its holder another.</summary>
    private bool TakeBack(int place, bool[] tried)
    {
        for (var holder = 0; holder < _given.GetLength(1); holder++)
        {
            if (_given[place, holder] == 0 || !Give(holder, tried))
                continue;
            _given[place, holder]--;
            _free[place]++;
            return true;
        }

        return false;
    }
}
