namespace Loadmark.Drawing.Plots;

/// <summary>A level across a plot.</summary>
/// <param name="Label">What it is: "limit", "stops below".</param>
/// <param name="At">Where, on the axis upwards.</param>
public sealed record PlotMark(string Label, double At);
