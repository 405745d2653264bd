using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Draws what stands above and below the rows: headings, the mains, and what a rig lacks.</summary>
internal static class DiagramHead
{
    /// <summary>Adds the rig's name and the headings of the columns.</summary>
    /// <returns>Where the rows begin.</returns>
    public static double Draw(DiagramModel view, DiagramMeasures measures, double top, List<SceneGroup> groups)
    {
        var shapes = new List<Shape>();
        var left = measures.IsNarrow ? 8 : DiagramMeasures.Margin;
        if (view.Options.ShowsHeading)
            AddText(shapes, Ink.TextStrong, TextRole.Heading, view.Rig.Rig.Name, left, top - 8, measures.Width - (2 * left));
        if (!measures.IsNarrow)
        {
            AddText(shapes, Ink.TextQuiet, TextRole.Small, "Supplies", measures.SupplyX, top + 42, measures.SupplyWidth);
            AddText(shapes, Ink.TextQuiet, TextRole.Small, "Outlets", measures.OutletX, top + 42, measures.OutletWidth);
            if (view.Rig.Feeds.Count > 0)
                AddText(shapes, Ink.TextQuiet, TextRole.Small, "Loads", measures.LoadX, top + 42, measures.LoadWidth);
            if (view.Rig.Feeds.Count > 0 && measures.TrunkX - measures.TrackX - measures.TrackWidth > 44)
                AddText(shapes, Ink.TextQuiet, TextRole.Small, "Leads", measures.TrackX + measures.TrackWidth, top + 42, 60);
        }

        var bottom = top + (measures.IsNarrow ? 38 : 48);
        if (shapes.Count > 0)
            groups.Add(Decoration("headings", shapes, new Box(0, 0, measures.Width, bottom)));
        return bottom;
    }

    /// <summary>The mains: a wave in a circle, what they are, and the line down past the supplies.</summary>
    public static SceneGroup Mains(DiagramModel view, DiagramLayout layout, double top)
    {
        var measures = layout.Measures;
        var y = top + 18;
        var end = layout.LastSupplyY is { } last ? last + 14 : y;
        var shapes = new List<Shape> { new LineShape(Ink.MainsLine, new(measures.BusX, y), new(measures.BusX, end)) };
        shapes.Add(new CircleShape(Ink.MainsLine, new(measures.BusX, y), 9));
        var wave = Enumerable.Range(0, 13)
            .Select(step => new Point(measures.BusX - 5 + (step * 10 / 12.0), y - (3 * Math.Sin(step * Math.PI / 6))));
        shapes.Add(new PathShape(Ink.MainsLine, [.. wave]));
        var space = measures.Width - measures.BusX - 30;
        AddText(shapes, Ink.TextStrong, TextRole.Small, "Mains", measures.BusX + 15, y + 4, 60);
        AddText(
            shapes, Ink.TextFigure, TextRole.Small, view.Rig.Rig.Mains?.ToString() ?? "not given", measures.BusX + 62, y + 4, space - 62);
        return new SceneGroup
        {
            Key = "mains",
            Kind = SubjectKind.Mains,
            Title = Sentences.OfMains(view.Rig.Rig),
            Shapes = [.. shapes],
            Bounds = new Box(measures.BusX - 9, y - 9, 160, 18),
        };
    }

    /// <summary>Adds the heading over what is not fed, and says what is missing where a rig has no supplies or no loads.</summary>
    /// <returns>Where the picture goes on.</returns>
    public static double DrawMissing(DiagramModel view, DiagramLayout layout, double head, List<SceneGroup> groups)
    {
        var measures = layout.Measures;
        var bottom = layout.Bottom;
        var shapes = new List<Shape>();
        var left = measures.IsNarrow ? measures.SupplyX : DiagramMeasures.Margin;
        if (layout.UnfedY is { } unfed)
            AddText(shapes, Ink.TextStrong, TextRole.Body, "Not fed", left, unfed, 200);

        if (view.Rig.Supplies.Count == 0)
        {
            AddText(
                shapes,
                Ink.TextQuiet,
                TextRole.Small,
                view.Rig.Loads.Count == 0 ? "No supplies and no loads yet." : "No supplies yet: nothing to feed these from.",
                measures.SupplyX,
                head + 16,
                measures.Width - measures.SupplyX - 8);
            bottom = Math.Max(bottom, head + 34);
        }
        else if (view.Rig.Feeds.Count == 0)
        {
            var (x, y) = measures.IsNarrow ? (measures.SupplyX, bottom + 10) : (measures.LoadX, head + 20);
            AddText(
                shapes,
                Ink.TextQuiet,
                TextRole.Small,
                view.Rig.Loads.Count == 0 ? "No loads yet." : "Nothing is wired yet.",
                x,
                y,
                measures.Width - x - 8);
            bottom = Math.Max(bottom, y + 14);
        }

        if (shapes.Count > 0)
            groups.Add(Decoration("notes", shapes, new Box(left, head, measures.Width - left, bottom - head)));
        return bottom;
    }

    private static void AddText(List<Shape> shapes, Ink ink, TextRole role, string text, double x, double y, double space)
    {
        var fitted = FittedText.Of(SafeText.Clean(text), role, TextWidth.IsBold(ink), space);
        if (fitted.Length > 0)
            shapes.Add(new TextShape(ink, x, y, fitted, TextAnchor.Start, role));
    }

    private static SceneGroup Decoration(string key, List<Shape> shapes, Box bounds) =>
        new() { Key = key, Kind = SubjectKind.Decoration, Shapes = [.. shapes], Bounds = bounds };
}
