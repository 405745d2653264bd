namespace Loadmark.Drawing.Scenes;

/// <summary>A place in a picture, in px-like units.</summary>
/// <param name="X">From the left edge, to the right.</param>
/// <param name="Y">From the upper edge, downwards.</param>
public readonly record struct Point(double X, double Y);
