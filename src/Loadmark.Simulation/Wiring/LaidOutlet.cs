using Loadmark.Core.Ratings;

namespace Loadmark.Simulation.Wiring;

/// <summary>An outlet with what hangs on it, as laid out but not solved.</summary>
/// <param name="Outlet">The outlet.</param>
/// <param name="Figures">It as a source.</param>
/// <param name="Terminals">Where the leads take from; behind the fuse where it has one.</param>
/// <param name="Device">The outlet's source among the devices.</param>
/// <param name="Fuse">The outlet's fuse among the devices; null where it has none.</param>
internal sealed record LaidOutlet(WiredOutlet Outlet, OutletModel Figures, Terminals Terminals, int Device, int? Fuse)
{
    /// <summary>Whether a feed joins it with other outlets.</summary>
    public bool IsJoined { get; set; }

    /// <summary>All conductors of all its leads one behind the other, Ω.</summary>
    public double LeadOhms { get; set; }

    /// <summary>The loads that draw from it.</summary>
    public List<LoadBranch> Loads { get; } = [];
}
