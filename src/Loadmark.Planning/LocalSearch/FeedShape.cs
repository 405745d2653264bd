namespace Loadmark.Planning.LocalSearch;

/// <summary>A feed of a wiring that was found.</summary>
/// <param name="FeedSite">The feed's outlets.</param>
/// <param name="Ends">The place of what its lead does to polarity and plug.</param>
/// <param name="Kind">The kind of its lead.</param>
/// <param name="Loads">The feed's loads.</param>
internal sealed record FeedShape(FeedSite FeedSite, int Ends, int Kind, int[] Loads)
{
    /// <summary>What a feed is at the moment.</summary>
    public static FeedShape Of(LiveFeed feed) => new(feed.FeedSite, feed.Ends, feed.Kind, [.. feed.Loads]);
}
