using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Bounds;

/// <summary>
/// Computes between which voltages each plug of a rig must be found. Every figure is set to either end of its spread, all together: a
/// plug's voltage rises with the voltage of its outlet and falls with every draw and every resistance before it, so no other values
/// within the spread lie outside of these two corners while no load drops out. What nobody knows of an outlet's regulation is taken at both
/// of its ends (<see cref="DoubtfulRegulation"/>).
/// </summary>
public static class RigBounds
{
    /// <summary>Computes the bounds of each load of the rig, in its order.</summary>
    /// <param name="circuit">The circuit; it is left as it is.</param>
    /// <param name="widths">How far figures may be from what the rig says; null for the usual spread.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ValueList<PlugBounds> Of(RigCircuit circuit, SpreadWidths? widths = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        widths ??= new SpreadWidths();
        var corners = new List<BoundCorner>();
        var stiff = DoubtfulRegulation.At(circuit.Rig, isStiff: true);
        List<RigCircuit> ends = stiff is null
            ? [circuit]
            : [RigCircuit.Of(stiff), RigCircuit.Of(DoubtfulRegulation.At(circuit.Rig, isStiff: false)!)];
        foreach (var end in ends)
        {
            var ranges = new SpreadRanges(end, widths);
            corners.Add(BoundCorner.Of(end, ranges, isHeavy: true, cancellation));
            corners.Add(BoundCorner.Of(end, ranges, isHeavy: false, cancellation));
        }

        return
        [
            .. Enumerable.Range(0, circuit.Loads.Length).Select(load =>
            {
                var isTold = corners.TrueForAll(corner => corner.AllRunWith(load));
                return new PlugBounds(
                    circuit.Loads[load].Id,
                    RangeOf<Volt>([.. corners.Select(corner => corner.OpenVolts(load))]) ?? Printed(circuit.Loads[load].Load, widths),
                    isTold ? RangeOf<Volt>([.. corners.Select(corner => corner.LoadedVolts(load))]) : null)
                {
                    Draw = isTold ? RangeOf<Ampere>([.. corners.Select(corner => corner.Amps(load))]) : null,
                };
            }),
        ];
    }

    /// <summary>
    /// The open voltage of a plug whose load is not in the circuit, as one of which the draw is not known: with nothing drawn nothing is
    /// lost on the way, so that it is what the outlets stand at. Null where that, or what feeds them, is not known.
    /// </summary>
    private static QuantityRange<Volt>? Printed(WiredLoad load, SpreadWidths widths)
    {
        if (load.Feeds is not [var feed] || StandingVoltage.Of(feed) is not { Volts: { } printed } standing
            || feed.Outlets.Any(static outlet => SupplyInput.Of(outlet.Supply.Supply) is not null))
            return null;
        var isAlternating = feed.Form is { IsKnown: true, Value: SupplyForm.Alternating };
        var isFirm = feed.Outlets.All(static outlet => outlet.Supply.Regulated is not false) && standing.MayStandAt is null
            && !isAlternating;
        var share = (decimal)(isFirm ? widths.OutletShare : widths.UnregulatedShare);
        var most = Quantity<Volt>.Max(
            standing.Highest ?? printed,
            standing.MayStandAt ?? (printed * (isAlternating ? DoubtfulRegulation.AlternatingRatio : 1)));
        return new QuantityRange<Volt>(printed * (1 - share), most * (1 + share));
    }

    /// <summary>From the least to the most of the values; null where one of them is not known.</summary>
    private static QuantityRange<TUnit>? RangeOf<TUnit>(double?[] values)
        where TUnit : struct, IUnit =>
        !Array.TrueForAll(values, static value => value is not null) || SiConversion.Of<TUnit>(values.Min()!.Value) is not { } low
            || SiConversion.Of<TUnit>(values.Max()!.Value) is not { } high
            ? null
            : new QuantityRange<TUnit>(low, high);
}
