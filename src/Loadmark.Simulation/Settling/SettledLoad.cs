using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Settling;

/// <summary>A load in the steady state.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="Volts">Voltage at its jack in the polarity that it wants; null where it is not fed or that cannot be computed.</param>
/// <param name="Amps">What it draws; 0 A where it is off; null where nothing tells.</param>
/// <param name="State">How it fares.</param>
public sealed record SettledLoad(string Load, Volts? Volts, Amps? Amps, LoadState State)
{
    /// <summary>
    /// Whether it has no state to stay in: it starts and drops out over and over. Its voltage is then the one while it is off.
    /// </summary>
    public bool Cycles { get; init; }

    /// <summary>The lowest voltage printed on it; 9 V, assumed, where none is.</summary>
    public required Volts LowestPrinted { get; init; }

    /// <summary>Why the load is off or not computed, as a sentence; null where it runs.</summary>
    public string? Because { get; init; }
}
