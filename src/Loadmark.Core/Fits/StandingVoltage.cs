using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Fits;

/// <summary>The voltage at which outlets stand, as printed and with nothing drawn.</summary>
/// <param name="Volts">The nominal voltage; null when not known.</param>
/// <param name="Unloaded">
/// The voltage with nothing drawn as far as it is known and another; null otherwise. Of joined outlets, those of which it is not known
/// count with their nominal voltage, under which none stands.
/// </param>
/// <param name="MayStandAt">The voltage at which it may stand with nothing drawn, by practice only; null where nothing calls for
/// it.</param>
public readonly record struct StandingVoltage(Volts? Volts, Volts? Unloaded, Volts? MayStandAt)
{
    /// <summary>The nominal voltage, or that with nothing drawn where it is known and higher; null when neither is known.</summary>
    public Volts? Highest => Volts is { } nominal && Unloaded is { } open ? Quantity<Volt>.Max(nominal, open) : Volts ?? Unloaded;

    private Volts? Known => Unloaded ?? Volts;

    private Volts? Possible => MayStandAt ?? Known;

    /// <summary>The voltage of one outlet.</summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="supply">Its supply.</param>
    /// <param name="limit">What it can give at that setting; null when nothing tells.</param>
    /// <param name="volts">The voltage it is set to; null where that is not known.</param>
    public static StandingVoltage Of(OutletRating outlet, SupplyRating supply, Figure<Amps>? limit, Volts? volts)
    {
        if ((volts ?? outlet.NoLoad?.Value) is not { } stands)
            return default;
        var known = OpenVoltage.Of(outlet, supply, limit, stands, countsPossible: false);
        return known is { IsAssumed: false } unloaded
            ? new StandingVoltage(volts, unloaded.Value, null)
            : new StandingVoltage(volts, null, OpenVoltage.Of(outlet, supply, limit, stands, countsPossible: true)?.Value);
    }

    /// <summary>The voltage of joined outlets, or of one alone.</summary>
    /// <param name="feed">The feed, with its outlets set.</param>
    public static StandingVoltage Of(WiredFeed feed)
    {
        var joined = Of(feed.Outlets[0]);
        for (var place = 1; place < feed.Outlets.Length; place++)
        {
            var other = Of(feed.Outlets[place]);
            joined = feed.Joined == Joint.Series ? joined.InSeriesWith(other) : joined.InParallelWith(other);
        }

        return joined with { Volts = feed.Volts };
    }

    /// <summary>The voltage of two in series: the sum, with what either stands at, or may stand at, over its nominal voltage.</summary>
    /// <param name="other">The other.</param>
    public StandingVoltage InSeriesWith(StandingVoltage other) => new(
        Volts + other.Volts,
        Unloaded is null && other.Unloaded is null ? null : Known + other.Known,
        MayStandAt is null && other.MayStandAt is null ? null : Possible + other.Possible);

    /// <summary>The voltage of two side by side with nothing drawn: the higher.</summary>
    /// <param name="other">The other.</param>
    public StandingVoltage InParallelWith(StandingVoltage other)
    {
        var known = Unloaded is null && other.Unloaded is null ? null : Higher(Known, other.Known);
        var possible = MayStandAt is null && other.MayStandAt is null ? null : Higher(Possible, other.Possible);
        return new StandingVoltage(Volts, known, known is { } stands && possible <= stands ? null : possible);
    }

    private static StandingVoltage Of(WiredOutlet outlet) => Of(outlet.Rating, outlet.Supply, outlet.Limit, outlet.Volts);

    private static Volts? Higher(Volts? one, Volts? other) =>
        one is { } left && other is { } right ? Quantity<Volt>.Max(left, right) : null;
}
