namespace Loadmark.Planning.LocalSearch;

/// <summary>What each group of loads counts against a total, in millionths.</summary>
/// <param name="Run">While it runs.</param>
/// <param name="Start">While it starts.</param>
internal sealed record TotalDraws(long[] Run, long[] Start);
