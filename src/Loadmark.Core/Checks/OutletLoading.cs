using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>One outlet with what it can give and what is asked of it.</summary>
/// <param name="Outlet">The outlet.</param>
/// <param name="Volts">The outlet's voltage as set; the first of its modes when it feeds nothing; null when not known.</param>
/// <param name="Limit">The most current it can give there; null when not known.</param>
/// <param name="Run">The sum of its loads' running draws; null when a load's draw is not known, zero when it feeds nothing.</param>
/// <param name="Start">The sum of what its loads draw while they start; null when a load's draw is not known.</param>
/// <param name="Loads">The tags of the loads it feeds, in the order of the wiring.</param>
public sealed record OutletLoading(
    OutletRef Outlet,
    Volts? Volts,
    Amps? Limit,
    Amps? Run,
    Amps? Start,
    ValueList<string> Loads)
{
    /// <summary>Whether the draw of one of the outlet's loads is an assumption.</summary>
    public bool DrawIsAssumed { get; init; }

    /// <summary>Whether the outlet gives nothing, because its supply is to be fed by another and is not.</summary>
    public bool GivesNothing { get; init; }

    /// <summary>What the outlet bears for a moment beyond its limit; null when not stated.</summary>
    public Amps? Surge { get; init; }

    /// <summary>Whether the running sum is known and over the limit, by more than the rounding of divisions.</summary>
    public bool RunsOver => IsOver(Run);

    /// <summary>
    /// Whether the sum of the starting draws is known and over both the limit and any stated surge, by more than the
    /// rounding of divisions.
    /// </summary>
    public bool StartsOver => IsOver(Start) && (Surge is not { } surge || Budget.IsOver(Start!.Value.Value, surge.Value));

    private bool IsOver(Amps? draw) => draw is { } amps && Limit is { } limit && Budget.IsOver(amps.Value, limit.Value);
}
