namespace Loadmark.Simulation.Figures;

/// <summary>A figure that stands in where a rig gives none.</summary>
/// <typeparam name="T">The figure's type.</typeparam>
/// <param name="Name">What it is of, as results show it: "soft start".</param>
/// <param name="Value">The figure.</param>
/// <param name="Text">The figure as results show it: "10 ms".</param>
/// <param name="Source">Where it comes from, or "common practice, no source".</param>
/// <param name="IsForStartUp">Whether only the first seconds depend on it; the steady state does not.</param>
public sealed record CircuitDefault<T>(string Name, T Value, string Text, string Source, bool IsForStartUp = false);
