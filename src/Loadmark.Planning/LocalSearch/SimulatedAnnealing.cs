using System.Runtime.InteropServices;
using Loadmark.Planning.Objective;

namespace Loadmark.Planning.LocalSearch;

/// <summary>
/// Improves a wiring by small changes taken at random, at first worse ones too and fewer and fewer of them as it cools: what
/// counts most is decided first. The same start and seed give the same wiring.
/// </summary>
/// <remarks>Kirkpatrick, Gelatt and Vecchi, "Optimization by Simulated Annealing", Science 220, 1983.</remarks>
internal sealed class SimulatedAnnealing
{
    /// <summary>Cold enough that nothing worse is taken any more, not even in the least of the levels.</summary>
    private const double Coldest = 0.004;

    /// <summary>The clock is asked once in so many changes.</summary>
    private const int Patience = 256;

    private readonly WiringSpace _space;
    private LiveWiring _wiring;
    private Move _move;
    private readonly Weights _weights;
    private readonly Random _random;
    private readonly Func<bool> _isOver;
    private readonly List<int> _inCase = [];
    private readonly List<int> _other = [];
    private double _cost;
    private FoundWiring _lately;

    /// <summary>Prepares to improve a wiring.</summary>
    /// <param name="space">What wirings are made of.</param>
    /// <param name="wiring">The wiring to improve.</param>
    /// <param name="seed">The same seed takes the same changes.</param>
    /// <param name="isOver">Whether to stop.</param>
    public SimulatedAnnealing(WiringSpace space, LiveWiring wiring, int seed, Func<bool> isOver)
    {
        _space = space;
        _wiring = wiring;
        _move = new Move(wiring);
        _weights = new Weights(wiring.Count);
        _random = new Random(seed);
        _isOver = isOver;
        Best = _lately = FoundWiring.Of(wiring);
    }

    /// <summary>How many loads there are.</summary>
    public int Loads => _wiring.Count;

    /// <summary>The best wiring of all that it met.</summary>
    public FoundWiring Best { get; private set; }

    /// <summary>How many loads are dark in the best wiring since it last began.</summary>
    public long Dark => _lately.Levels[(int)Level.Unfed];

    /// <summary>Begins anew, with other changes than before; the best wiring is kept.</summary>
    public void Restart() => BeginFrom(GreedyWiring.Of(_space));

    /// <summary>Goes on from a wiring that was found otherwise, if it is better than the best.</summary>
    /// <returns>Whether it is.</returns>
    public bool Take(FoundWiring found)
    {
        if (found.Levels.AsSpan().SequenceCompareTo(Best.Levels) >= 0)
            return false;
        Best = found;
        BeginFrom(found.Live(_space));
        return true;
    }

    /// <summary>Improves until nothing can be better, or for so many changes.</summary>
    /// <param name="ideal">A vector of levels that none is better than.</param>
    /// <param name="changes">How many changes to try.</param>
    /// <param name="last">The last level that counts; those after it need not be reached.</param>
    /// <param name="warmth">How warm to begin, in the costs of <see cref="Weights"/>; null for as warm as the first level that is not
    /// reached needs.</param>
    /// <returns>Whether the vector is reached.</returns>
    public bool Run(ReadOnlySpan<long> ideal, int changes, Level last = Level.Capacity, double? warmth = null)
    {
        ideal = ideal[..((int)last + 1)];
        if (Reaches(ideal))
            return true;

        var isCrowding = last == Level.Unfed && warmth is null;
        var heat = isCrowding ? 0.25 * _weights[last] : warmth ?? Hottest(ideal);
        var coldest = isCrowding ? 0.005 * _weights[last] : Coldest;
        var cooling = Math.Pow(coldest / heat, 1.0 / changes);
        _cost = CostNow();
        for (var change = 0; change < changes; change++, heat *= cooling)
        {
            if (change % Patience == 0 && _isOver())
                return false;
            _move.Begin();
            if (!Try(isCrowding))
            {
                _move.Undo();
                continue;
            }

            var cost = CostNow();
            if (cost > _cost && _random.NextDouble() >= Math.Exp((_cost - cost) / heat))
            {
                _move.Undo();
                continue;
            }

            _cost = cost;
            if (_wiring.Levels.Values.SequenceCompareTo(_lately.Levels) < 0)
            {
                _lately = FoundWiring.Of(_wiring);
                if (_lately.Levels.AsSpan().SequenceCompareTo(Best.Levels) < 0)
                    Best = _lately;
                if (Reaches(ideal))
                    return true;
            }
        }

        return false;

        double CostNow() => isCrowding ? _weights.CrowdingCostOf(_wiring) : _weights.CostOf(_wiring);
    }

    private void BeginFrom(LiveWiring wiring)
    {
        _wiring = wiring;
        _move = new Move(_wiring);
        _lately = FoundWiring.Of(_wiring);
    }

    private bool Reaches(ReadOnlySpan<long> ideal) => _lately.Levels.AsSpan(0, ideal.Length).SequenceCompareTo(ideal) <= 0;

    /// <summary>Warm enough to trade the first level that is not the best yet, not those before it.</summary>
    private double Hottest(ReadOnlySpan<long> ideal)
    {
        var level = 0;
        while (_lately.Levels[level] == ideal[level])
            level++;
        return Math.Max(0.4 * _weights[(Level)level], 0.05);
    }

    private bool Try(bool isCrowding) => _random.Next(!isCrowding && _wiring.Levels[Level.Unfed] > 0 ? 110 : 100) switch
    {
        < 45 => Relocate(),
        < 80 => Exchange(),
        < 92 => Shift(),
        < 100 => ExchangeStands(),
        _ => Substitute(),
    };

