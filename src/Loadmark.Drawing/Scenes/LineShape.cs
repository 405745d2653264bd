namespace Loadmark.Drawing.Scenes;

/// <summary>A straight line.</summary>
/// <param name="Ink">What it is for.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public sealed record LineShape(Ink Ink, Point From, Point To) : Shape(Ink);
