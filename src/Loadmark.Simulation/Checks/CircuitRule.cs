using Loadmark.Core.Checks;

namespace Loadmark.Simulation.Checks;

/// <summary>A rule that judges a rig by its circuit. Its page is <c>docs/rules/{Id}.md</c>.</summary>
internal abstract class CircuitRule : Rule<CircuitCase>
{
    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;
}
