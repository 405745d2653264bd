namespace Loadmark.Simulation.Wiring;

/// <summary>Two nodes of a circuit by name: where something is plugged in.</summary>
/// <param name="Plus">The positive one.</param>
/// <param name="Minus">The other one.</param>
public readonly record struct Terminals(string Plus, string Minus);
