namespace Loadmark.Planning.LocalSearch;

/// <summary>What each group of loads counts against an outlet's limit, in millionths.</summary>
/// <param name="Run">While it runs.</param>
/// <param name="Start">While it starts.</param>
/// <param name="After">When the outlet's surge is over.</param>
internal sealed record LegDraws(long[] Run, long[] Start, long[] After);
