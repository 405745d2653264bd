using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Figures;

/// <summary>A default that stands in for figures that a rig does not give, and where it was used.</summary>
/// <param name="Figure">What it is of: "input capacitance, digital".</param>
/// <param name="Value">What was taken: "220 µF".</param>
/// <param name="Subjects">The loads, outlets and leads it was used for; at least one.</param>
/// <param name="Source">Where the figure comes from, or "common practice, no source".</param>
/// <param name="IsForStartUp">Whether only the first seconds depend on it.</param>
public sealed record Assumption(string Figure, string Value, ValueList<string> Subjects, string Source, bool IsForStartUp)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Figure}: {Value} ({Phrases.List(Subjects)})";
}
