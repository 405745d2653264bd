using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>Names the loads and outlets of planned feeds in the order of the file; an instance serves once.</summary>
internal sealed class FeedNamer(PlanProblem problem)
{
    private readonly Queue<int>[] _outlets = [.. problem.Outlets.Select(static outlet => new Queue<int>(outlet.Members))];

    /// <summary>All feeds, the pinned ones too, in the order of the supplies and their outlets.</summary>
    public ValueList<Feed> Name(List<PlannedFeed> planned)
    {
        new LoadPicker(problem).Pick(planned);
        planned.Sort(static (one, other) => one.Loads[0].CompareTo(other.Loads[0]));
        var feeds = problem.Pinned.Feeds.Items.Select(static feed => (feed.Outlets[0].Index, feed.Feed)).ToList();
        foreach (var feed in planned)
            feeds.Add(Name(feed));
        return [.. feeds.OrderBy(static feed => feed.Index).Select(static feed => feed.Feed)];
    }

    private (int Index, Feed Feed) Name(PlannedFeed feed)
    {
        var rig = problem.Pinned;
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
        var volts = feed.Parts.Select(static part => part.Setting.Basis).ToList();
        return volts.TrueForAll(one => one == volts[0]) ? [volts[0]] : [.. volts];
    }
}
