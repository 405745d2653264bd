using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Starting;

/// <summary>The first seconds of a rig after switch-on.</summary>
public sealed record StartUpResult
{
    /// <summary>The rig's name.</summary>
    public required string Rig { get; init; }

    /// <summary>How long was computed.</summary>
    public required Seconds Duration { get; init; }

    /// <summary>Whether the computation came to its end; where not, the rest tells what was seen until <see cref="Duration"/>.</summary>
    public required bool IsComplete { get; init; }

    /// <summary>All loads in the order of the rig.</summary>
    public required ValueList<StartedLoad> Loads { get; init; }

    /// <summary>All outlets in the order of the rig, those that feed nothing too.</summary>
    public required ValueList<StartedOutlet> Outlets { get; init; }

    /// <summary>
    /// When everything had come to rest: nothing happened any more, and every load's voltage stayed within 1 %. Null where it never did.
    /// </summary>
    public required Seconds? SettledAfter { get; init; }

    /// <summary>What happened, in order.</summary>
    public required ValueList<StartUpEvent> Events { get; init; }

    /// <summary>Peaks of supplies and banks with a limit of their own that feed something.</summary>
    public required ValueList<TotalGiven> Totals { get; init; }

    /// <summary>The defaults that the result depends on.</summary>
    public required ValueList<Assumption> Assumptions { get; init; }

    /// <summary>What could not be computed.</summary>
    public required ValueList<Untold> Untold { get; init; }

    /// <summary>Voltages and currents over time.</summary>
    public required Waveforms Waveforms { get; init; }
}
