using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Spreading;

/// <summary>An outlet that feeds something, among samples.</summary>
/// <param name="Outlet">Which one.</param>
/// <param name="Amps">What it gives, settled; at start-up its peak.</param>
public sealed record SpreadOutlet(OutletRef Outlet, Percentiles<Ampere> Amps)
{
    /// <summary>The outlet's settled voltage; null at start-up.</summary>
    public Percentiles<Volt>? Volts { get; init; }

    /// <summary>The outlet's current limit, A; null when not known.</summary>
    public Amps? Limit { get; init; }
}