    /// <summary>
    /// A dark load is fed anywhere, and another goes dark for it, whose place then is free. While nothing counts but how many are
    /// dark an exchange does as well.
    /// </summary>
    private bool Substitute()
    {
        var other = _random.Next(_wiring.Count);
        if (_wiring.FeedOf(other) is null)
            return false;
        var dark = _random.Next(_wiring.Count);
        while (_wiring.FeedOf(dark) is not null)
            dark = (dark + 1) % _wiring.Count;
        _move.Take(other);
        if (_wiring.Feeds.Count > 0 && _random.Next(2) == 0)
            return _move.Put(dark, _wiring.Feeds[_random.Next(_wiring.Feeds.Count)]);
        var placements = _space.Placements[_wiring.GroupOf(dark).Index];
        if (placements.Length == 0)
            return false;
        var placement = placements[_random.Next(placements.Length)];
        return _move.Put(dark, placement.FeedSite, placement.Ends);
    }

    /// <summary>One load to another feed, or to one of its own.</summary>
    private bool Relocate()
    {
        var load = _random.Next(_wiring.Count);
        var from = _wiring.FeedOf(load);
        if (_wiring.HasHomes && _space.HomeOf(_wiring.GroupOf(load)) is { } home && _random.Next(4) == 0)
            return GoHome(load, home);
        if (_wiring.Feeds.Count > 0 && _random.Next(2) == 0)
        {
            var to = _wiring.Feeds[_random.Next(_wiring.Feeds.Count)];
            if (to == from || to.FeedSite.CostOf(_wiring.GroupOf(load).Index, to.Ends) is null)
                return false;
            _move.Take(load);
            return _move.Put(load, to);
        }

        var placements = _space.Placements[_wiring.GroupOf(load).Index];
        if (placements.Length == 0)
            return false;
        var placement = placements[_random.Next(placements.Length)];
        if (from?.Loads.Count != 1 && !_wiring.IsFree(placement.FeedSite))
            return false;
        _move.Take(load);
        return _move.Put(load, placement.FeedSite, placement.Ends);
    }

    /// <summary>One load back to where it is plugged in now.</summary>
    private bool GoHome(int load, Placement home)
    {
        if (_wiring.FeedOf(load)?.FeedSite == home.FeedSite)
            return false;
        _move.Take(load);
        if (_move.Put(load, home.FeedSite, home.Ends))
            return true;
        foreach (var feed in _wiring.Feeds)
        {
            if (feed.FeedSite == home.FeedSite && feed.Ends == home.Ends)
                return _move.Put(load, feed);
        }

        return false;
    }

    /// <summary>Two loads change places; one of them may be dark.</summary>
    private bool Exchange()
    {
        var one = _random.Next(_wiring.Count);
        var other = _random.Next(_wiring.Count);
        var (from, to) = (_wiring.FeedOf(one), _wiring.FeedOf(other));
        if (from == to || _wiring.GroupOf(one) == _wiring.GroupOf(other) || IsShut(one, to) || IsShut(other, from))
            return false;
        _move.Take(one);
        _move.Take(other);
        return PutBeside(one, to) && PutBeside(other, from);
    }

    /// <summary>Whether a load suits what stays of a feed in no case.</summary>
    private bool IsShut(int load, LiveFeed? feed) =>
        feed?.Loads.Count > 1 && feed.FeedSite.CostOf(_wiring.GroupOf(load).Index, feed.Ends) is null;

    /// <summary>A load on what is left of a feed, or in its place where nothing is left.</summary>
    private bool PutBeside(int load, LiveFeed? feed)
    {
        if (feed is null)
            return true;
        if (feed.Loads.Count > 0)
            return _move.Put(load, feed);
        if (_move.Put(load, feed.FeedSite, feed.Ends))
            return true;
        for (var ends = 0; ends < _space.Ends.Length; ends++)
        {
            if (ends != feed.Ends && _move.Put(load, feed.FeedSite, ends))
                return true;
        }

        return false;
    }

    /// <summary>All loads of a feed to another outlet, or onto another feed.</summary>
    private bool Shift()
    {
        if (_wiring.Feeds.Count == 0)
            return false;
        var feed = _wiring.Feeds[_random.Next(_wiring.Feeds.Count)];
        var placements = _space.Placements[_wiring.GroupOf(feed.Loads[0]).Index];
        var placement = placements[_random.Next(placements.Length)];
        if (placement.FeedSite == feed.FeedSite)
            return false;
        TakeAll(feed, _inCase);
        return _move.Put(CollectionsMarshal.AsSpan(_inCase), placement.FeedSite, placement.Ends);
    }

    /// <summary>Two feeds change outlets.</summary>
    private bool ExchangeStands()
    {
        if (_wiring.Feeds.Count < 2)
            return false;
        var one = _wiring.Feeds[_random.Next(_wiring.Feeds.Count)];
        var other = _wiring.Feeds[_random.Next(_wiring.Feeds.Count)];
        if (one == other || one.FeedSite == other.FeedSite || (one.Loads.Count == 1 && other.Loads.Count == 1))
            return false;
        TakeAll(one, _inCase);
        TakeAll(other, _other);
        return _move.Put(CollectionsMarshal.AsSpan(_inCase), other.FeedSite, one.Ends)
            && _move.Put(CollectionsMarshal.AsSpan(_other), one.FeedSite, other.Ends);
    }

    private void TakeAll(LiveFeed feed, List<int> loads)
    {
        loads.Clear();
        loads.AddRange(feed.Loads);
        foreach (var load in loads)
            _move.Take(load);
    }
}
