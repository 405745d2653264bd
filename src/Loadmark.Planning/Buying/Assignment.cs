namespace Loadmark.Planning.Buying;

/// <summary>
/// Gives things that there are so many of to those who can take them, each to one: a transportation problem, by augmenting paths
/// (L. R. Ford and D. R. Fulkerson, Maximal flow through a network, Canad. J. Math. 8, 1956).
/// </summary>
internal sealed class Assignment
{
    private readonly Func<int, int, bool> _suits;
    private readonly int[] _free;
    private readonly int[,] _given;

    /// <summary>Begins with nothing given.</summary>
    /// <param name="counts">How many there are of each, 0 or more.</param>
    /// <param name="takers">How many can take.</param>
    /// <param name="suits">Whether one of the first place suits the taker of the second.</param>
    public Assignment(IEnumerable<int> counts, int takers, Func<int, int, bool> suits)
    {
        _suits = suits;
        _free = [.. counts];
        _given = new int[_free.Length, takers];
    }

    /// <summary>Gives some to a taker. False where it cannot have as many, beside what the others have.</summary>
    /// <param name="taker">The taker.</param>
    /// <param name="count">How many, 0 or more.</param>
    public bool TryGive(int taker, int count)
    {
        for (var one = 0; one < count; one++)
        {
            if (!Give(taker, new bool[_free.Length]))
                return false;
        }

        return true;
    }

    /// <summary>Gives one to a taker: a free one, or one whose holder can have another.</summary>
    private bool Give(int taker, bool[] tried)
    {
        for (var place = 0; place < _free.Length; place++)
        {
            if (tried[place] || !_suits(place, taker))
                continue;
            tried[place] = true;
            if (_free[place] == 0 && !TakeBack(place, tried))
                continue;
            _free[place]--;
            _given[place, taker]++;
            return true;
        }

        return false;
    }

    /// <summary>Frees one by giving its holder another.</summary>
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
