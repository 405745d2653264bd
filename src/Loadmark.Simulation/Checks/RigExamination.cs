using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;

namespace Loadmark.Simulation.Checks;

/// <summary>Checks a rig by its nameplates and by its circuit.</summary>
public static class RigExamination
{
    /// <summary>Checks a rig against every rule. The same rig gives the same result.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="options">How; null for the usual way.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static CheckResult Check(Rig rig, ExaminationOptions? options = null, CancellationToken cancellation = default)
    {
        options ??= new ExaminationOptions();
        var wired = WiredRig.Of(rig);
        var said = RigChecker.Check(wired);
        if (wired.Feeds.Count == 0)
            return said;

        var circuit = RigCircuit.Of(wired);
        var settlement = new Settlement(circuit);
        settlement.Solve(cancellation);
        var settled = SettleReport.Of(settlement);
        var started = options.StartUp || CallsForStartUp(circuit, settled) ? FailingStartUp(circuit, cancellation) : null;
        return Judge(new Evidence(circuit, settled, started, said), cancellation);
    }

    /// <summary>Adds to a check what the circuit says. For those who have computed it already.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="settled">Its steady state.</param>
    /// <param name="started">Its first seconds; null where they were not computed.</param>
    /// <param name="said">What the rules on nameplates have found.</param>
    /// <param name="cancellation">Stops it.</param>
    public static CheckResult Judge(RigCircuit circuit, SettleResult settled, StartUpResult? started, CheckResult said, CancellationToken cancellation = default) =>
        Judge(new Evidence(circuit, settled, started, said), cancellation);

    private static CheckResult Judge(Evidence evidence, CancellationToken cancellation)
    {
        List<Finding> findings = [.. SimulationRules.All.SelectMany(rule => rule.Judge(evidence, cancellation))];
        return evidence.Said.With(findings, Untold(evidence));
    }

    /// <summary>The first seconds, told in full only where something does not come up: the rest of a check needs no story.</summary>
    private static StartUpResult? FailingStartUp(RigCircuit circuit, CancellationToken cancellation)
    {
        var run = new StartUpRun(circuit);
        var isComplete = run.Run(cancellation);
        var allRun = Enumerable.Range(0, circuit.Loads.Length).All(load => circuit.Loads[load].Device is null || run.LoadState(load) == LoadState.Runs);
        return isComplete && allRun ? null : RigSimulator.StartUp(circuit, cancellation: cancellation);
    }

    /// <summary>Whether a figure of the rig, or what became of its steady state, calls for a look at the first seconds.</summary>
    internal static bool CallsForStartUp(RigCircuit circuit, SettleResult settled)
    {
        foreach (var load in circuit.Loads)
        {
            if (load.Device is not null && (load.Load.Rating.StartIsGiven || load.Load.Rating.Load.InputCapacitance is not null))
                return true;
        }

        return circuit.Outlets.Any(static outlet => outlet.Overload is not (null or OverloadWay.CurrentLimit))
            || settled.Outlets.Items.Any(static outlet => outlet.State != OutletState.Regulating)
            || Enumerable.Range(0, circuit.Loads.Length).Any(load => circuit.Loads[load].Device is not null && settled.Loads[load].State == LoadState.Off);
    }

    /// <summary>What the circuit could not tell and the rules on nameplates have not said themselves.</summary>
    private static List<Untold> Untold(Evidence evidence)
    {
        var untold = new List<Untold>();
        if (!evidence.Settled.IsFound)
            untold.Add(new Untold("sags", Subjects(evidence), "No steady state was found for part of the circuit, which does not prove that there is none."));
        if (evidence.Started is { IsComplete: false } broken)
            untold.Add(new Untold("does-not-start", Subjects(evidence), $"The first seconds could be computed up to {broken.Duration} only."));
        return untold;
    }

    private static ValueList<string> Subjects(Evidence evidence) =>
        [.. Enumerable.Range(0, evidence.Circuit.Loads.Length)
            .Where(load => evidence.Settled.Loads[load].Volts is null && evidence.Circuit.Loads[load].Device is not null)
            .Select(load => evidence.Circuit.Loads[load].Id)
            .DefaultIfEmpty(evidence.Circuit.Loads.Length > 0 ? evidence.Circuit.Loads[0].Id : evidence.Settled.Rig)];
}
