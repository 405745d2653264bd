using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Bounds;

/// <summary>
/// The outlets of a rig of which nobody knows how far they stand over their printed voltage while little is drawn: of an unregulated supply
/// or one that may be, or of alternating current, without a no-load voltage measured or printed. Such an outlet is taken at both ends: as
/// stiff at its printed voltage, and as a plain transformer.
/// </summary>
internal static class DoubtfulRegulation
{
    /// <summary>
    /// How far a transformer's alternating voltage may stand over its printed one when nothing is drawn: the regulation of small ones is up
    /// to a quarter (common practice, no source).
    /// </summary>
    public const decimal AlternatingRatio = 1.25m;

    /// <summary>The rig with those outlets at one end.</summary>
    /// <param name="rig">The rig, looked up.</param>
    /// <param name="isStiff">Whether they hold their printed voltage; else they stand over it as plain transformers do.</param>
    /// <returns>Null where the rig has no such outlet.</returns>
    public static WiredRig? At(WiredRig rig, bool isStiff)
    {
        var doubtful = rig.Outlets.Where(IsDoubtful).ToDictionary(static outlet => outlet.Rating.Reference, Volts);
        if (doubtful.Count == 0)
            return null;
        return WiredRig.Of(rig.Rig with { Supplies = [.. rig.Rig.Supplies.Select(supply => Of(supply, doubtful, isStiff))] });
    }

    private static bool IsDoubtful(WiredOutlet outlet) =>
        outlet is { Volts: not null, Rating: { NoLoad: null, Outlet.SourceOhms: null } }
        && (IsAlternating(outlet) || outlet.Supply is { Regulated: false } or { MayBeUnregulated: true });

    private static bool IsAlternating(WiredOutlet outlet) => outlet.Rating.Form is { IsKnown: true, Value: SupplyForm.Alternating };

    /// <summary>The printed voltage, and the one that it may stand at.</summary>
    private static (Volts Printed, Volts Open) Volts(WiredOutlet outlet) =>
        (outlet.Volts!.Value, outlet.Volts.Value * (IsAlternating(outlet) ? AlternatingRatio : OpenVoltage.AssumedRatio));

    private static Supply Of(Supply supply, Dictionary<OutletRef, (Volts Printed, Volts Open)> doubtful, bool isStiff)
    {
        if (!supply.Outlets.Items.Any(outlet => doubtful.ContainsKey(new OutletRef(supply.Id, outlet.Id))))
            return supply;
        return supply with
        {
            Regulated = false,
            Outlets =
            [
                .. supply.Outlets.Select(outlet => !doubtful.TryGetValue(new OutletRef(supply.Id, outlet.Id), out var volts) ? outlet
                    : isStiff ? outlet with { NoLoad = volts.Printed, SourceOhms = Ohms.Zero }
                    : outlet with { NoLoad = volts.Open }),
            ],
        };
    }
}
