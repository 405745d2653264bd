using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>Names the loads, outlets and leads behind the counts of a solution, in the order of the file; used once.</summary>
internal sealed class FeedDecoder
{
    private readonly PlanProblem _problem;
    private readonly WiringModel _model;
    private readonly Queue<int>[] _outlets;
    private readonly Queue<string>[] _slotLeads;
    private readonly Queue<string>[] _singleLeads;

    /// <summary>Prepares.</summary>
    public FeedDecoder(PlanProblem problem, WiringModel model)
    {
        _problem = problem;
        _model = model;
        _outlets = [.. problem.Outlets.Select(static outlet => new Queue<int>(outlet.Members))];
        _slotLeads = [.. problem.SlotLeads.Select(static leads => new Queue<string>(leads))];
        _singleLeads = [.. problem.SingleLeads.Select(static lead => new Queue<string>(lead.Ids))];
    }

    /// <summary>All feeds, the pinned ones too, in the order of the supplies and their outlets.</summary>
    public ValueList<Feed> Decode(long[] values)
    {
        var planned = Singles(values).Concat(Slots(values)).ToList();
        new LoadPicker(_problem).Pick(planned);
        planned.Sort(static (one, other) => one.Loads[0].CompareTo(other.Loads[0]));
        var feeds = _problem.Pinned.Feeds.Items.Select(static feed => (feed.Outlets[0].Index, feed.Feed)).ToList();
        foreach (var feed in planned)
            feeds.Add(Name(feed));
        return [.. feeds.OrderBy(static feed => feed.Index).Select(static feed => feed.Feed)];
    }

    private IEnumerable<PlannedFeed> Singles(long[] values)
    {
        foreach (var single in _model.Singles)
        {
            for (var left = values[single.Count.Index]; left > 0; left--)
            {
                var lead = single.Lead is { } kind ? _singleLeads[kind.Index].Dequeue() : null;
                yield return new PlannedFeed(Joint.None, single.Source.Point.Volts, [single.Source.Part], lead, [single.Load]);
            }
        }
    }

    private IEnumerable<PlannedFeed> Slots(long[] values)
    {
        foreach (var slot in _model.Slots.Where(slot => values[slot.Used.Index] > 0))
        {
            var groups = slot.Loads.SelectMany(load => Enumerable.Repeat(load.Load, (int)values[load.Count.Index])).ToList();
            yield return new PlannedFeed(slot.Class.Joined, slot.Class.Point.Volts, Parts(slot, values), _slotLeads[slot.Slot.Kind].Dequeue(), groups);
        }
    }

    private static ImmutableArray<SourcePart> Parts(SlotChoice slot, long[] values)
    {
        var parts = slot.Legs.ConvertAll(leg => leg.Leg.Parts[leg.Uses.FindIndex(use => values[use.Index] > 0)]);
        return slot.Class.Joined == Joint.Parallel ? [parts[0], parts[0]] : [.. parts];
    }

    private (int Index, Feed Feed) Name(PlannedFeed feed)
    {
        var rig = _problem.Pinned;
        var outlets = feed.Parts.Select(part => _outlets[part.Group.Index].Dequeue()).ToList();
        var hasChoice = feed.Parts.Any(static part => part.Group.HasChoice);
        return (outlets[0], new Feed
        {
            From = [.. outlets.Select(index => rig.Outlets[index].Rating.Reference)],
            Joined = feed.Joined,
            At = hasChoice ? Settings(feed) : [],
            Lead = feed.Lead,
            To = [.. feed.Loads.Select(index => rig.Loads[index].Id)],
        });
    }

    /// <summary>One voltage where it is the same for all outlets.</summary>
    private static ValueList<Volts> Settings(PlannedFeed feed)
    {
        var volts = feed.Parts.Select(static part => part.Setting.Volts).ToList();
        return volts.TrueForAll(one => one == volts[0]) ? [volts[0]] : [.. volts];
    }
}
