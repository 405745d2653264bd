namespace Loadmark.Planning.Buying;

/// <summary>What every combination that feeds everything must have: Σ worth × count ≥ need.</summary>
/// <param name="Worths">What one of each offer counts at the most.</param>
/// <param name="Need">What is needed beyond what the supplies and leads there are count at the most.</param>
internal sealed record CoverCut(long[] Worths, long Need);
