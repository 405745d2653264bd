using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Checks;

/// <summary>Tells whether a rig has to be solved to be judged, and whether its first seconds have to be computed.</summary>
internal static class StartUpCall
{
    /// <summary>Whether everything surely settles, and starts if a figure calls for a look at that.</summary>
    public static bool HasSurplus(IReadOnlyCollection<LaidOutlet> laid)
    {
        var calls = false;
        foreach (var outlet in laid)
        {
            if (!SurplusBound.Settles(outlet))
                return false;
            calls |= Calls(outlet.Figures.Overload) || outlet.Loads.Exists(static load => Calls(load));
        }

        return !calls || laid.All(SurplusBound.Starts);
    }

    /// <summary>The parts of a circuit in which something might go wrong after switch-on.</summary>
    public static List<int> PartsWithoutSurplus(RigCircuit circuit, IReadOnlyCollection<LaidOutlet> laid)
    {
        var ample = laid.Where(static outlet => SurplusBound.Settles(outlet) && SurplusBound.Starts(outlet))
            .Select(static outlet => outlet.Outlet.Name).ToHashSet(StringComparer.Ordinal);
        var parts = new List<int>();
        for (var part = 0; part < circuit.Parts.Length; part++)
        {
            if (!circuit.Parts[part].Outlets.All(outlet => ample.Contains(circuit.Outlets[outlet].Name)))
                parts.Add(part);
        }

        return parts;
    }

    /// <summary>Whether a figure of the rig, or what became of its steady state, calls for a look at the first seconds.</summary>
    public static bool CallsForStartUp(RigCircuit circuit, SettleResult settled)
    {
        foreach (var load in circuit.Loads)
        {
            if (load.Device is not null && Calls(load))
                return true;
        }

        return circuit.Outlets.Any(static outlet => Calls(outlet.Overload))
            || settled.Outlets.Items.Any(static outlet => outlet.State != OutletState.Regulating)
            || Enumerable.Range(0, circuit.Loads.Length)
                .Any(load => circuit.Loads[load].Device is not null && settled.Loads[load].State == LoadState.Off);
    }

    private static bool Calls(LoadBranch load) => load.Load.Rating.StartIsGiven || load.Load.Rating.Load.InputCapacitance is not null;

    private static bool Calls(OverloadWay? overload) => overload is not (null or OverloadWay.CurrentLimit);
}
