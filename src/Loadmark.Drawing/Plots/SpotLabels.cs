using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Plots;

/// <summary>Draws single points with their labels, each beside its point where there is room, else none: the title has it all.</summary>
internal static class SpotLabels
{
    private const double Least = 4;
    private const double Largest = 12;
    private const double WidestLabel = 150;

    /// <summary>Draws the points.</summary>
    public static void Draw(Plot plot, PlotFrame frame, List<SceneGroup> groups)
    {
        if (plot.Spots.IsEmpty)
            return;

        var front = AddFront(plot, frame, groups);
        var most = plot.Spots.Max(static spot => double.IsFinite(spot.Size) ? spot.Size : 0);
        var taken = new List<Box>();
        var seen = plot.Spots.Where(spot => IsSeen(spot, frame)).ToList();
        foreach (var spot in seen)
        {
            var (at, radius) = (frame.At(spot.X, spot.Y), RadiusOf(spot, most));
            taken.Add(new Box(at.X - radius, at.Y - radius, 2 * radius, 2 * radius));
        }

        for (var index = 0; index < seen.Count; index++)
        {
            var spot = seen[index];
            var (at, radius) = (frame.At(spot.X, spot.Y), RadiusOf(spot, most));
            var shapes = new List<Shape> { new CircleShape(Ink.SeriesPoint, at, radius) { Variant = spot.IsOnFront ? 0 : 5 } };
            var name = FittedText.Of(
                SafeText.Clean(spot.Label), TextRole.Small, TextWidth.IsBold(Ink.Text), Math.Min(WidestLabel, frame.Box.Width));
            if (name.Length > 0
                && (Place(name, at, radius, frame.Box, [.. taken, .. front]) ?? Place(name, at, radius, frame.Box, taken)) is { } label)
            {
                taken.Add(label.Box);
                shapes.Add(label);
            }

            groups.Add(new SceneGroup
            {
                Key = $"spot {index + 1}",
                Kind = SubjectKind.Series,
                Subject = spot.Label,
                Title = SafeText.Clean(
                    $"{spot.Label}: {plot.X.Label} {frame.X.ValueText(spot.X)}, {plot.Y.Label} {frame.Y.ValueText(spot.Y)}."),
                Shapes = [.. shapes],
                Bounds = new Box(at.X - radius, at.Y - radius, 2 * radius, 2 * radius),
            });
        }
    }

    /// <summary>Draws the line of those that nothing beats.</summary>
    /// <returns>Where it passes, as small boxes.</returns>
    private static List<Box> AddFront(Plot plot, PlotFrame frame, List<SceneGroup> groups)
    {
        var front = plot.Spots.Where(static spot => spot.IsOnFront).OrderBy(static spot => spot.X).ThenBy(static spot => spot.Y)
            .Select(spot => frame.At(spot.X, spot.Y));
        var stretches = LineSampling.Clip(front, frame.Box);
        if (stretches.Count > 0)
            groups.Add(new SceneGroup
            {
                Key = "front",
                Kind = SubjectKind.Decoration,
                Shapes = [.. stretches.Select(static points => new PathShape(Ink.SeriesLine, points) { Variant = 1 })],
                Bounds = frame.Box,
            });

        var passed = new List<Box>();
        foreach (var points in stretches)
        {
            for (var index = 1; index < points.Length; index++)
            {
                var (from, to) = (points[index - 1], points[index]);
                var steps = Math.Max(1, (int)(Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y)) / 4));
                for (var step = 0; step <= steps; step++)
                    passed.Add(new Box(from.X + ((to.X - from.X) * step / steps) - 1, from.Y + ((to.Y - from.Y) * step / steps) - 1, 2, 2));
            }
        }

        return passed;
    }

    private static TextShape? Place(string name, Point at, double radius, Box frame, List<Box> taken)
    {
        var gap = radius + 4;
        TextShape[] tries =
        [
            new(Ink.Text, at.X + gap, at.Y + 4, name, TextAnchor.Start, TextRole.Small),
            new(Ink.Text, at.X - gap, at.Y + 4, name, TextAnchor.End, TextRole.Small),
            new(Ink.Text, at.X, at.Y - gap, name, TextAnchor.Middle, TextRole.Small),
            new(Ink.Text, at.X, at.Y + gap + 8, name, TextAnchor.Middle, TextRole.Small),
            new(Ink.Text, at.X + (radius / 2), at.Y - gap, name, TextAnchor.Start, TextRole.Small),
            new(Ink.Text, at.X + (radius / 2), at.Y + gap + 8, name, TextAnchor.Start, TextRole.Small),
            new(Ink.Text, at.X - (radius / 2), at.Y - gap, name, TextAnchor.End, TextRole.Small),
            new(Ink.Text, at.X - (radius / 2), at.Y + gap + 8, name, TextAnchor.End, TextRole.Small),
        ];
        return tries.FirstOrDefault(label => frame.Holds(label.Box) && !taken.Exists(other => other.Overlaps(label.Box)));
    }

    private static bool IsSeen(PlotSpot spot, PlotFrame frame) =>
        frame.Box.Grow(0.5).Holds(new Box(frame.Across(spot.X), frame.Up(spot.Y), 0, 0));

    private static double RadiusOf(PlotSpot spot, double most) =>
        most > 0 && spot.Size > 0 && double.IsFinite(spot.Size) ? Math.Max(Least, Largest * Math.Sqrt(spot.Size / most)) : Least;
}
