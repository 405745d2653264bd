using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Fits;

/// <summary>The voltage of an outlet with nothing drawn from it, where it differs from the printed one.</summary>
public static class OpenVoltage
{
    /// <summary>
    /// How far a plain transformer adaptor may stand over its printed voltage when nothing is drawn: its reservoir
    /// capacitor charges towards the peak of the wave, √2 times the effective value (common practice, no source).
    /// </summary>
    public const decimal AssumedRatio = 1.4m;

    /// <summary>
    /// The no-load voltage of an outlet: as measured or printed; else, for an unregulated supply, printed voltage plus limit times source
    /// resistance (Ohm's law); else, for an unregulated supply, an assumption.
    /// </summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="volts">Its voltage as it is set.</param>
    /// <returns>Null for a regulated outlet, and for one whose regulation is not known, unless it was measured.</returns>
    public static Figure<Volts>? Of(WiredOutlet outlet, Volts volts) =>
        Of(outlet.Rating, outlet.Supply, outlet.Limit, volts, countsPossible: false);

    /// <summary>The no-load voltage of an outlet that is not wired yet, by the same ways.</summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="supply">Its supply.</param>
    /// <param name="limit">What it can give at that setting; null when nothing tells.</param>
    /// <param name="volts">Its voltage as it would be set.</param>
    /// <param name="countsPossible">Whether a supply that may be a plain transformer adaptor counts as one.</param>
    /// <returns>Null for an outlet that stands at its printed voltage as far as is known.</returns>
    public static Figure<Volts>? Of(OutletRating outlet, SupplyRating supply, Figure<Amps>? limit, Volts volts, bool countsPossible)
    {
        if (outlet.NoLoad is { } known)
            return known;
        if (outlet.Form is { IsKnown: true, Value: SupplyForm.Alternating } || !IsUnregulated(supply, countsPossible))
            return null;
        return outlet.Outlet.SourceOhms is { } ohms && limit is { } most
            ? new Figure<Volts>(volts + (most.Value * ohms), Origin.Derived)
            : new Figure<Volts>(volts * AssumedRatio, Origin.Assumed);
    }

    private static bool IsUnregulated(SupplyRating supply, bool countsPossible) =>
        supply.Regulated is false || (countsPossible && supply.MayBeUnregulated);
}
