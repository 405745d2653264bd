using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation;
using Loadmark.Simulation.Checks;
using Loadmark.Simulation.Starting;

namespace Loadmark.Answers;

/// <summary>What is computed for the question whether it all comes up, and stays up.</summary>
/// <param name="Circuit">The rig's circuit.</param>
/// <param name="Started">Its first seconds.</param>
/// <param name="Check">What the rules say, the circuit's among them.</param>
internal sealed record StartedRig(RigCircuit Circuit, StartUpResult Started, CheckResult Check)
{
    /// <summary>Computes it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <exception cref="OperationCanceledException">It gave up.</exception>
    public static StartedRig Of(Rig rig, CancellationToken cancellation)
    {
        var wired = WiredRig.Of(rig);
        var circuit = RigCircuit.Of(wired);
        var settled = RigSimulator.Settle(circuit, cancellation: cancellation);
        var started = RigSimulator.StartUp(circuit, cancellation: cancellation);
        return new StartedRig(circuit, started, RigExamination.Judge(circuit, settled, started, RigChecker.Check(wired), cancellation));
    }
}
