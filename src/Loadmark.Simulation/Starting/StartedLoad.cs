using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Starting;

/// <summary>A load after the first seconds.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="RunsAfter">When it started to run for good; null where it does not.</param>
/// <param name="LowestVolts">The lowest voltage at its jack while it was on; null where it never was.</param>
/// <param name="Restarts">How often it started again after it had dropped out.</param>
/// <param name="State">How it fares at the end.</param>
public sealed record StartedLoad(string Load, Seconds? RunsAfter, Volts? LowestVolts, int Restarts, LoadState State)
{
    /// <summary>Whether the load starts over and over.</summary>
    public bool Cycles { get; init; }

    /// <summary>Why the load is not computed, as a sentence; null where it is.</summary>
    public string? Because { get; init; }
}
