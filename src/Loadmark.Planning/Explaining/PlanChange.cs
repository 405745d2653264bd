using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>A change to a rig after which everything can be fed, or nothing is past its headroom.</summary>
/// <param name="Text">The change, such as "one more outlet of 9 V 300 mA".</param>
/// <param name="Rig">The rig after it; of its wiring only the pinned feeds.</param>
public sealed record PlanChange(string Text, Rig Rig)
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}
