using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Bounds;

/// <summary>A rig's circuit with every figure at one end of its spread, solved with its loads plugged in and without.</summary>
internal sealed class BoundCorner
{
    private readonly RigCircuit _circuit;
    private readonly (double Volts, double Amps, LoadState State)?[] _loaded;
    private readonly (double Volts, double Amps, LoadState State)?[] _open;
    private readonly HashSet<int> _openUpwards;

    private BoundCorner(
        RigCircuit circuit, (double, double, LoadState)?[] loaded, (double, double, LoadState)?[] open, HashSet<int> openUpwards) =>
        (_circuit, _loaded, _open, _openUpwards) = (circuit, loaded, open, openUpwards);

    /// <summary>Solves a corner.</summary>
    /// <param name="circuit">The circuit; it is left as it is.</param>
    /// <param name="ranges">The spread of its figures.</param>
    /// <param name="isHeavy">Which end: see <see cref="SpreadRanges.SetCorner"/>.</param>
    /// <param name="cancellation">Stops it.</param>
    public static BoundCorner Of(RigCircuit circuit, SpreadRanges ranges, bool isHeavy, CancellationToken cancellation)
    {
        var copy = circuit.Copy();
        ranges.SetCorner(copy, isHeavy);
        var loaded = Solved(copy, cancellation);
        for (var load = 0; load < copy.Loads.Length; load++)
        {
            if (copy.Loads[load].Device is not null)
                copy.SetRun(load, 0);
        }

        return new BoundCorner(
            circuit, loaded, Solved(copy, cancellation),
            [.. Enumerable.Range(0, circuit.Loads.Length).Where(load => ranges.OpenUpwards.Contains(circuit.Loads[load].Id))]);
    }

    /// <summary>The voltage at a load's plug with nothing plugged in; null where it is not computed.</summary>
    public double? OpenVolts(int load) => _open[load]?.Volts;

    /// <summary>The voltage at a load's plug with everything running; null where it is not computed.</summary>
    public double? LoadedVolts(int load) => _loaded[load]?.Volts;

    /// <summary>What a load draws; null where it is not computed.</summary>
    public double? Amps(int load) => _loaded[load]?.Amps;

    /// <summary>Whether a load and all others on the same circuit run, and each of their draws has a highest.</summary>
    public bool AllRunWith(int load) =>
        _circuit.Loads[load].Device is { } device
        && _circuit.Parts[device.Part].Loads.All(other =>
            _loaded[other] is { State: LoadState.Runs or LoadState.Low } && !_openUpwards.Contains(other));

    private static (double Volts, double Amps, LoadState State)?[] Solved(RigCircuit circuit, CancellationToken cancellation)
    {
        var settlement = new Settlement(circuit);
        settlement.Solve(cancellation);
        return
        [
            .. Enumerable.Range(0, circuit.Loads.Length).Select(load =>
                settlement.LoadIsFound(load) && double.IsFinite(circuit.LoadVolts(load))
                ? (circuit.LoadVolts(load), settlement.LoadAmps(load), settlement.LoadState(load))
                : ((double Volts, double Amps, LoadState State)?)null),
        ];
    }
}
