namespace Loadmark.Drawing.Scenes;

/// <summary>A rectangle, its corners rounded where a radius is given.</summary>
/// <param name="Ink">What it is for.</param>
/// <param name="Box">Where it is.</param>
/// <param name="Corner">The radius of its corners; 0 for sharp ones.</param>
public sealed record RectShape(Ink Ink, Box Box, double Corner = 0) : Shape(Ink);
