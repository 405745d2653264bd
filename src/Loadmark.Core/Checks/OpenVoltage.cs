using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>The voltage of a feed with nothing drawn from it, where it differs from the printed one.</summary>
public static class OpenVoltage
{
    /// <summary>
    /// How far a plain transformer adaptor may stand over its printed voltage when nothing is drawn: its reservoir
    /// capacitor charges towards the peak of the wave, √2 times the effective value (common practice, no source).
    /// </summary>
    public const decimal AssumedRatio = 1.4m;

    /// <summary>
    /// The no-load voltage: as measured; else, for an unregulated supply, printed voltage plus limit times source
    /// resistance (Ohm's law); else, for an unregulated supply, an assumption.
    /// </summary>
    /// <returns>
    /// The sum for outlets in series, the highest for outlets in parallel. Null for a regulated feed, one whose regulation
    /// is not known, or one whose voltage is not known.
    /// </returns>
    public static Figure<Volts>? Of(WiredFeed feed)
    {
        if (!MayDiffer(feed))
            return null;

        var sum = Quantity<Volt>.Zero;
        var origin = Origin.Measured;
        var differs = false;
        foreach (var outlet in feed.Outlets)
        {
            if ((outlet.Volts ?? outlet.Rating.Outlet.NoLoad) is not { } volts)
                return null;

            var open = Of(outlet, volts);
            differs |= open is not null;
            if (open is { } figure && figure.Origin > origin)
                origin = figure.Origin;
            var stands = open?.Value ?? volts;
            sum = feed.Joined == Joint.Series ? sum + stands : Quantity<Volt>.Max(sum, stands);
        }

        return differs ? new Figure<Volts>(sum, origin) : null;
    }

    private static bool MayDiffer(WiredFeed feed)
    {
        foreach (var outlet in feed.Outlets)
        {
            if (outlet.Rating.Outlet.NoLoad is not null || outlet.Supply.Regulated is false)
                return true;
        }

        return false;
    }

    /// <summary>The no-load voltage of one outlet, by the same ways.</summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="volts">Its voltage as it is set.</param>
    /// <returns>Null for a regulated outlet, and for one whose regulation is not known, unless it was measured.</returns>
    public static Figure<Volts>? Of(WiredOutlet outlet, Volts volts)
    {
        if (outlet.Rating.Outlet.NoLoad is { } measured)
            return new Figure<Volts>(measured, Origin.Measured);
        if (outlet.Supply.Regulated is not false)
            return null;
        return outlet.Rating.Outlet.SourceOhms is { } ohms && outlet.Limit is { } limit
            ? new Figure<Volts>(volts + (limit.Value * ohms), Origin.Derived)
            : new Figure<Volts>(volts * AssumedRatio, Origin.Assumed);
    }
}
