using System.Collections.Immutable;

namespace Loadmark.Circuits.Analyses;

/// <summary>
/// Proof that loads of constant power cannot be fed: the weighted power they ask for is more than the network can give to them
/// under any currents whatever.
/// </summary>
/// <param name="Loads">The loads, by name.</param>
/// <param name="Weights">A weight for each load, 0 or more; the greatest is 1.</param>
/// <param name="DemandWatts">Weighted sum of what they ask for, W.</param>
/// <param name="LimitWatts">The most that this sum can be, W; less than the demand.</param>
/// <remarks>For one load behind one resistance this is V₀² / 4R. See docs/theory/collapse.md.</remarks>
public sealed record Shortfall(ImmutableArray<string> Loads, ImmutableArray<double> Weights, double DemandWatts, double LimitWatts);
