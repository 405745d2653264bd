using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

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

        var builder = new CircuitBuilder(wired);
        var laid = builder.Lay();
        if (!options.StartUp && IsAmple(laid))
            return said;

        var circuit = builder.Build();
        var settlement = new Settlement(circuit);
        settlement.Solve(cancellation);
        var settled = SettleReport.Of(settlement);
        var started = options.StartUp
            ? SeenStart.Of(circuit, [.. Enumerable.Range(0, circuit.Parts.Length)], cancellation)
            : CallsForStartUp(circuit, settled) ? SeenStart.Of(circuit, NotAmple(circuit, laid), cancellation) : null;
        return Judge(new Evidence(circuit, settled, started, said), cancellation);
    }

    /// <summary>Adds to a check what the circuit says. For those who have computed it already.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="settled">Its steady state.</param>
    /// <param name="started">Its first seconds; null where they were not computed.</param>
    /// <param name="said">What the rules on nameplates have found.</param>
    /// <param name="cancellation">Stops it.</param>
    public static CheckResult Judge(RigCircuit circuit, SettleResult settled, StartUpResult? started, CheckResult said, CancellationToken cancellation = default) =>
        Judge(new Evidence(circuit, settled, started is null ? null : SeenStart.Of(started), said), cancellation);

    private static CheckResult Judge(Evidence evidence, CancellationToken cancellation)
    {
        List<Finding> findings = [.. SimulationRules.All.SelectMany(rule => rule.Judge(evidence, cancellation))];
        return evidence.Said.With(findings, Untold(evidence));
    }

    /// <summary>Whether everything surely settles, and starts if a figure calls for a look at that.</summary>
    private static bool IsAmple(IReadOnlyCollection<LaidOutlet> laid)
    {
        var calls = false;
        foreach (var outlet in laid)
        {
            if (!AmpleOutlet.Settles(outlet))
                return false;
            calls |= Calls(outlet.Figures.Overload) || outlet.Loads.Exists(static load => Calls(load));
        }

        return !calls || laid.All(AmpleOutlet.Starts);
    }

    /// <summary>The parts of a circuit in which something might go wrong after switch-on.</summary>
    private static List<int> NotAmple(RigCircuit circuit, IReadOnlyCollection<LaidOutlet> laid)
    {
        var ample = laid.Where(static outlet => AmpleOutlet.Settles(outlet) && AmpleOutlet.Starts(outlet)).Select(static outlet => outlet.Outlet.Name).ToHashSet(StringComparer.Ordinal);
        var parts = new List<int>();
        for (var part = 0; part < circuit.Parts.Length; part++)
        {
            if (!circuit.Parts[part].Outlets.All(outlet => ample.Contains(circuit.Outlets[outlet].Name)))
                parts.Add(part);
        }

        return parts;
    }

    /// <summary>Whether a figure of the rig, or what became of its steady state, calls for a look at the first seconds.</summary>
    internal static bool CallsForStartUp(RigCircuit circuit, SettleResult settled)
    {
        foreach (var load in circuit.Loads)
        {
            if (load.Device is not null && Calls(load))
                return true;
        }

        return circuit.Outlets.Any(static outlet => Calls(outlet.Overload))
            || settled.Outlets.Items.Any(static outlet => outlet.State != OutletState.Regulating)
            || Enumerable.Range(0, circuit.Loads.Length).Any(load => circuit.Loads[load].Device is not null && settled.Loads[load].State == LoadState.Off);
    }

    private static bool Calls(LoadBranch load) => load.Load.Rating.StartIsGiven || load.Load.Rating.Load.InputCapacitance is not null;

    private static bool Calls(OverloadWay? overload) => overload is not (null or OverloadWay.CurrentLimit);

    /// <summary>What the circuit could not tell and the rules on nameplates have not said themselves.</summary>
    private static List<Untold> Untold(Evidence evidence)
    {
        var untold = new List<Untold>();
        if (!evidence.Settled.IsFound)
            untold.Add(new Untold("sags", Subjects(evidence), "No steady state was found for part of the circuit, which does not prove that there is none."));
        if (evidence.Started is { StoppedAt: { } reached })
            untold.Add(new Untold("does-not-start", Subjects(evidence), $"The first seconds could be computed up to {reached} only."));
        return untold;
    }

    private static ValueList<string> Subjects(Evidence evidence) =>
        [.. Enumerable.Range(0, evidence.Circuit.Loads.Length)
            .Where(load => evidence.Settled.Loads[load].Volts is null && evidence.Circuit.Loads[load].Device is not null)
            .Select(load => evidence.Circuit.Loads[load].Id)
            .DefaultIfEmpty(evidence.Circuit.Loads.Length > 0 ? evidence.Circuit.Loads[0].Id : evidence.Settled.Rig)];
}
