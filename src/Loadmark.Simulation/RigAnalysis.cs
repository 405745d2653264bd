using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Checks;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation;

/// <summary>
/// A rig looked up, checked by its nameplates, laid out as a circuit, settled, started and judged, as far as a question asks for it: the
/// one way from a rig to a verdict.
/// </summary>
public sealed class RigAnalysis
{
    private RigAnalysis(WiredRig wired, CheckResult check) => (Wired, Check) = (wired, check);

    /// <summary>The rig with everything looked up.</summary>
    public WiredRig Wired { get; }

    /// <summary>What all rules say of it, those on its circuit among them.</summary>
    public CheckResult Check { get; }

    /// <summary>The rig's circuit; null where the question did not need it.</summary>
    public RigCircuit? Circuit { get; private init; }

    /// <summary>The rig's steady state; null where the question did not need it.</summary>
    public SettleResult? Settled { get; private init; }

    /// <summary>The rig's first seconds; null where the question did not ask for all of them.</summary>
    public StartUpResult? Started { get; private init; }

    /// <summary>What each load of a rig really gets.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static (RigCircuit Circuit, SettleResult Settled, CheckResult Check) Settle(Rig rig, CancellationToken cancellation)
    {
        var analysis = Of(rig, AnalysisDepth.Steady, cancellation);
        return (analysis.Circuit!, analysis.Settled!, analysis.Check);
    }

    /// <summary>Whether all of a rig comes up, and stays up.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static (RigCircuit Circuit, StartUpResult Started, CheckResult Check) StartUp(Rig rig, CancellationToken cancellation)
    {
        var analysis = Of(rig, AnalysisDepth.StartUp, cancellation);
        return (analysis.Circuit!, analysis.Started!, analysis.Check);
    }

    /// <summary>Analyses a rig. The same rig gives the same result.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="depth">How far.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static RigAnalysis Of(Rig rig, AnalysisDepth depth, CancellationToken cancellation = default)
    {
        var wired = WiredRig.Of(rig);
        var said = NameplateCheck.Of(wired);
        if (depth == AnalysisDepth.Verdict && wired.Feeds.Count == 0)
            return new RigAnalysis(wired, said);

        var builder = new CircuitBuilder(wired);
        var laid = builder.Lay();
        if (depth == AnalysisDepth.Verdict && StartUpCall.HasSurplus(laid))
            return new RigAnalysis(wired, said);

        var circuit = builder.Build();
        var settlement = new Settlement(circuit);
        settlement.Solve(cancellation);
        var settled = SettleReport.Of(settlement);
        var started = depth == AnalysisDepth.StartUp ? RigSimulator.StartUp(circuit, cancellation: cancellation) : null;
        return new RigAnalysis(wired, CircuitJudge.Judge(new CircuitCase(circuit, settled, Seen(), said), cancellation))
        {
            Circuit = circuit,
            Settled = settled,
            Started = started,
        };

        StartUpSummary? Seen() => depth switch
        {
            AnalysisDepth.StartUp => StartUpSummary.Of(started!),
            AnalysisDepth.WholeVerdict => StartUpSummary.Of(circuit, [.. Enumerable.Range(0, circuit.Parts.Length)], cancellation),
            AnalysisDepth.Verdict => StartUpCall.CallsForStartUp(circuit, settled)
                ? StartUpSummary.Of(circuit, StartUpCall.PartsWithoutSurplus(circuit, laid), cancellation)
                : null,
            _ => null,
        };
    }
}
