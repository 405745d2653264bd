using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Spreading;

/// <summary>Samples the first seconds: lowest volts of loads and when they run, time at the limit and peak amps of outlets.</summary>
internal sealed class StartUpSampler(RigCircuit circuit, StartUpOptions? options) : ISampler
{
    private readonly StartUpRun _run = new(circuit, options);

    /// <inheritdoc/>
    public RigCircuit Circuit => circuit;

    /// <inheritdoc/>
    public bool Sample(Span<double> figures, Span<LoadState> states, CancellationToken cancellation)
    {
        var isComplete = _run.Run(cancellation);
        var place = 0;
        for (var load = 0; load < circuit.Loads.Length; load++)
        {
            var draws = circuit.Loads[load].Device is not null;
            states[load] = draws && isComplete ? _run.LoadState(load) : LoadState.Off;
            figures[place++] = (draws ? _run.LoadLowestVolts(load) : null) ?? double.NaN;
            figures[place++] = !draws ? double.NaN : _run.LoadRunsAfter(load) ?? double.PositiveInfinity;
        }

        for (var outlet = 0; outlet < circuit.Outlets.Length; outlet++)
        {
            figures[place++] = _run.OutletSecondsOver(outlet);
            figures[place++] = _run.OutletPeak(outlet).Amps;
        }

        return isComplete;
    }
}
