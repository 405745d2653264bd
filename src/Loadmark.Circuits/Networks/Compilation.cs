using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Loadmark.Circuits.Networks;

/// <summary>What became of a netlist: a network ready to be analysed, or the faults that forbid it.</summary>
/// <param name="Network">The network; null where there are faults.</param>
/// <param name="Faults">The faults; empty where there is a network.</param>
public sealed record Compilation(Network? Network, ImmutableArray<StructuralFault> Faults)
{
    /// <summary>Whether there is a network.</summary>
    [MemberNotNullWhen(true, nameof(Network))]
    public bool IsSound => Network is not null;
}
