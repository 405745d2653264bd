namespace Loadmark.Simulation.Checks;

/// <summary>How a rig is checked with its circuit.</summary>
public sealed record ExaminationOptions
{
    /// <summary>
    /// Whether the first seconds are always computed; else only where a figure calls for it: a starting draw or an input
    /// capacitance is given, an outlet meets an overload in another way than by its limit, or not everything settles.
    /// </summary>
    public bool StartUp { get; init; }
}
