namespace Loadmark.Circuits.Analyses;

/// <summary>The ways to a steady state, in the order in which they are tried.</summary>
[Flags]
public enum SolutionMethods
{
    /// <summary>Nothing was tried.</summary>
    None = 0,

    /// <summary>Newton's method from the open circuit.</summary>
    Newton = 1,

    /// <summary>The same, with steps shortened until they help.</summary>
    DampedNewton = 2,

    /// <summary>Conductances that hold every node near its open-circuit voltage, taken away by and by.</summary>
    ConductanceStepping = 4,

    /// <summary>All sources raised from zero by and by.</summary>
    SourceStepping = 8,

    /// <summary>A capacitance on every node, charged with ever longer steps.</summary>
    PseudoTransient = 16,
}
