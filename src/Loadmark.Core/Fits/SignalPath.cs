using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Fits;

/// <summary>
/// Whose grounds meet over audio leads: those of the loads in the signal path, of all loads where the rig does not give it.
/// </summary>
/// <param name="rig">The rig.</param>
public sealed class SignalPath(Rig rig)
{
    private readonly HashSet<string>? _loads = rig.Signal.Count == 0 ? null : new HashSet<string>(rig.Signal.Items, StringComparer.Ordinal);

    /// <summary>Whether a load's ground meets those of others over audio leads.</summary>
    /// <param name="load">The load's tag.</param>
    public bool Contains(string load) => _loads?.Contains(load) ?? true;

    /// <summary>What a wired load is to others on its return.</summary>
    /// <param name="load">The load.</param>
    public Occupant OccupantOf(WiredLoad load)
    {
        var feed = load.Feeds.Count > 0 ? load.Feeds[0] : null;
        var form = feed?.Form is { IsKnown: true, Value: SupplyForm.Alternating } ? SupplyForm.Alternating : SupplyForm.Direct;
        return Occupant.Of(load.Rating, feed?.Reverses ?? false, form, Contains(load.Id));
    }

    /// <summary>Who shares a return.</summary>
    /// <param name="group">The return.</param>
    public ReturnOccupancy OccupancyOf(ReturnGroup group)
    {
        var occupancy = default(ReturnOccupancy);
        foreach (var load in group.Loads)
            occupancy.Change(OccupantOf(load), 1);
        return occupancy;
    }
}
