namespace Loadmark.Circuits.Analyses;

/// <summary>How a transient went. The network is left at its last point.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Seconds">When it ended, s.</param>
/// <param name="Steps">Steps accepted.</param>
/// <param name="Rejected">Steps made again: error too large, or no solution.</param>
/// <param name="Located">Steps made to locate events.</param>
/// <param name="Iterations">Newton iterations in all.</param>
/// <param name="WorstNode">Where it did not complete: the node, or device with an equation or state of its own, to blame; else
/// null, also where the work that it was given was spent.</param>
public readonly record struct TransientResult(
    TransientStatus Status, double Seconds, int Steps, int Rejected, int Located, int Iterations, string? WorstNode)
{
    /// <summary>The repetition computed last, s: one round, or several that are alike. Null where none was seen.</summary>
    public double? RepetitionSeconds { get; init; }
}
