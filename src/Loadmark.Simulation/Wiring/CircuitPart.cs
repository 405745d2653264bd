using System.Collections.Immutable;
using Loadmark.Circuits.Networks;

namespace Loadmark.Simulation.Wiring;

/// <summary>
/// A part of a rig's circuit that nothing joins to the rest but the point that voltages are measured from. It is solved alone:
/// what happens in it concerns no other part.
/// </summary>
/// <param name="Network">The part made ready.</param>
/// <param name="Loads">The loads in it, by their place in <see cref="RigCircuit.Loads"/>.</param>
/// <param name="Outlets">The outlets in it, by their place in <see cref="RigCircuit.Outlets"/>.</param>
public sealed record CircuitPart(Network Network, ImmutableArray<int> Loads, ImmutableArray<int> Outlets);
