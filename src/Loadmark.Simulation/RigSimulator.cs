using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation;

/// <summary>Computes what each load of a rig really gets, and the first seconds after switch-on.</summary>
public static class RigSimulator
{
    /// <summary>The steady state of a rig as wired. A rig without wiring gives a result in which nothing is fed.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="options">How to search; null for the usual way.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static SettleResult Settle(Rig rig, SettleOptions? options = null, CancellationToken cancellation = default) =>
        Settle(RigCircuit.Of(WiredRig.Of(rig)), options, cancellation);

    /// <summary>The steady state of a circuit with the figures that are in force.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="options">How to search; null for the usual way.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static SettleResult Settle(RigCircuit circuit, SettleOptions? options = null, CancellationToken cancellation = default)
    {
        var settlement = new Settlement(circuit, options);
        settlement.Solve(cancellation);
        return SettleReport.Of(settlement);
    }

    /// <summary>The first seconds of a rig as wired. A rig without wiring gives a result in which nothing is fed.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="options">How to compute; null for the usual way.</param>
    /// <param name="cancellation">Stops the computation.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">The computation was stopped.</exception>
    public static StartUpResult StartUp(Rig rig, StartUpOptions? options = null, CancellationToken cancellation = default) =>
        StartUp(RigCircuit.Of(WiredRig.Of(rig)), options, cancellation);

    /// <summary>The first seconds of a circuit with the figures that are in force.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="options">How to compute; null for the usual way.</param>
    /// <param name="cancellation">Stops the computation.</param>
    /// <exception cref="OperationCanceledException">The computation was stopped.</exception>
    public static StartUpResult StartUp(RigCircuit circuit, StartUpOptions? options = null, CancellationToken cancellation = default)
    {
        options ??= new StartUpOptions();
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(options.Spacing.Value, nameof(options));
        var run = new StartUpRun(circuit, options);
        var recording = new StartUpRecording(circuit);
        run.Run(recording.Begin, cancellation);
        return StartUpReport.Of(run, recording, options, cancellation);
    }
}
