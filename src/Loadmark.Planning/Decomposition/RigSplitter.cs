using System.Collections.Immutable;
using Loadmark.Core.Collections;
using Loadmark.Core.Ratings;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decomposition;

/// <summary>
/// Splits a rig into parts that have nothing to do with one another: no load of one could be fed by a supply of another, no
/// pinned feed joins them, and no lead on hand is wanted by both unless there are enough for all. Each level of the objective
/// is a sum over the feeds, returns and supplies, so the best wirings of the parts together are the best wiring of the rig, and
/// what is proven of each adds up to what is proven of all. An instance serves once.
/// </summary>
internal sealed class RigSplitter
{
    private readonly PlanProblem _problem;
    private readonly WiredRig _pinned;
    private readonly Dictionary<string, int> _supplies;
    private readonly UnionFind<int> _ties = new();
    private readonly List<LeadUse> _leads;
    private readonly int[] _outlets;

    /// <summary>Looks at a rig.</summary>
    /// <param name="problem">The rig's problem, every draw told apart.</param>
    public RigSplitter(PlanProblem problem)
    {
        _problem = problem;
        _pinned = problem.Pinned;
        var supplies = _pinned.Rig.Supplies.Items;
        _supplies = Enumerable.Range(0, supplies.Length)
            .ToDictionary(place => supplies[place].Id, static place => place, StringComparer.Ordinal);
        _leads = [.. FeedCandidates.Leads(problem)];
        _outlets = new int[supplies.Length];
        foreach (var outlet in problem.Outlets.SelectMany(static group => group.Members))
            _outlets[SupplyOf(_pinned.Outlets[outlet])]++;
    }

    /// <summary>
    /// The parts that have loads to feed, those with the fewest first; only the rig itself where there is nothing to split. A load
    /// that nothing could feed is in no part.
    /// </summary>
    public ImmutableArray<RigPart> Split()
    {
        // A lead that is plugged in now belongs to the part that it is plugged in at; leads are dealt out by kind alone.
        if (_supplies.Count < 2 || _problem.Homes?.Values.Any(static home => home.Feed.Lead is not null) is true)
            return [Whole()];
        TieByPinned();
        foreach (var load in _problem.Loads.Where(static load => load.IsInput))
            Tie(NodeOf(load), _supplies[load.Rating.Load.Id]);
        foreach (var (load, outlets) in FeedCandidates.Pairs(_problem))
            outlets.Members.ForEach(outlet => Tie(NodeOf(load), SupplyOf(_pinned.Outlets[outlet])));
        while (TieByLead())
        {
        }

        var heads = Heads();
        if (heads.Length < 2)
            return [Whole()];
        var share = new LeadShares(_leads, _pinned);
        return [.. heads.Select(head => PartOf(head, share)).OrderBy(static part => part.Loads)];
    }

    private RigPart Whole() => new(_pinned.Rig, _problem.Loads.Sum(static load => load.Count));

    private int NodeOf(LoadGroup load) => _supplies.Count + load.Index;

    private int SupplyOf(WiredOutlet outlet) => _supplies[outlet.Rating.Supply.Id];

    /// <summary>The heads of the parts with loads and supplies; a load that is tied to nothing is its own head.</summary>
    private int[] Heads() => [.. _problem.Loads.Select(load => _ties.Find(NodeOf(load))).Where(head => head < _supplies.Count).Distinct()];

    /// <summary>Supplies that pinned feeds join, or that feed one load, or of which one feeds the other.</summary>
    private void TieByPinned()
    {
        foreach (var feed in _pinned.Feeds)
        {
            var others = feed.Loads.SelectMany(static load => load.Feeds).SelectMany(static other => other.Outlets);
            foreach (var outlet in feed.Outlets.Concat(others))
                Tie(SupplyOf(feed.Outlets[0]), SupplyOf(outlet));

            // A load may be a supply that is fed by this one.
            foreach (var load in feed.Loads)
            {
                if (_supplies.TryGetValue(load.Id, out var fed))
                    Tie(SupplyOf(feed.Outlets[0]), fed);
            }
        }
    }

    /// <summary>Ties the parts that vie for leads of a kind; what is tied may want others then.</summary>
    private bool TieByLead()
    {
        foreach (var lead in _leads)
        {
            var wants = Heads().Where(head => MostIn(head, lead) > 0).ToList();
            if (wants.Count < 2 || wants.Sum(head => MostIn(head, lead)) <= lead.Ids.Length)
                continue;
            wants.ForEach(head => Tie(wants[0], head));
            return true;
        }

        return false;
    }

    /// <summary>
    /// Ties two, and all that is tied to either; the first of them in order is the head, so that supplies are before loads.
    /// </summary>
    private void Tie(int one, int other)
    {
        var (first, second) = (_ties.Find(one), _ties.Find(other));
        _ties.Join(Math.Min(first, second), Math.Max(first, second));
    }

    private int MostIn(int head, LeadUse lead) => lead.MostFor(
        load => _ties.Find(NodeOf(load)) == head, Enumerable.Range(0, _outlets.Length).Where(supply => _ties.Find(supply) == head)
            .Sum(supply => _outlets[supply]));

    private RigPart PartOf(int head, LeadShares shares)
    {
        var rig = _pinned.Rig;
        var loads = _problem.Loads.Where(load => _ties.Find(NodeOf(load)) == head).SelectMany(static load => load.Members).ToHashSet();
        var feeds = _pinned.Feeds.Items.Where(feed => _ties.Find(SupplyOf(feed.Outlets[0])) == head).ToList();
        var fed = feeds.SelectMany(static feed => feed.Loads).Select(static load => load.Index).ToHashSet();
        return new RigPart(
            rig with
            {
                Loads = [.. rig.Loads.Items.Where((_, place) => loads.Contains(place) || fed.Contains(place))],
                Supplies = [.. rig.Supplies.Items.Where((_, place) => _ties.Find(place) == head)],
                Leads = [.. shares.Take(lead => MostIn(head, lead), feeds)],
                Wired = [.. feeds.Select(static feed => feed.Feed)],
            },
            loads.Count);
    }
}
