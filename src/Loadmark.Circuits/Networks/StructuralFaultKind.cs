namespace Loadmark.Circuits.Networks;

/// <summary>What is wrong with a netlist before any equation is solved.</summary>
public enum StructuralFaultKind
{
    /// <summary>Two devices have the same name, or one has none.</summary>
    Name,

    /// <summary>A figure is negative, zero, infinite or not a number where it must not be.</summary>
    Figure,

    /// <summary>Nodes that have no path for direct current to ground.</summary>
    Floating,

    /// <summary>Nodes that only current sources join to the rest.</summary>
    CurrentSourceCutSet,

    /// <summary>Ideal voltage sources that form a loop.</summary>
    VoltageSourceLoop,
}
