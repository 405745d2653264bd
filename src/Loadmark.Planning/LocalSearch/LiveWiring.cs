using Loadmark.Core.Fits;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>
/// A wiring that changes load by load and keeps every demand at every moment; it knows at once what each level of the
/// objective comes to. Pinned feeds take their share of totals, and their loads are counted on the returns that they share.
/// </summary>
internal sealed class LiveWiring
{
    private readonly WiringSpace _space;
    private readonly LoadGroup[] _loads;
    private readonly TotalLimit[] _limits;
    private readonly (long Run, long Start)[] _totals;
    private readonly ReturnOccupancy[] _returns;
    private readonly int[] _free;
    private readonly int[] _leads;
    private readonly LiveFeed?[] _feedOf;
    private readonly List<LiveFeed> _feeds = [];

    /// <summary>Begins with every load dark.</summary>
    public LiveWiring(WiringSpace space)
    {
        _space = space;
        _loads = [.. space.Loads];
        Levels = new LiveLevels(space.Kinds, _loads);
        _limits = [.. space.Problem.Totals];
        _totals = new (long, long)[_limits.Length];
        _free = [.. space.Problem.Outlets.Select(static group => group.Count)];
        _leads = [.. space.Kinds.Select(static kind => kind.Count)];
        _feedOf = new LiveFeed?[_loads.Length];
        _returns = new ReturnOccupancy[space.Returns.Length];
        for (var place = 0; place < _returns.Length; place++)
        {
            foreach (var occupant in space.Problem.PinnedOccupants(space.Returns[place]))
                _returns[place].Change(occupant, 1);

            Levels.Count(_returns[place], 1);
        }

        for (var total = 0; total < _limits.Length; total++)
            Levels.Count(_limits[total], _totals[total].Run, 1);
        foreach (var load in _loads)
            Levels.CountDark(load, 1);
    }

    /// <summary>What each level comes to.</summary>
    public LiveLevels Levels { get; }

    /// <summary>The feeds of the wiring as it is now.</summary>
    public IReadOnlyList<LiveFeed> Feeds => _feeds;

    /// <summary>Whether as few as possible of the loads that are wired now are to be moved.</summary>
    public bool HasHomes => _space.Problem.Homes is not null;

    /// <summary>How many loads there are.</summary>
    public int Count => _loads.Length;

    /// <summary>The group of a load.</summary>
    public LoadGroup GroupOf(int load) => _loads[load];

    /// <summary>The feed of a load; null where it is dark.</summary>
    public LiveFeed? FeedOf(int load) => _feedOf[load];

    /// <summary>Feeds a dark load from outlets that are free, if nothing forbids it.</summary>
    public bool Open(int load, FeedSite site, int ends)
    {
        if (!IsFree(site))
            return false;

        var feed = new LiveFeed(site, ends) { Kind = -1, Place = _feeds.Count };
        TakeOutlets(site, 1);
        _feeds.Add(feed);
        if (Add(load, feed))
            return true;
        Close(feed);
        return false;
    }

    /// <summary>Puts a dark load on a feed, if nothing forbids it.</summary>
    public bool Add(int load, LiveFeed feed)
    {
        var group = _loads[load];
        if (feed.FeedSite.CostOf(group.Index, feed.Ends) is not { } cost || !Bears(feed, group)
            || LeadFor(feed, feed.Loads.Count + 1, load) is not { } kind)
            return false;

        Add(load, feed, cost, kind);
        return true;
    }

    /// <summary>Puts a load back on the feed that it was taken from, just as that was then.</summary>
    /// <param name="load">The load, dark now.</param>
    /// <param name="feed">The feed; gone where nothing is left on it.</param>
    /// <param name="kind">The kind of lead that it had.</param>
    public void PutBack(int load, LiveFeed feed, int kind)
    {
        if (feed.Loads.Count == 0)
        {
            feed.Place = _feeds.Count;
            TakeOutlets(feed.FeedSite, 1);
            _feeds.Add(feed);
        }

        Add(load, feed, feed.FeedSite.CostOf(_loads[load].Index, feed.Ends)!.Value, kind);
    }

    /// <summary>Gives a feed another kind of lead, which must be there and do.</summary>
    public void Change(LiveFeed feed, int kind)
    {
        Levels.Count(feed, -1);
        Use(feed, kind);
        Levels.Count(feed, 1);
    }

    private void Add(int load, LiveFeed feed, LoadCost cost, int kind)
    {
        var group = _loads[load];
        Levels.Count(feed, -1);
        Take(feed, group, 1);
        feed.Loads.Add(load);
        feed.Margins += cost.Margins;
        feed.Doubts += cost.Doubts;
        feed.Wired += group.IsWired ? 1 : 0;
        Use(feed, kind);
        Levels.Count(feed, 1);
        Levels.CountDark(group, -1);
        _feedOf[load] = feed;
    }

    /// <summary>Takes a load off its feed; a feed without loads is gone.</summary>
    public void Remove(int load)
    {
        var feed = _feedOf[load]!;
        var group = _loads[load];
        Levels.Count(feed, -1);
        Take(feed, group, -1);
        feed.Loads.Remove(load);
        var cost = feed.FeedSite.CostOf(group.Index, feed.Ends)!.Value;
        feed.Margins -= cost.Margins;
        feed.Doubts -= cost.Doubts;
        feed.Wired -= group.IsWired ? 1 : 0;
        _feedOf[load] = null;
        Levels.CountDark(group, 1);
        if (feed.Loads.Count == 0)
        {
            Use(feed, -1);
            Close(feed);
            return;
        }

        if (HasHomes || _space.Kinds[feed.Kind].Least > feed.Loads.Count)
            Use(feed, LeadFor(feed, feed.Loads.Count, feed.Loads[0])!.Value);
        Levels.Count(feed, 1);
    }

