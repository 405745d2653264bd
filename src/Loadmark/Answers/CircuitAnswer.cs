namespace Loadmark.Answers;

/// <summary>What the circuit of a rig tells, with what is told besides.</summary>
/// <typeparam name="TResult">What was computed.</typeparam>
/// <param name="Result">What was computed.</param>
/// <param name="Rest">What is told besides.</param>
internal sealed record CircuitAnswer<TResult>(TResult Result, CircuitRest Rest);
