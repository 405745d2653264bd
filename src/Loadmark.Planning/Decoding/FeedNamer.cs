using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>Names the loads and outlets of planned feeds in the order of the file; an instance serves once.</summary>
internal sealed class FeedNamer(PlanProblem problem)
{
    private readonly List<int>[] _outlets = [.. problem.Outlets.Select(static outlet => outlet.Members.ToList())];

    /// <summary>All feeds, the pinned ones too, in the order of the supplies and their outlets.</summary>
    public ValueList<Feed> Name(List<PlannedFeed> planned)
    {
        new LoadPicker(problem).Pick(planned);
        planned.Sort(static (one, other) => one.Loads[0].CompareTo(other.Loads[0]));
        var feeds = problem.Pinned.Feeds.Items.Select(static feed => (feed.Outlets[0].Index, feed.Feed)).ToList();
        var homes = planned.ConvertAll(HomeOf);
        for (var place = 0; place < planned.Count; place++)
        {
            if (homes[place] is not { } home)
                continue;
            foreach (var (outlet, _) in home.Outlets)
                _outlets.First(members => members.Contains(outlet)).Remove(outlet);
            Exchange(planned, homes, place);
        }

        foreach (var (feed, home) in planned.Zip(homes))
            feeds.Add(Name(feed, home));
        return [.. feeds.OrderBy(static feed => feed.Index).Select(static feed => feed.Feed)];
    }

    /// <summary>Where a feed is the present one of a load that is on it, that; of several loads any, since they are on one then.</summary>
    private LoadHome? HomeOf(PlannedFeed feed)
    {
        if (problem.Homes is not { Count: > 0 } homes)
            return null;
        var leads = problem.LeadsLike(feed.Lead);
        return feed.Loads.Select(load => homes.GetValueOrDefault(load))
            .FirstOrDefault(home => home?.IsAt(feed.Joined, feed.Parts, leads) is true);
    }

    /// <summary>Gives a feed the lead that it has now; whichever feed was given it takes the one that is free then.</summary>
    private static void Exchange(List<PlannedFeed> planned, List<LoadHome?> homes, int place)
    {
        var (own, lead) = (planned[place].Lead, homes[place]!.Feed.Lead);
        if (own == lead)
            return;
        var other = own is null
            ? -1
            : Enumerable.Range(0, planned.Count).FirstOrDefault(at => planned[at].Lead == lead && homes[at]?.Feed.Lead != lead, -1);
        if (other >= 0)
            planned[other] = planned[other] with { Lead = own };
        planned[place] = planned[place] with { Lead = lead };
    }

    private (int Index, Feed Feed) Name(PlannedFeed feed, LoadHome? home)
    {
        var rig = problem.Pinned;
        var outlets = feed.Parts.Select((part, place) => home?.OutletAt(place, feed.Parts) ?? Take(part)).ToList();
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

    private int Take(SourcePart part)
    {
        var left = _outlets[part.Group.Index];
        var first = left[0];
        left.RemoveAt(0);
        return first;
    }

    /// <summary>One voltage where it is the same for all outlets.</summary>
    private static ValueList<Volts> Settings(PlannedFeed feed)
    {
        var volts = feed.Parts.Select(static part => part.Setting.Basis).ToList();
        return volts.TrueForAll(one => one == volts[0]) ? [volts[0]] : [.. volts];
    }
}
