using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>Writes a wiring that was found as a solution of a model, whose loads may be merged; an instance serves once.</summary>
internal sealed class WarmStart
{
    private readonly WiringModel _wiring;
    private readonly WiringSpace _space;
    private readonly FoundWiring _found;
    private readonly Dictionary<int, LoadGroup> _loads;
    private readonly Dictionary<OutletGroup, OutletGroup> _outlets;
    private readonly ILookup<(LoadGroup Load, OutletGroup Group), SingleChoice> _singles;
    private readonly long[] _values;

    /// <summary>Prepares to write a wiring that was found as a model's values.</summary>
    /// <param name="problem">The model's problem.</param>
    /// <param name="wiring">The model.</param>
    /// <param name="space">What the wiring is made of.</param>
    /// <param name="found">The wiring.</param>
    public WarmStart(PlanProblem problem, WiringModel wiring, WiringSpace space, FoundWiring found)
    {
        _wiring = wiring;
        _space = space;
        _found = found;
        _loads = problem.GroupsOfLoads();
        _outlets = problem.Outlets.ToDictionary(static group => group);
        _singles = wiring.Singles.ToLookup(static single => (single.Load, single.Source.Group));
        _values = new long[wiring.Variables.Count];
        foreach (var alike in problem.AlikeSupplies.Where(_ => problem.Homes is null))
            Order([.. alike.Select(static groups => groups.ToArray())]);
    }

    /// <summary>The variables' values by their indices; what the model has no place for stays dark.</summary>
    public long[] Write()
    {
        foreach (var feed in _found.Feeds.Where(feed => _space.Kinds[feed.Kind].Slot is null))
            WriteSingle(feed);
        foreach (var kind in _wiring.Slots.GroupBy(static choice => choice.Slot).GroupBy(static slot => slot.Key.Kind))
        {
            // Of leads that are alike the first are used, the fuller ones first.
            var feeds = _found.Feeds.Where(feed => _space.Kinds[feed.Kind].Slot == kind.Key)
                .OrderByDescending(static feed => feed.Loads.Length);
            foreach (var (slot, feed) in kind.Zip(feeds))
                WriteSlot([.. slot], feed);
        }

        _wiring.Variables.Complete(_values);
        return _values;
    }

    /// <summary>Of supplies that are alike the first have the more outlets in use.</summary>
    private void Order(OutletGroup[][] alike)
    {
        var uses = _found.Feeds.SelectMany(
            static feed => feed.FeedSite.Legs, static (feed, leg) => (leg.Part.Group, feed.FeedSite.OutletsALeg))
            .GroupBy(static use => use.Group).ToDictionary(static use => use.Key, static use => use.Sum(static pair => pair.OutletsALeg));
        foreach (var (from, to) in alike.OrderByDescending(groups => groups.Sum(group => uses.GetValueOrDefault(group))).Zip(alike))
        {
            for (var place = 0; place < from.Length; place++)
                _outlets[from[place]] = to[place];
        }
    }

    private LoadGroup GroupOf(int load) => _loads[_space.Loads[load].Members[0]];

    private void WriteSingle(FeedShape feed)
    {
        var part = feed.FeedSite.Legs[0].Part;
        var choices = _singles[(GroupOf(feed.Loads[0]), _outlets[part.Group])]
            .OrderBy(choice => choice.Source.Part.Setting != part.Setting)
            .ThenBy(choice => (choice.Lead?.Ends ?? LeadEnds.Plain) != _space.Ends[feed.Ends]);
        if (choices.FirstOrDefault() is { } choice)
            _values[choice.Count.Index]++;
    }

    private void WriteSlot(SlotChoice[] slot, FeedShape feed)
    {
        foreach (var choice in slot.Where(choice => choice.Class.Joined == feed.FeedSite.Joined))
        {
            var places = choice.Legs.Zip(
                feed.FeedSite.Legs,
                (leg, taken) => leg.Leg.Parts.IndexOf(taken.Part with { Group = _outlets[taken.Part.Group] })).ToArray();
            if (places.Contains(-1))
                continue;
            if (choice.Class.LegsAreAlike)
                Array.Sort(places);
            var loads = feed.Loads.Select(GroupOf).ToList();
            if (choice.Cases.Find(inCase => Admits(inCase, loads)) is not { } inCase)
                return;
            foreach (var load in loads)
                _values[inCase.Loads.Find(count => count.Load == load).Count.Index]++;
            for (var leg = 0; leg < places.Length; leg++)
                _values[choice.Legs[leg].Uses[places[leg]].Index] = 1;
            return;
        }
    }

    private static bool Admits(LoadsInCase inCase, List<LoadGroup> loads)
    {
        if (loads.Count > inCase.Plugs || (inCase.SharingCase == SharingCase.Alone) != (loads.Count == 1))
            return false;
        if (loads.Count > 1 && inCase.SharingCase is SharingCase.WithInputs or SharingCase.Noisy
            && (inCase.SharingCase == SharingCase.WithInputs) != (loads.Count(static load => !load.IsInput) < 2))
            return false;
        foreach (var same in loads.CountBy(static load => load))
        {
            var place = inCase.Loads.FindIndex(count => count.Load == same.Key);
            if (place < 0 || same.Value > inCase.Loads[place].Most)
                return false;
        }

        return true;
    }
}
