using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Starting;

/// <summary>An outlet in the first seconds.</summary>
/// <param name="Outlet">Which one.</param>
/// <param name="PeakAmps">The most that it gave; 0 A where it feeds nothing; null where that cannot be computed.</param>
/// <param name="PeakAt">When that was first; null where it feeds nothing.</param>
/// <param name="OverLimit">How long it was at its limit or over it.</param>
public sealed record StartedOutlet(OutletRef Outlet, Amps? PeakAmps, Seconds? PeakAt, Seconds OverLimit)
{
    /// <summary>Its limit; null when not known.</summary>
    public Amps? Limit { get; init; }

    /// <summary>Whether it feeds nothing.</summary>
    public bool IsFree { get; init; }

    /// <summary>Whether it was over its limit for longer than it bears its surge, and therefore computed without.</summary>
    public bool SurgeIsSpent { get; init; }
}
