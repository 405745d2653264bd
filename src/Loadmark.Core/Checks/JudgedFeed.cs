using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>A feed with how it suits each of its loads, judged once for all rules.</summary>
/// <param name="Feed">The feed.</param>
/// <param name="Point">What stands at its plugs.</param>
/// <param name="Fits">How that suits its loads, in the order of <see cref="WiredFeed.Loads"/>.</param>
internal sealed record JudgedFeed(WiredFeed Feed, FeedPoint Point, ImmutableArray<Suitability> Fits)
{
    /// <summary>Judges a feed.</summary>
    /// <param name="feed">The feed.</param>
    public static JudgedFeed Of(WiredFeed feed)
    {
        var point = FeedPoint.Of(feed);
        var fits = ImmutableArray.CreateBuilder<Suitability>(feed.Loads.Length);
        foreach (var load in feed.Loads)
            fits.Add(Suitability.Of(point, load.Rating));
        return new JudgedFeed(feed, point, fits.MoveToImmutable());
    }
}
