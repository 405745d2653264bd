using System.Collections.Immutable;

namespace Loadmark.Drawing.Scenes;

/// <summary>Straight lines from point to point.</summary>
/// <param name="Ink">What it is for.</param>
/// <param name="Points">The points, at least two.</param>
/// <param name="Closed">Whether it returns to its first point and has a face.</param>
public sealed record PathShape(Ink Ink, ImmutableArray<Point> Points, bool Closed = false) : Shape(Ink);
