using System.Collections.Immutable;
using Loadmark.Core.Checks;

namespace Loadmark.Simulation.Checks;

/// <summary>The rules that judge a rig by its circuit, in the order in which findings are told.</summary>
public static class CircuitRules
{
    /// <summary>The rules that need a circuit.</summary>
    public static ImmutableArray<IRule> Rules => [.. All];

    /// <summary>The rules, ready to judge.</summary>
    internal static ImmutableArray<CircuitRule> All { get; } = [new Sags(), new DoesNotStart()];
}
