using System.Collections.Immutable;

namespace Loadmark.Simulation.Checks;

/// <summary>The rules that judge a rig by its circuit, in the order in which findings are told.</summary>
public static class SimulationRules
{
    /// <summary>The rules.</summary>
    public static ImmutableArray<SimulationRule> All { get; } = [new Sags(), new DoesNotStart()];
}
