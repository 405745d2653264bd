using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Simulation;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Workshop.Solves;

/// <summary>What is computed for the question what each load really gets.</summary>
/// <param name="Circuit">The rig's circuit.</param>
/// <param name="Settled">The rig's steady state.</param>
/// <param name="Check">What the rules say, the circuit's among them.</param>
public sealed record SettledRig(RigCircuit Circuit, SettleResult Settled, CheckResult Check)
{
    /// <summary>Computes a rig's steady state.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <exception cref="OperationCanceledException">It gave up.</exception>
    public static SettledRig Of(Rig rig, CancellationToken cancellation)
    {
        var analysis = RigAnalysis.Of(rig, AnalysisDepth.Steady, cancellation);
        return new SettledRig(analysis.Circuit!, analysis.Settled!, analysis.Check);
    }
}
