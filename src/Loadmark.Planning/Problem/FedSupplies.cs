using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>
/// Supplies that are fed by others. Where a pinned feed feeds one, or the plan is told to, its outlets are used like any; otherwise it
/// stays idle.
/// </summary>
internal static class FedSupplies
{
    /// <summary>What no feed feeds and a plan is to feed: loads, and the inputs that it is told to.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="inputs">The inputs that are to be fed as loads are.</param>
    public static IEnumerable<WiredLoad> DarkLoads(WiredRig rig, PlannedInputs inputs) =>
        rig.Loads.Items.Where(load => load.Feeds.Count == 0 && (inputs.Has(load) || !load.IsFedSupply));

    /// <summary>What gets nothing: what no feed feeds, or only supplies that are themselves to be fed and are not.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="inputs">The inputs that count as loads do.</param>
    public static IEnumerable<WiredLoad> Unfed(WiredRig rig, PlannedInputs inputs) =>
        rig.Loads.Items.Where(load => rig.IsDark(load) && (inputs.Has(load) || !load.IsFedSupply));

    /// <summary>The loads of a rig that no feed feeds, without supplies that are fed by others.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<WiredLoad> DarkLoads(WiredRig rig) => DarkLoads(rig, PlannedInputs.None);

    /// <summary>The ids of the supplies that give nothing, because they are to be fed by others and nothing feeds them.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="inputs">The inputs that the plan feeds.</param>
    public static IEnumerable<string> Idle(WiredRig rig, PlannedInputs inputs) => rig.DeadWhenFed(inputs.Supplies);

    /// <summary>The ids of the supplies that are to be fed by others and that nothing feeds.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<string> NotFed(WiredRig rig) =>
        rig.DeadSupplies.Where(id => rig.Loads.Items.Any(load => load.Id == id && load.Feeds.Count == 0)).Order(StringComparer.Ordinal);
}
