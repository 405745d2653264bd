using System.Text;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Plots;

/// <summary>Draws plots: lines and levels labelled at their ends, told apart by dashes as well as by colour.</summary>
public static class PlotDrawing
{
    /// <summary>The least width a plot is drawn for; below, it is this wide all the same.</summary>
    public const double LeastWidth = 240;

    /// <summary>The least height.</summary>
    public const double LeastHeight = 140;

    private const int MostDescribed = 20;

    /// <summary>Draws a plot.</summary>
    /// <param name="plot">The plot.</param>
    public static Scene Draw(Plot plot)
    {
        ArgumentNullException.ThrowIfNull(plot);
        var width = double.IsFinite(plot.Width) ? Math.Clamp(plot.Width, LeastWidth, 4000) : 720;
        var height = double.IsFinite(plot.Height) ? Math.Clamp(plot.Height, LeastHeight, 4000) : 300;
        var frame = PlotFrame.Of(plot, width, height);
        var groups = new List<SceneGroup> { Axes(plot, frame, width, height) };

        for (var index = 0; index < plot.Bands.Length; index++)
            AddBand(plot.Bands[index], index, frame, groups);

        var lines = plot.Lines.Select((line, index) => LineShapes(line, index, frame)).ToArray();
        var marks = plot.Marks.Select(mark => MarkShapes(mark, frame)).ToArray();
        var rest = new List<Shape>();
        PlotLabels.Add(plot, frame, lines, marks, rest);
        for (var index = 0; index < marks.Length; index++)
            groups.Add(new SceneGroup
            {
                Key = $"mark {index + 1}",
                Kind = SubjectKind.Decoration,
                Title = SafeText.Clean($"{plot.Marks[index].Label} {frame.Y.LevelText(plot.Marks[index].At)}."),
                Shapes = [.. marks[index]],
                Bounds = frame.Box,
            });
        // The most important line lies on top.
        for (var index = lines.Length - 1; index >= 0; index--)
            groups.Add(new SceneGroup
            {
                Key = $"line {index + 1}",
                Kind = SubjectKind.Series,
                Subject = plot.Lines[index].Name,
                Title = SafeText.Clean(SentenceOf(plot, plot.Lines[index], frame)),
                Shapes = [.. lines[index]],
                Bounds = frame.Box,
            });

        SpotLabels.Draw(plot, frame, groups);
        AddCursor(plot, frame, rest);
        if (rest.Count > 0)
            groups.Add(new SceneGroup { Key = "cursor", Kind = SubjectKind.Decoration, Shapes = [.. rest], Bounds = frame.Box });
        return new Scene
        {
            Width = width,
            Height = height,
            Title = TitleOf(plot),
            Description = Describe(plot, frame),
            Groups = [.. groups],
        };
    }

    private static SceneGroup Axes(Plot plot, PlotFrame frame, double width, double height)
    {
        var box = frame.Box;
        var shapes = new List<Shape>();
        foreach (var tick in frame.Y.Ticks)
        {
            var y = frame.Up(tick);
            shapes.Add(new LineShape(Ink.Grid, new(box.X, y), new(box.Right, y)));
            shapes.Add(new TextShape(Ink.TextQuiet, box.X - 6, y + 4, frame.Y.TickText(tick), TextAnchor.End, TextRole.Small));
        }

        foreach (var tick in frame.X.Ticks)
        {
            var x = frame.Across(tick);
            shapes.Add(new LineShape(Ink.Axis, new(x, box.Bottom), new(x, box.Bottom + 4)));
            shapes.Add(new TextShape(Ink.TextQuiet, x, box.Bottom + 16, frame.X.TickText(tick), TextAnchor.Middle, TextRole.Small));
        }

        shapes.Add(new LineShape(Ink.Axis, new(box.X, box.Bottom), new(box.Right, box.Bottom)));
        AddText(shapes, Ink.TextStrong, TextRole.Body, plot.Title, 8, 16, TextAnchor.Start, width - 16);
        AddText(shapes, Ink.TextQuiet, TextRole.Small, LabelOf(plot.Y, frame.Y), 8, 33, TextAnchor.Start, width - 16);
        AddText(shapes, Ink.TextQuiet, TextRole.Small, LabelOf(plot.X, frame.X), box.Right, height - 5, TextAnchor.End, box.Right - 8);
        return new SceneGroup { Key = "axes", Kind = SubjectKind.Decoration, Shapes = [.. shapes], Bounds = new Box(0, 0, width, height) };
    }

    private static void AddBand(PlotBand band, int index, PlotFrame frame, List<SceneGroup> groups)
    {
        var values = band.Values.Where(
            static value => double.IsFinite(value.X) && double.IsFinite(value.Low) && double.IsFinite(value.High)).ToList();
        if (values.Count < 2)
            return;

        Point Within(double x, double y) => new(
            Math.Clamp(frame.Across(x), frame.Box.X, frame.Box.Right), Math.Clamp(frame.Up(y), frame.Box.Y, frame.Box.Bottom));
        var edge = LineSampling.Thin(values.Select(value => Within(value.X, value.High)))
            .Concat(LineSampling.Thin(values.Select(value => Within(value.X, value.Low))).Reverse());
        groups.Add(new SceneGroup
        {
            Key = $"band {index + 1}",
            Kind = SubjectKind.Decoration,
            Title = SafeText.Clean(band.Name.Length == 0 ? "" : $"{band.Name}."),
            Shapes = [new PathShape(Ink.Band, [.. edge], Closed: true) { Variant = Math.Abs(band.Line % Shape.Variants) }],
            Bounds = frame.Box,
        });
    }

