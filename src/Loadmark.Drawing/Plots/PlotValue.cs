namespace Loadmark.Drawing.Plots;

/// <summary>A point of a line; a value that is no number breaks the line.</summary>
/// <param name="X">On the axis to the right.</param>
/// <param name="Y">On the axis upwards.</param>
public readonly record struct PlotValue(double X, double Y);
