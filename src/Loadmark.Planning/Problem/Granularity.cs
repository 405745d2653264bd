namespace Loadmark.Planning.Problem;

/// <summary>How finely loads are told apart.</summary>
/// <param name="Ratio">How far apart the draws in one group may be, as the largest to the least; 1 keeps every draw apart.</param>
/// <param name="ByPriority">Whether loads of different priority are told apart.</param>
internal readonly record struct Granularity(decimal Ratio, bool ByPriority);
