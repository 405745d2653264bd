namespace Loadmark.Drawing.Plots;

/// <summary>The edges of a spread at a place.</summary>
/// <param name="X">The place.</param>
/// <param name="Low">The lower edge.</param>
/// <param name="High">The upper edge.</param>
public readonly record struct PlotSpread(double X, double Low, double High);
