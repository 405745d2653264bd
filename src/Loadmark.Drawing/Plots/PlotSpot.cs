namespace Loadmark.Drawing.Plots;

/// <summary>A single point of a plot, such as something to buy.</summary>
/// <param name="Label">What it is.</param>
/// <param name="X">On the axis to the right.</param>
/// <param name="Y">On the axis upwards.</param>
/// <param name="Size">What its area stands for, in any unit, the same for all; 0 for the smallest.</param>
/// <param name="IsOnFront">Whether the line of those that nothing beats goes through it.</param>
public sealed record PlotSpot(string Label, double X, double Y, double Size = 0, bool IsOnFront = false);
