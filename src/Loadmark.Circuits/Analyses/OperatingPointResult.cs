namespace Loadmark.Circuits.Analyses;

/// <summary>A steady state, or why there is none. Voltages, currents and states are read from the network.</summary>
/// <param name="Status">What became of the search.</param>
/// <param name="Iterations">Newton iterations in all.</param>
/// <param name="Tried">The ways that were tried.</param>
/// <param name="WorstNode">The node, or device with an equation of its own, with the largest residual.</param>
/// <param name="Residual">That residual, A for a node.</param>
/// <param name="Device">The load that cannot be fed or does not stay in one state; null where there is none or it cannot be told.</param>
/// <param name="Proof">For <see cref="OperatingPointStatus.NoSolution"/> what proves it.</param>
public readonly record struct OperatingPointResult(
    OperatingPointStatus Status, int Iterations, SolutionMethods Tried, string WorstNode, double Residual, string? Device,
    Shortfall? Proof);
