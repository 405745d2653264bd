using System.Collections.Immutable;

namespace Loadmark.Circuits.Networks;

/// <summary>A fault in the structure of a netlist, found before anything is solved.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Devices">The devices it concerns; may be empty.</param>
/// <param name="Nodes">The nodes it concerns; may be empty.</param>
/// <param name="Message">The same in plain words.</param>
public sealed record StructuralFault(
    StructuralFaultKind Kind, ImmutableArray<string> Devices, ImmutableArray<string> Nodes, string Message);
