using Loadmark.Core.Rigs;
using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>
/// Reads a solution of a model as a wiring to begin with. Loads may be merged in the model and outlets pooled, so that the solution is
/// a coarse one: it tells how many loads of what sort are on what sort of feed. Which they are, and which outlets, is chosen as it costs
/// the least at that moment; what finds no place so is fed wherever it can be.
/// </summary>
internal sealed class RelaxedSolutionReader
{
    private readonly WiringModel _wiring;
    private readonly WiringSpace _space;
    private readonly LiveWiring _live;
    private readonly Weights _weights;
    private readonly Dictionary<LoadGroup, LinkedList<int>> _left;
    private readonly Dictionary<OutletGroup, OutletGroup> _outlets;

    /// <summary>Prepares to read a relaxed problem's values as a wiring.</summary>
    /// <param name="problem">The model's problem.</param>
    /// <param name="wiring">The model.</param>
    /// <param name="space">What wirings are made of.</param>
    public RelaxedSolutionReader(PlanProblem problem, WiringModel wiring, WiringSpace space)
    {
        _wiring = wiring;
        _space = space;
        _live = new LiveWiring(space);
        _weights = new Weights(_live.Count);
        var groups = problem.GroupsOfLoads();
        _left = Enumerable.Range(0, _live.Count).GroupBy(load => groups[_live.GroupOf(load).Members[0]]).ToDictionary(
            static group => group.Key,
            group => new LinkedList<int>(
                group.OrderBy(load => _live.GroupOf(load).Rating.Running?.Value.Value ?? 0).ThenBy(static load => load)));
        var pools = problem.Outlets.SelectMany(static group => group.Members.Select(member => (member, group)))
            .ToDictionary(static pair => pair.member, static pair => pair.group);
        _outlets = space.Problem.Outlets.ToDictionary(static group => group, group => pools[group.Members[0]]);
    }

    /// <summary>The wiring that a relaxed problem's values stand for.</summary>
    /// <param name="values">The solution: the variables' values by their indices.</param>
    public LiveWiring Read(long[] values)
    {
        foreach (var feed in Shared(values).Concat(Alone(values)).OrderByDescending(static feed => feed.Loads.Count))
            Place(feed);
        GreedyWiring.FeedDark(_space, _live);
        return _live;
    }

    private IEnumerable<CoarseFeed> Alone(long[] values)
    {
        foreach (var single in _wiring.Singles)
        {
            for (var left = values[single.Count.Index]; left > 0; left--)
                yield return new CoarseFeed(Joint.None, [single.Source.Part], single.Lead?.Ends ?? LeadEnds.Plain, [single.Load]);
        }
    }

    private IEnumerable<CoarseFeed> Shared(long[] values)
    {
        foreach (var choice in _wiring.Slots)
        {
            var parts = choice.Legs.ConvertAll(
                leg => leg.Leg.Parts.Zip(leg.Uses, (part, use) => Enumerable.Repeat(part, (int)values[use.Index]))
                    .SelectMany(static part => part).ToList());
            var first = 0;
            foreach (var inCase in choice.Cases)
            {
                var count = (int)values[inCase.IsOn.Index];
                var loads = inCase.Loads.SelectMany(load => Enumerable.Repeat(load.Load, (int)values[load.Count.Index])).ToList();
                for (var place = 0; place < count; place++)
                {
                    var own = loads.Where((_, index) => index % count == place).ToList();
                    if (own.Count > 0)
                        yield return new CoarseFeed(
                            choice.Class.Joined, parts.ConvertAll(leg => leg[first + place]), choice.Slot.Ends, own);
                }

                first += count;
            }
        }
    }

    private void Place(CoarseFeed coarse)
    {
        var ends = _space.Ends.IndexOf(coarse.Ends);
        var loads = coarse.Loads.Select(group => Pick(group, coarse.Loads.Count > 1)).OfType<int>().ToList();
        FeedSite? best = null;
        var least = double.PositiveInfinity;
        foreach (var site in _space.Sites.Where(site => Suits(site, coarse)))
        {
            if (!Put(loads, site, ends))
                continue;
            if (_weights.CostOf(_live) is var cost && cost < least)
                (best, least) = (site, cost);
            foreach (var load in loads.Where(load => _live.FeedOf(load) is not null))
                _live.Remove(load);
        }

        if (best is not null)
            Put(loads, best, ends);
    }

    private int? Pick(LoadGroup group, bool isShared)
    {
        if ((isShared ? _left[group].First : _left[group].Last) is not { } node)
            return null;
        _left[group].Remove(node);
        return node.Value;
    }

    private bool Put(List<int> loads, FeedSite site, int ends)
    {
        LiveFeed? feed = null;
        foreach (var load in loads)
        {
            if (feed is not null)
                _live.Add(load, feed);
            else if (_live.Open(load, site, ends))
                feed = _live.FeedOf(load);
        }

        return feed is not null;
    }

    private bool Suits(FeedSite site, CoarseFeed coarse)
    {
        if (site.Joined != coarse.Joined || site.Legs.Length != coarse.Parts.Count)
            return false;
        return Fits(0, 0) && (site.Legs.Length == 1 || Fits(1, 1)) || (site.Legs.Length == 2 && Fits(0, 1) && Fits(1, 0));

        bool Fits(int leg, int part) =>
            _outlets[site.Legs[leg].Part.Group] == coarse.Parts[part].Group
                && site.Legs[leg].Part.Setting.Volts == coarse.Parts[part].Setting.Volts;
    }

    /// <summary>A feed of the solution.</summary>
    /// <param name="Joined">How its outlets are joined.</param>
    /// <param name="Parts">Its outlets, one for each leg; each of a group that several may be pooled in.</param>
    /// <param name="Ends">What its lead does.</param>
    /// <param name="Loads">Its loads, each as the group it is of.</param>
    private sealed record CoarseFeed(Joint Joined, List<SourcePart> Parts, LeadEnds Ends, List<LoadGroup> Loads);
}
