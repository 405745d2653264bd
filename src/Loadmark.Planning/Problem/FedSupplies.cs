using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>
/// Supplies that are fed by others. What feeds one, and what it draws for what it feeds, is not planned: where a pinned feed feeds it, its
/// outlets are used like any; otherwise it stays idle.
/// </summary>
internal static class FedSupplies
{
    /// <summary>The loads of a rig that no feed feeds, without supplies that are fed by others.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<WiredLoad> DarkLoads(WiredRig rig) =>
        rig.Loads.Items.Where(load => load.Feeds.Count == 0 && !rig.Rig.IsFedSupply(load.Rating.Load));

    /// <summary>The ids of the supplies that are to be fed by others, and are not.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<string> Idle(WiredRig rig) =>
        rig.Loads.Items.Where(load => load.Feeds.Count == 0 && rig.Rig.IsFedSupply(load.Rating.Load)).Select(static load => load.Id);
}
