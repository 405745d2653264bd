using Loadmark.Core.Ratings;

namespace Loadmark.Simulation.Checks;

/// <summary>How much a single outlet would have to give for a feed to come up and for the whole check to pass, found by trying.</summary>
internal static class LimitRemedy
{
    /// <summary>The limits that outlets come with, A: the preferred numbers of the E12 series (IEC 60063).</summary>
    private static readonly decimal[] Usual = [0.1m, 0.12m, 0.15m, 0.18m, 0.22m, 0.27m, 0.33m, 0.39m, 0.47m, 0.56m, 0.68m, 0.82m];

    private const int MostTried = 8;

    /// <summary>
    /// The least usual limit over the present one with which the whole check passes; null where none does, or the feed joins outlets.
    /// </summary>
    public static string? Find(FeedAlone alone, WiredRig rig, WiredFeed feed, WholeCheck whole, CancellationToken cancellation)
    {
        if (alone.Circuit.Outlets is not [var outlet] || feed.Outlets.Length != 1 || !double.IsFinite(outlet.LimitAmps)
            || outlet.Fuse is not null)
            return null;

        // What the loads draw while they start has to be within it, so that nothing less need be tried.
        var least = Quantity<Ampere>.Zero;
        foreach (var load in feed.Outlets[0].Feeds.SelectMany(static other => other.Loads))
            least += load.Rating.Starting?.Value ?? Quantity<Ampere>.Zero;
        var limits = Usual.Concat(Usual.Select(static amps => amps * 10))
            .Where(amps => (double)amps > outlet.LimitAmps && amps >= least.Value).Take(MostTried);
        try
        {
            foreach (var amps in limits)
            {
                alone.Circuit.SetLimit(0, (double)amps);
                if (alone.AllRun(cancellation)
                    && whole.Passes(FeedChange.WithLimit(rig, feed.Outlets[0], new Amps(amps)), null, cancellation))
                    return $"an outlet of {new Amps(amps)} or more in place of {feed.OutletNames}";
            }

            return null;
        }
        finally
        {
            alone.Circuit.Reset();
        }
    }
}
