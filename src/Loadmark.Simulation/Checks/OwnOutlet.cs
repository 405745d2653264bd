using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Checks;

/// <summary>A free outlet that would take a load off a feed, mend it and pass the whole check, found by trying.</summary>
internal static class OwnOutlet
{
    /// <summary>The first free outlet that mends it; null where none does.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feed">The feed that is to be mended.</param>
    /// <param name="loads">The loads that may be moved, the likeliest first.</param>
    /// <param name="starts">Whether the loads must come up after switch-on; else it is enough that they settle.</param>
    /// <param name="whole">The whole check.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static string? Find(
        WiredRig rig, WiredFeed feed, IEnumerable<WiredLoad> loads, bool starts, WholeCheck whole, CancellationToken cancellation)
    {
        foreach (var load in loads)
        {
            foreach (var outlet in rig.Outlets)
            {
                if (whole.Budget.IsSpent)
                    return null;
                cancellation.ThrowIfCancellationRequested();
                if (outlet.Feeds.Count == 0 && Setting(outlet, load) is { } volts
                    && Mends(rig, feed, load, outlet, volts, starts, whole.Budget, cancellation)
                    && whole.Passes(FeedChange.WithOwnOutlet(rig, load, outlet, volts), outlet, cancellation))
                    return $"{load.Id} on {outlet.Name}{(outlet.Rating.Modes.Length > 1 ? $" at {volts}" : "")}, with a lead of its own";
            }
        }

        return null;
    }

    /// <summary>The setting at which a free outlet suits a load in every way, and bears it; null where none does.</summary>
    private static Volts? Setting(WiredOutlet outlet, WiredLoad load)
    {
        foreach (var mode in outlet.Rating.Modes)
        {
            if (mode.Volts is not { IsSingle: true, Low: var volts })
                continue;

            var fit = Suitability.Of(FeedPoint.At(outlet.Rating, outlet.Supply, volts), load.Rating);
            if (fit is { Answer: Fit.Yes, IsDoubtful: false, Margins: 0 } && mode.LimitAt(volts) is { } limit
                && load.Rating.Starting is { } starting && starting.Value <= limit.Value)
                return volts;
        }

        return null;
    }

    private static bool Mends(
        WiredRig rig, WiredFeed feed, WiredLoad load, WiredOutlet outlet, Volts volts, bool starts, WorkBudget budget,
        CancellationToken cancellation)
    {
        var own = new Feed { From = [outlet.Rating.Reference], At = [volts], To = [load.Id] };
        var rest = feed.Feed with { To = [.. feed.Feed.To.Items.Where(id => id != load.Id)] };
        ValueList<Feed> both = rest.To.Count == 0 ? [own] : [rest, own];
        var moved = WiredRig.Of(rig.Rig with { Wired = both });
        return moved.Feeds.Items.All(part => new FeedAlone(moved, part, starts, budget).AllRun(cancellation));
    }
}
