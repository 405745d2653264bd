using System.Collections.Immutable;

namespace Loadmark.Drawing.Plots;

/// <summary>A spread, such as from the 5th to the 95th percentile.</summary>
/// <param name="Name">What it is: "5 % to 95 %"; empty to go without a label.</param>
/// <param name="Values">The band's edges, from left to right.</param>
/// <param name="Line">The place among the lines of the line that it spreads around, whose colour it has.</param>
public sealed record PlotBand(string Name, ImmutableArray<PlotSpread> Values, int Line = 0);
