namespace Loadmark.Planning.Improving;

/// <summary>A wiring that was found.</summary>
/// <param name="Levels">What each level comes to, in the model's whole units.</param>
/// <param name="Feeds">Its feeds.</param>
internal sealed record FoundWiring(long[] Levels, IReadOnlyList<FeedShape> Feeds)
{
    /// <summary>What a wiring is at the moment.</summary>
    public static FoundWiring Of(LiveWiring wiring) => new(wiring.Levels.Values.ToArray(), [.. wiring.Feeds.Select(FeedShape.Of)]);
}