    /// <summary>Whether the outlets of a site are free.</summary>
    public bool IsFree(FeedSite site)
    {
        var legs = site.Legs;
        var first = legs[0].Part.Group.Index;
        if (legs.Length == 1)
            return _free[first] >= site.OutletsALeg;
        var second = legs[1].Part.Group.Index;
        return first == second ? _free[first] >= 2 : _free[first] >= 1 && _free[second] >= 1;
    }

    private bool Bears(LiveFeed feed, LoadGroup load)
    {
        var site = feed.FeedSite;
        if (feed.Loads.Count > 0 && (!site.AllowsSeveral || !load.IsDrawKnown || !_loads[feed.Loads[0]].IsDrawKnown))
            return false;
        if (!(site.Return < 0 ? feed.Occupancy : _returns[site.Return]).Suits(site.OccupantOf(load.Index, feed.Ends)))
            return false;

        for (var place = 0; place < site.Legs.Length; place++)
        {
            if (site.Legs[place] is not { Limit: { } limit, Draws: { } draws })
                continue;
            ref readonly var sums = ref feed.Sums[place];
            if (sums.Run + draws.Run[load.Index] > limit.Most || sums.Start + draws.Start[load.Index] > limit.Peak
                || sums.After + draws.After[load.Index] > limit.Most)
                return false;
        }

        var takes = site.Totals;
        for (var place = 0; place < takes.Length; place++)
        {
            var (total, draws) = takes[place];
            var (run, start) = (draws.Run[load.Index], draws.Start[load.Index]);

            // Both legs of a pair may count against one total.
            for (var other = 0; other < place; other++)
            {
                if (takes[other].Total == total)
                {
                    run += takes[other].Draws.Run[load.Index];
                    start += takes[other].Draws.Start[load.Index];
                }
            }

            if (_totals[total].Run + run > _limits[total].Run || _totals[total].Start + start > _limits[total].Start)
                return false;
        }

        return true;
    }

    /// <summary>
    /// The kind of lead for a feed with so many loads: the one over which a load is plugged in here now; else the one it has where that
    /// will do, but for a chain with one load; else the one with the fewest plugs.
    /// </summary>
    private int? LeadFor(LiveFeed feed, int loads, int load)
    {
        if (feed.FeedSite.IsHome && HomeKind(feed, loads, load) is var home && home >= 0)
            return home;
        if (HasHomes && loads == 1 && feed.FeedSite.Joined == Joint.None && _space.Ends[feed.Ends] == LeadEnds.Plain)
            return 0;
        if (feed.Kind >= 0 && _space.Kinds[feed.Kind] is var own && own.Least <= loads && loads <= own.Plugs)
            return feed.Kind;
        foreach (var kind in _space.KindsFor(feed.FeedSite.Joined, feed.Ends))
        {
            if (_leads[kind] > 0 && _space.Kinds[kind].Least <= loads && loads <= _space.Kinds[kind].Plugs)
                return kind;
        }

        return null;
    }

    private int HomeKind(LiveFeed feed, int loads, int load)
    {
        var kind = feed.FeedSite.HomeKindOf(_loads[load].Index);
        for (var place = 0; kind < 0 && place < feed.Loads.Count; place++)
            kind = feed.FeedSite.HomeKindOf(_loads[feed.Loads[place]].Index);
        if (kind < 0 || _space.Ends.IndexOf(_space.Kinds[kind].Ends) != feed.Ends || loads > _space.Kinds[kind].Plugs)
            return -1;
        return feed.Kind == kind || _leads[kind] > 0 ? kind : -1;
    }

    private void Use(LiveFeed feed, int kind)
    {
        if (feed.Kind >= 0 && _space.Kinds[feed.Kind].IsSpecial)
            _leads[feed.Kind]++;
        feed.Kind = kind;
        if (kind >= 0 && _space.Kinds[kind].IsSpecial)
            _leads[kind]--;
    }

    private void Close(LiveFeed feed)
    {
        TakeOutlets(feed.FeedSite, -1);
        var last = _feeds[^1];
        _feeds[feed.Place] = last;
        last.Place = feed.Place;
        _feeds.RemoveAt(_feeds.Count - 1);
    }

    private void TakeOutlets(FeedSite site, int sign)
    {
        foreach (var leg in site.Legs)
            _free[leg.Part.Group.Index] -= sign * site.OutletsALeg;
    }

    private void Take(LiveFeed feed, LoadGroup load, int sign)
    {
        var site = feed.FeedSite;
        for (var place = 0; place < site.Legs.Length; place++)
        {
            if (site.Legs[place].Draws is not { } draws)
                continue;
            ref var sums = ref feed.Sums[place];
            sums.Run += sign * draws.Run[load.Index];
            sums.Start += sign * draws.Start[load.Index];
            sums.After += sign * draws.After[load.Index];
        }

        foreach (var (total, draws) in site.Totals)
        {
            Levels.Count(_limits[total], _totals[total].Run, -1);
            _totals[total].Run += sign * draws.Run[load.Index];
            _totals[total].Start += sign * draws.Start[load.Index];
            Levels.Count(_limits[total], _totals[total].Run, 1);
        }

        var occupant = site.OccupantOf(load.Index, feed.Ends);
        if (site.Return < 0)
        {
            feed.Occupancy.Change(occupant, sign);
            return;
        }

        Levels.Count(_returns[site.Return], -1);
        _returns[site.Return].Change(occupant, sign);
        Levels.Count(_returns[site.Return], 1);
    }
}
