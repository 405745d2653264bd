using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Spreading;

/// <summary>A load among samples.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="Volts">The load's settled voltage; at start-up the lowest while it was on.</param>
/// <param name="Runs">How often it runs, at no less than 0.90 of its lowest printed voltage; at start-up so at the end.</param>
public sealed record SpreadLoad(string Load, Percentiles<Volt> Volts, Chance Runs)
{
    /// <summary>What the load draws, settled; null at start-up.</summary>
    public Percentiles<Ampere>? Amps { get; init; }

    /// <summary>When the load started to run for good; null when settled. Never is later than all else, and stands as null.</summary>
    public Percentiles<Second>? RunsAfter { get; init; }

    /// <summary>How the load fares in the worse of the two corners.</summary>
    public required LoadState Corner { get; init; }

    /// <summary>Why the load draws nothing in any sample; null where it draws.</summary>
    public string? Because { get; init; }
}
