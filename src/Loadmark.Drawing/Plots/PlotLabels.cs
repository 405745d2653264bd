using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Plots;

/// <summary>Labels lines and levels at their right ends, moved apart so that none overlap.</summary>
internal static class PlotLabels
{
    private const double Leader = 13;

    /// <summary>More labels than this nobody follows to their lines.</summary>
    private const int MostLabels = 11;

    /// <summary>The widest label in px; 0 where there is nothing to label.</summary>
    public static double WidestOf(Plot plot, AxisScale y)
    {
        var widest = 0.0;
        foreach (var label in Wanted(plot, y))
            widest = Math.Max(widest, WidthOf(label));
        return widest;
    }

    /// <summary>Adds the labels to the shapes of what they name.</summary>
    /// <param name="plot">The plot.</param>
    /// <param name="frame">Its frame.</param>
    /// <param name="lines">The shapes of each line.</param>
    /// <param name="marks">The shapes of each level.</param>
    /// <param name="rest">Where what is said of unlabelled lines goes.</param>
    public static void Add(Plot plot, PlotFrame frame, List<Shape>[] lines, List<Shape>[] marks, List<Shape> rest)
    {
        var all = Wanted(plot, frame.Y).ToList();
        var most = Math.Min(frame.LabelCapacity, MostLabels);
        var shown = all.Count <= most ? all : all[..(most - 1)];
        var left = all.Count - shown.Count;
        var placed = shown.Select(label => (Label: label, From: EndOf(plot, frame, label))).OrderBy(static entry => entry.From.Y).ToList();
        var wanted = placed.Select(static entry => entry.From.Y + 4).ToList();
        if (left > 0)
            wanted.Add(frame.Box.Bottom + 4);

        var places = LabelColumn.Spread(wanted, PlotFrame.LabelPitch, frame.Box.Y + 4, frame.Box.Bottom + 4);
        for (var index = 0; index < placed.Count; index++)
        {
            var (label, from) = placed[index];
            Add(label.IsMark ? marks[label.Index] : lines[label.Index], label, from, frame, places[index]);
        }

        if (left > 0)
            rest.Add(
                new TextShape(
                    Ink.TextQuiet,
                    frame.Box.Right + Leader + 3,
                    places[^1],
                    FittedText.Of($"+ {left} more", TextRole.Small, isBold: false, frame.LabelWidth - Leader - 4),
                    TextAnchor.Start,
                    TextRole.Small));
    }

    private static void Add(List<Shape> shapes, PlotLabel label, Point from, PlotFrame frame, double y)
    {
        var right = frame.Box.Right;
        var variant = label.IsMark ? 0 : label.Index % Shape.Variants;
        var ink = label.IsMark ? Ink.Text : Ink.SeriesText;
        shapes.Add(
            new PathShape(
                label.IsMark ? Ink.Hair : Ink.SeriesLine,
                [from, new(Math.Max(from.X, right) + 3, from.Y), new(right + Leader, y - 4)])
            { Variant = variant });
        var space = frame.LabelWidth - Leader - 4;
        var value = TextWidth.Of(label.Value, TextRole.Small, isBold: false);
        var name = FittedText.Of(label.Name, TextRole.Small, TextWidth.IsBold(ink), space - (value > 0 ? value + 6 : 0));
        var x = right + Leader + 3;
        if (name.Length > 0)
            shapes.Add(new TextShape(ink, x, y, name, TextAnchor.Start, TextRole.Small) { Variant = variant });
        if (label.Value.Length > 0 && value <= space)
            shapes.Add(
                new TextShape(
                    Ink.TextFigure,
                    x + (name.Length > 0 ? TextWidth.Of(name, TextRole.Small, TextWidth.IsBold(ink)) + 6 : 0),
                    y,
                    label.Value,
                    TextAnchor.Start,
                    TextRole.Small));
    }

    /// <summary>The labels there would be, the most important first: the levels, then the lines in their order.</summary>
    private static IEnumerable<PlotLabel> Wanted(Plot plot, AxisScale y)
    {
        for (var index = 0; index < plot.Marks.Length; index++)
            yield return new PlotLabel(SafeText.Clean(plot.Marks[index].Label), y.LevelText(plot.Marks[index].At), index, IsMark: true);
        for (var index = 0; index < plot.Lines.Length; index++)
        {
            var line = plot.Lines[index];
            var value = plot.Cursor is { } cursor ? line.At(cursor) is { } here ? y.ValueText(here) : "?" : "";
            yield return new PlotLabel(SafeText.Clean(line.Name), value, index, IsMark: false);
        }
    }

    private static double WidthOf(PlotLabel label)
    {
        var name = TextWidth.Of(label.Name.Length > 60 ? label.Name[..60] : label.Name, TextRole.Small, isBold: !label.IsMark);
        return name + (label.Value.Length > 0 ? TextWidth.Of(label.Value, TextRole.Small, isBold: false) + 6 : 0) + 4;
    }

    /// <summary>Where a line or a level ends at the right, within the frame.</summary>
    private static Point EndOf(Plot plot, PlotFrame frame, PlotLabel label)
    {
        var box = frame.Box;
        if (label.IsMark)
            return new Point(box.Right, Math.Clamp(frame.Up(plot.Marks[label.Index].At), box.Y, box.Bottom));

        var values = plot.Lines[label.Index].Values;
        for (var index = values.Length - 1; index >= 0; index--)
        {
            var at = frame.At(values[index].X, values[index].Y);
            if (double.IsFinite(at.X) && double.IsFinite(at.Y) && at.X >= box.X && at.X <= box.Right + 0.01)
                return new Point(Math.Min(at.X, box.Right), Math.Clamp(at.Y, box.Y, box.Bottom));
        }

        return new Point(box.Right, box.Bottom);
    }

    private readonly record struct PlotLabel(string Name, string Value, int Index, bool IsMark);
}
