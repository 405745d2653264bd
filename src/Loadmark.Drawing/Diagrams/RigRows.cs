using System.Collections.Immutable;
using Loadmark.Core.Ratings;

namespace Loadmark.Drawing.Diagrams;

/// <summary>
/// Which loads stand beside which outlet: each once, by its first feed, in the order of outlets and plugs, so that leads need not cross.
/// </summary>
internal sealed class RigRows
{
    private RigRows(ImmutableArray<FeedRows>[] feeds, ImmutableArray<WiredLoad> unfed)
    {
        FeedsAt = feeds;
        Unfed = unfed;
    }

    /// <summary>The feeds that begin at an outlet, by its place among the rig's outlets.</summary>
    public ImmutableArray<FeedRows>[] FeedsAt { get; }

    /// <summary>The loads on no feed.</summary>
    public ImmutableArray<WiredLoad> Unfed { get; }

    /// <summary>How many leads go up and down past the rows of others.</summary>
    public int Wandering => FeedsAt.Sum(static feeds => feeds.Count(static feed => feed.Wanders));

    /// <summary>Sorts a rig's loads.</summary>
    public static RigRows Of(WiredRig rig)
    {
        var byHome = new List<WiredFeed>?[rig.Outlets.Count];
        foreach (var feed in rig.Feeds)
            (byHome[feed.Outlets.Min(static outlet => outlet.Index)] ??= []).Add(feed);

        var placed = new bool[rig.Loads.Count];
        var feeds = new ImmutableArray<FeedRows>[rig.Outlets.Count];
        for (var outlet = 0; outlet < feeds.Length; outlet++)
        {
            feeds[outlet] = byHome[outlet] is { } begin ? [.. begin.Select(feed => Place(feed, placed))] : [];
        }

        return new RigRows(feeds, [.. rig.Loads.Items.Where(load => !placed[load.Index])]);
    }

    private static FeedRows Place(WiredFeed feed, bool[] placed)
    {
        var here = ImmutableArray.CreateBuilder<WiredLoad>();
        var elsewhere = ImmutableArray.CreateBuilder<WiredLoad>();
        foreach (var load in feed.Loads)
        {
            if (placed[load.Index])
                elsewhere.Add(load);
            else
                here.Add(load);
            placed[load.Index] = true;
        }

        return new FeedRows(feed, here.ToImmutable(), elsewhere.ToImmutable());
    }
}
