using Google.OrTools.Sat;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>Names the loads, outlets and leads behind the counts of a solution, in the order of the file; used once.</summary>
internal sealed class FeedDecoder
{
    private readonly PlanProblem _problem;
    private readonly WiringModel _model;
    private readonly Queue<int>[] _loads;
    private readonly Queue<int>[] _outlets;
    private readonly Queue<string>[] _slotLeads;
    private readonly Queue<string> _reversing;

    /// <summary>Prepares.</summary>
    public FeedDecoder(PlanProblem problem, WiringModel model)
    {
        _problem = problem;
        _model = model;
        _loads = [.. problem.Loads.Select(load => new Queue<int>(load.Members))];
        _outlets = [.. problem.Outlets.Select(outlet => new Queue<int>(outlet.Members))];
        _slotLeads = [.. problem.SlotLeads.Select(leads => new Queue<string>(leads))];
        _reversing = new Queue<string>(problem.Reversing);
    }

    /// <summary>All feeds, the pinned ones too, in the order of the supplies and their outlets.</summary>
    public ValueList<Feed> Decode(Func<IntVar, long> values)
    {
        var planned = Singles(values).Concat(Slots(values)).ToList();
        planned.Sort((one, other) => one.Loads[0].CompareTo(other.Loads[0]));
        var feeds = _problem.Pinned.Feeds.Items.Select(feed => (feed.Outlets[0].Index, feed.Feed)).ToList();
        foreach (var feed in planned)
            feeds.Add(Name(feed));
        return [.. feeds.OrderBy(feed => feed.Index).Select(feed => feed.Feed)];
    }

    private IEnumerable<PlannedFeed> Singles(Func<IntVar, long> values)
    {
        foreach (var single in _model.Singles)
        {
            for (var left = values(single.Count); left > 0; left--)
                yield return new PlannedFeed(single.Source, single.Reverses ? _reversing.Dequeue() : null, [_loads[single.Load.Index].Dequeue()]);
        }
    }

    private IEnumerable<PlannedFeed> Slots(Func<IntVar, long> values)
    {
        foreach (var slot in _model.Slots.Where(slot => values(slot.Used) > 0))
        {
            var loads = new List<int>();
            foreach (var (load, count, _) in slot.Loads)
            {
                for (var left = values(count); left > 0; left--)
                    loads.Add(_loads[load.Index].Dequeue());
            }

            loads.Sort();
            yield return new PlannedFeed(slot.Source, _slotLeads[slot.Slot.Kind].Dequeue(), loads);
        }
    }

    private (int Index, Feed Feed) Name(PlannedFeed feed)
    {
        var rig = _problem.Pinned;
        var outlets = feed.Source.Parts.Select(part => _outlets[part.Group.Index].Dequeue()).ToList();
        var hasChoice = feed.Source.Parts.Any(part => part.Group.HasChoice);
        return (outlets[0], new Feed
        {
            From = [.. outlets.Select(index => rig.Outlets[index].Rating.Reference)],
            Joined = feed.Source.Joined,
            At = hasChoice ? Settings(feed.Source) : [],
            Lead = feed.Lead,
            To = [.. feed.Loads.Select(index => rig.Loads[index].Id)],
        });
    }

    /// <summary>One voltage where it is the same for all outlets.</summary>
    private static ValueList<Volts> Settings(Source source)
    {
        var volts = source.Parts.Select(part => part.Setting.Volts).ToList();
        return volts.TrueForAll(one => one == volts[0]) ? [volts[0]] : [.. volts];
    }
}
