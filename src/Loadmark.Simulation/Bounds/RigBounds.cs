using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Bounds;

/// <summary>
/// Computes between which voltages each plug of a rig must be found. Every figure is set to either end of its spread, all together: a
/// plug's voltage rises with the voltage of its outlet and falls with every draw and every resistance before it, so no other values
/// within the spread lie outside of these two corners while no load drops out.
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
        var ranges = new SpreadRanges(circuit, widths ?? new SpreadWidths());
        var (heavy, light) = (Corner(isHeavy: true, isOpen: false), Corner(isHeavy: false, isOpen: false));
        var (low, high) = (Corner(isHeavy: true, isOpen: true), Corner(isHeavy: false, isOpen: true));
        return
        [
            .. Enumerable.Range(0, circuit.Loads.Length).Select(load => new PlugBounds(
                circuit.Loads[load].Id,
                RangeOf<Volt>(low[load]?.Volts, high[load]?.Volts),
                BothRun(load) ? RangeOf<Volt>(heavy[load]!.Value.Volts, light[load]!.Value.Volts) : null)
            {
                Draw = BothRun(load) ? RangeOf<Ampere>(light[load]!.Value.Amps, heavy[load]!.Value.Amps) : null,
            }),
        ];

        bool BothRun(int load) => PartOf(load) is { } part && part.Loads.All(other => IsOn(heavy[other]) && IsOn(light[other]));

        static bool IsOn((double Volts, double Amps, LoadState State)? load) => load is { State: LoadState.Runs or LoadState.Low };

        CircuitPart? PartOf(int load) => circuit.Loads[load].Device is { } device ? circuit.Parts[device.Part] : null;

        (double Volts, double Amps, LoadState State)?[] Corner(bool isHeavy, bool isOpen)
        {
            var copy = circuit.Copy();
            ranges.SetCorner(copy, isHeavy);
            if (isOpen)
            {
                for (var load = 0; load < copy.Loads.Length; load++)
                {
                    if (copy.Loads[load].Device is not null)
                        copy.SetRun(load, 0);
                }
            }

            var settlement = new Settlement(copy);
            settlement.Solve(cancellation);
            return
            [
                .. Enumerable.Range(0, copy.Loads.Length).Select(load =>
                    settlement.LoadIsFound(load) && double.IsFinite(copy.LoadVolts(load))
                    ? (copy.LoadVolts(load), settlement.LoadAmps(load), settlement.LoadState(load))
                    : ((double Volts, double Amps, LoadState State)?)null),
            ];
        }
    }

    private static QuantityRange<TUnit>? RangeOf<TUnit>(double? one, double? other)
        where TUnit : struct, IUnit =>
        one is { } from && other is { } to && SiConversion.Of<TUnit>(Math.Min(from, to)) is { } low
            && SiConversion.Of<TUnit>(Math.Max(from, to)) is { } high
            ? new QuantityRange<TUnit>(low, high)
            : null;
}
