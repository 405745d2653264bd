using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Simulation;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Workshop.Solves;

/// <summary>What is computed for the question whether it all comes up, and stays up.</summary>
/// <param name="Circuit">The rig's circuit.</param>
/// <param name="Started">The rig's first seconds.</param>
/// <param name="Check">What the rules say, the circuit's among them.</param>
public sealed record StartedRig(RigCircuit Circuit, StartUpResult Started, CheckResult Check)
{
    /// <summary>Computes a rig's first seconds.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <exception cref="OperationCanceledException">It gave up.</exception>
    public static StartedRig Of(Rig rig, CancellationToken cancellation)
    {
        var analysis = RigAnalysis.Of(rig, AnalysisDepth.StartUp, cancellation);
        return new StartedRig(analysis.Circuit!, analysis.Started!, analysis.Check);
    }
}
