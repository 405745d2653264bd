using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>The supplies whose low-voltage inputs a plan feeds, as loads that come before all others.</summary>
/// <param name="Supplies">Their ids.</param>
/// <param name="Weight">How many loads one of them counts as where it stays dark: more than the rig has.</param>
internal sealed record PlannedInputs(IReadOnlySet<string> Supplies, int Weight)
{
    /// <summary>No supply's input is planned.</summary>
    public static PlannedInputs None { get; } = new(new HashSet<string>(StringComparer.Ordinal), 1);

    /// <summary>Whether something that draws is one of them.</summary>
    /// <param name="load">The load.</param>
    public bool Has(WiredLoad load) => Supplies.Contains(load.Id);
}
