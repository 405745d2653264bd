using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Starting;

/// <summary>An outlet in the first seconds.</summary>
/// <param name="Outlet">Which one.</param>
/// <param name="PeakAmps">The most that it gave, with the figures that were taken, see <see cref="Pulse"/>; 0 A where it feeds nothing;
/// null where that cannot be computed.</param>
/// <param name="PeakAt">When that was first; null where it feeds nothing.</param>
/// <param name="OverLimit">How long it was at its limit or over it.</param>
public sealed record StartedOutlet(OutletRef Outlet, Amps? PeakAmps, Seconds? PeakAt, Seconds OverLimit)
{
    /// <summary>
    /// What its peak may be where charging input capacitors decide it, or may, and what that depends on is assumed; null where the peak is
    /// sure as it stands: a load draws it, or its limit bounds it, or every figure is given.
    /// </summary>
    public PulseRange? Pulse { get; init; }

    /// <summary>The outlet's current limit, A; null when not known.</summary>
    public Amps? Limit { get; init; }

    /// <summary>Whether the outlet feeds nothing.</summary>
    public bool IsFree { get; init; }

    /// <summary>Whether the outlet was over its limit for longer than it bears its surge, and therefore computed without.</summary>
    public bool SurgeIsSpent { get; init; }
}
