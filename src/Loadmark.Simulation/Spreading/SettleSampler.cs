using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Spreading;

/// <summary>
/// Samples the steady state: volts and amps of loads, volts and amps of outlets. Allocates nothing while it finds states with all loads on.
/// </summary>
internal sealed class SettleSampler(RigCircuit circuit) : ISampler
{
    private readonly Settlement _settlement = new(circuit);

    /// <inheritdoc/>
    public RigCircuit Circuit => circuit;

    /// <inheritdoc/>
    public bool Sample(Span<double> figures, Span<LoadState> states, CancellationToken cancellation)
    {
        var isFound = _settlement.Solve(cancellation);
        var place = 0;
        for (var load = 0; load < circuit.Loads.Length; load++)
        {
            var isKnown = _settlement.LoadIsFound(load);
            states[load] = isKnown ? _settlement.LoadState(load) : LoadState.Off;
            figures[place++] = isKnown ? _settlement.LoadVolts(load) : double.NaN;
            figures[place++] = !isKnown ? double.NaN : states[load] == LoadState.Off ? 0 : _settlement.LoadAmps(load);
        }

        for (var outlet = 0; outlet < circuit.Outlets.Length; outlet++)
        {
            var isKnown = _settlement.OutletIsFound(outlet);
            figures[place++] = isKnown ? circuit.OutletVolts(outlet) : double.NaN;
            figures[place++] = isKnown ? _settlement.OutletAmps(outlet) : double.NaN;
        }

        return isFound;
    }
}
