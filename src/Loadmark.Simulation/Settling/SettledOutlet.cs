using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Settling;

/// <summary>An outlet in the steady state.</summary>
/// <param name="Outlet">Which one.</param>
/// <param name="Volts">Voltage at its contacts; null when not known.</param>
/// <param name="Amps">What it gives; 0 A where it feeds nothing; null where it feeds something that cannot be computed.</param>
/// <param name="State">What it is doing.</param>
public sealed record SettledOutlet(OutletRef Outlet, Volts? Volts, Amps? Amps, OutletState State)
{
    /// <summary>
    /// Whether it switches off and on over and over. Its voltage and current are then those while it is on, at its limit.
    /// </summary>
    public bool Cycles { get; init; }

    /// <summary>The outlet's current limit, A; null when not known.</summary>
    public Amps? Limit { get; init; }

    /// <summary>Whether the outlet feeds nothing.</summary>
    public bool IsFree { get; init; }
}
