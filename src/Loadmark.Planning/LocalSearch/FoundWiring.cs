namespace Loadmark.Planning.LocalSearch;

/// <summary>A wiring that was found.</summary>
/// <param name="Levels">What each level comes to, in the model's whole units.</param>
/// <param name="Feeds">The wiring's feeds.</param>
internal sealed record FoundWiring(long[] Levels, IReadOnlyList<FeedShape> Feeds)
{
    /// <summary>What a wiring is at the moment.</summary>
    public static FoundWiring Of(LiveWiring wiring) => new(wiring.Levels.Values.ToArray(), [.. wiring.Feeds.Select(FeedShape.Of)]);

    /// <summary>The wiring, to be changed further. Of leads that may be exchanged each feed takes the one with the fewest plugs.</summary>
    public LiveWiring Live(WiringSpace space)
    {
        var wiring = new LiveWiring(space);
        foreach (var feed in Feeds.OrderByDescending(static feed => feed.Loads.Length))
        {
            wiring.Open(feed.Loads[0], feed.FeedSite, feed.Ends);
            foreach (var load in feed.Loads.AsSpan(1))
            {
                if (wiring.FeedOf(feed.Loads[0]) is { } live)
                    wiring.Add(load, live);
            }
        }

        return wiring;
    }
}
