using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Spreading;

/// <summary>What becomes of a rig's answer when its figures are not known exactly.</summary>
public sealed record SpreadResult
{
    /// <summary>Whether the spread is of the first seconds; else of the steady state.</summary>
    public required bool IsStartUp { get; init; }

    /// <summary>How many samples were asked for.</summary>
    public required int Asked { get; init; }

    /// <summary>How many were computed: fewer where it was stopped.</summary>
    public required int Samples { get; init; }

    /// <summary>The seed that the samples follow from.</summary>
    public required ulong Seed { get; init; }

    /// <summary>How often every load of the rig runs, without those in <see cref="LeftOut"/>.</summary>
    public required Chance Runs { get; init; }

    /// <summary>Samples in which something could not be computed. The loads concerned count as not running.</summary>
    public required int Uncomputed { get; init; }

    /// <summary>All loads in the order of the rig.</summary>
    public required ValueList<SpreadLoad> Loads { get; init; }

    /// <summary>The outlets that feed something, in the order of the rig.</summary>
    public required ValueList<SpreadOutlet> Outlets { get; init; }

    /// <summary>Loads of which nothing can be told, as their draw or their voltage is not known.</summary>
    public required ValueList<string> LeftOut { get; init; }

    /// <summary>
    /// Loads whose class of draw has no high end: they are computed at its low end, and of the rig the worst corner cannot be told.
    /// </summary>
    public required ValueList<string> OpenUpwards { get; init; }

    /// <summary>How far each figure was taken to be from what the rig says.</summary>
    public required ValueList<Assumption> Assumptions { get; init; }

    /// <summary>Whether all samples were computed.</summary>
    public bool IsComplete => Samples == Asked;
}
