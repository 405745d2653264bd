namespace Loadmark.Planning.Objective;

/// <summary>How far planning has come.</summary>
/// <param name="Level">The level of the objective that is being lowered.</param>
/// <param name="Value">What it is in the best wiring so far; a count, or amps for the capacity.</param>
/// <param name="Bound">What it cannot fall below, as far as is known.</param>
public sealed record PlanProgress(string Level, decimal Value, decimal Bound);