    private static List<Shape> LineShapes(PlotLine line, int index, PlotFrame frame)
    {
        var points = LineSampling.Thin(Corners(line).Select(value => frame.At(value.X, value.Y)));
        return [.. LineSampling.Clip(points, frame.Box)
            .Select(stretch => new PathShape(Ink.SeriesLine, stretch) { Variant = index % Shape.Variants })];
    }

    private static IEnumerable<PlotValue> Corners(PlotLine line)
    {
        for (var index = 0; index < line.Values.Length; index++)
        {
            if (line.IsStep && index > 0)
                yield return line.Values[index] with { Y = line.Values[index - 1].Y };
            yield return line.Values[index];
        }
    }

    private static List<Shape> MarkShapes(PlotMark mark, PlotFrame frame)
    {
        var y = frame.Up(mark.At);
        return y >= frame.Box.Y && y <= frame.Box.Bottom ? [new LineShape(Ink.Mark, new(frame.Box.X, y), new(frame.Box.Right, y))] : [];
    }

    private static void AddCursor(Plot plot, PlotFrame frame, List<Shape> shapes)
    {
        if (plot.Cursor is not { } cursor || !double.IsFinite(cursor))
            return;

        var box = frame.Box;
        var x = Math.Clamp(frame.Across(cursor), box.X, box.Right);
        shapes.Add(new LineShape(Ink.Cursor, new(x, box.Y - 4), new(x, box.Bottom)));
        var text = frame.X.ValueText(cursor);
        var half = TextWidth.Of(text, TextRole.Small, isBold: false) / 2;
        shapes.Add(
            new TextShape(
                Ink.TextFigure,
                Math.Clamp(x, half + 2, Math.Max(half + 2, box.Right + frame.LabelWidth - half)),
                box.Y - 9,
                text,
                TextAnchor.Middle,
                TextRole.Small));
        for (var index = 0; index < plot.Lines.Length; index++)
        {
            if (plot.Lines[index].At(cursor) is { } value && frame.Up(value) is var y && y >= box.Y && y <= box.Bottom)
                shapes.Add(new CircleShape(Ink.SeriesPoint, new(x, y), 3.2) { Variant = index % Shape.Variants });
        }
    }

    private static string LabelOf(PlotAxis axis, AxisScale scale) => scale.Unit.Length == 0 ? axis.Label : $"{axis.Label}, {scale.Unit}";

    private static string SentenceOf(Plot plot, PlotLine line, PlotFrame frame)
    {
        var (low, high, end) = (double.MaxValue, double.MinValue, 0.0);
        foreach (var value in line.Values)
        {
            if (double.IsFinite(value.Y))
                (low, high, end) = (Math.Min(low, value.Y), Math.Max(high, value.Y), value.Y);
        }

        if (low > high)
            return $"{line.Name}: no values.";
        var here =
            plot.Cursor is { } cursor ? line.At(cursor) is { } now ? $", {frame.Y.ValueText(now)} at {frame.X.ValueText(cursor)}" : "" : "";
        return $"{line.Name}: from {frame.Y.ValueText(low)} to {frame.Y.ValueText(high)}, {frame.Y.ValueText(end)} at the end{here}.";
    }

    private static string TitleOf(Plot plot) =>
        SafeText.Clean(string.IsNullOrWhiteSpace(plot.Title) ? $"{plot.Y.Label} over {plot.X.Label}" : plot.Title);

    private static string Describe(Plot plot, PlotFrame frame)
    {
        var text = new StringBuilder($"{TitleOf(plot)}. {plot.Y.Label} over {plot.X.Label}, from {frame.X.ValueText(frame.X.Low)} to "
            + $"{frame.X.ValueText(frame.X.High)}.");
        foreach (var mark in plot.Marks)
            text.Append($" {mark.Label} {frame.Y.LevelText(mark.At)}.");
        foreach (var line in plot.Lines.Take(MostDescribed))
            text.Append(' ').Append(SentenceOf(plot, line, frame));
        foreach (var spot in plot.Spots.Take(MostDescribed))
            text.Append($" {spot.Label}: {plot.X.Label} {frame.X.ValueText(spot.X)}, {plot.Y.Label} {frame.Y.ValueText(spot.Y)}.");
        if (Math.Max(plot.Lines.Length, plot.Spots.Length) > MostDescribed)
            text.Append($" And {Math.Max(plot.Lines.Length, plot.Spots.Length) - MostDescribed} more.");
        return SafeText.Clean(text.ToString());
    }

    private static void AddText(
        List<Shape> shapes, Ink ink, TextRole role, string text, double x, double y, TextAnchor anchor, double space)
    {
        var fitted = FittedText.Of(SafeText.Clean(text), role, TextWidth.IsBold(ink), space);
        if (fitted.Length > 0)
            shapes.Add(new TextShape(ink, x, y, fitted, anchor, role));
    }
}
