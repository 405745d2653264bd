using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Checks;

/// <summary>A free outlet that would take a load off a feed and mend it, found by solving the rig again.</summary>
internal static class OwnOutlet
{
    /// <summary>The first free outlet that mends it; null where none does.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feed">The feed that is to be mended.</param>
    /// <param name="loads">The loads that may be moved, the likeliest first.</param>
    /// <param name="starts">Whether the loads must come up after switch-on; else it is enough that they settle.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static string? Find(WiredRig rig, WiredFeed feed, IEnumerable<WiredLoad> loads, bool starts, CancellationToken cancellation)
    {
        foreach (var load in loads)
        {
            foreach (var outlet in rig.Outlets)
            {
                if (outlet.Feeds.Count == 0 && Setting(outlet, load) is { } volts && Mends(rig, feed, load, outlet, volts, starts, cancellation))
                    return $"{load.Id} on {outlet.Name}{(outlet.Rating.Modes.Length > 1 ? $" at {volts}" : "")}, with a lead of its own";
            }
        }

        return null;
    }

    /// <summary>The setting at which a free outlet suits a load in voltage, polarity, plug and limit; null where none does.</summary>
    private static Volts? Setting(WiredOutlet outlet, WiredLoad load)
    {
        var (rating, wanted) = (outlet.Rating, load.Rating);
        if (rating.Form.Value != SupplyForm.Direct || wanted.Form.Value != SupplyForm.Direct
            || rating.Polarity.Value != wanted.Polarity.Value || PlugFitting.Judge(rating.Plug.Value, wanted.Plug.Value) != PlugFit.Good)
            return null;
        foreach (var mode in rating.Modes)
        {
            if (mode.Volts is { IsSingle: true, Low: var volts } && VoltageBand.Judge(volts, wanted.Voltage.Value) == VoltageFit.Fine
                && mode.LimitAt(volts) is { } limit && wanted.Starting is { } starting && starting.Value <= limit.Value)
                return volts;
        }

        return null;
    }

    private static bool Mends(WiredRig rig, WiredFeed feed, WiredLoad load, WiredOutlet outlet, Volts volts, bool starts, CancellationToken cancellation)
    {
        var own = new Feed { From = [outlet.Rating.Reference], At = [volts], To = [load.Id] };
        var rest = feed.Feed with { To = [.. feed.Feed.To.Items.Where(id => id != load.Id)] };
        ValueList<Feed> both = rest.To.Count == 0 ? [own] : [rest, own];
        var moved = WiredRig.Of(rig.Rig with { Wired = both });
        return moved.Feeds.Items.All(part => new FeedAlone(moved, part, starts).AllRun(cancellation));
    }
}
