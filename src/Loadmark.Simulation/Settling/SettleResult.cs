using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Settling;

/// <summary>The steady state of a rig: what each load really gets.</summary>
public sealed record SettleResult
{
    /// <summary>The rig's name.</summary>
    public required string Rig { get; init; }

    /// <summary>Whether a steady state was found; where not, voltages and currents of what was not found are null.</summary>
    public required bool IsFound { get; init; }

    /// <summary>All loads in the order of the rig.</summary>
    public required ValueList<SettledLoad> Loads { get; init; }

    /// <summary>All outlets in the order of the rig, those that feed nothing too.</summary>
    public required ValueList<SettledOutlet> Outlets { get; init; }

    /// <summary>Supplies and banks with a limit of their own that feed something.</summary>
    public required ValueList<TotalGiven> Totals { get; init; }

    /// <summary>The defaults that the state depends on.</summary>
    public required ValueList<Assumption> Assumptions { get; init; }

    /// <summary>What could not be computed.</summary>
    public required ValueList<Untold> Untold { get; init; }

    /// <summary>Whether every load of the rig runs at a voltage that it is made for.</summary>
    public bool AllRun => Loads.Items.All(static load => load.State == LoadState.Runs);
}
