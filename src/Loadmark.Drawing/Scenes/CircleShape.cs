namespace Loadmark.Drawing.Scenes;

/// <summary>A circle, drawn with one ink.</summary>
/// <param name="Ink">What it is for.</param>
/// <param name="Centre">The circle's centre.</param>
/// <param name="Radius">The circle's radius, above 0.</param>
public sealed record CircleShape(Ink Ink, Point Centre, double Radius) : Shape(Ink);
