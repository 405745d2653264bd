using Loadmark.Core.Ratings;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Draws a supply with its mains line and the rails of the returns that its outlets share.</summary>
internal static class SupplyDrawing
{
    /// <summary>How many rails stand side by side at most.</summary>
    private const int MostLanes = 3;

    /// <summary>Draws the supply and its outlets.</summary>
    /// <param name="view">The rig.</param>
    /// <param name="layout">Where everything stands.</param>
    /// <param name="index">The supply's place.</param>
    /// <param name="first">The place of its first outlet among the rig's.</param>
    /// <param name="groups">Where the groups go.</param>
    public static void Draw(DiagramModel view, DiagramLayout layout, int index, int first, List<SceneGroup> groups)
    {
        if (layout.Faces[index] is not { } face)
            return;
        var supply = view.Rig.Supplies[index];
        var measures = layout.Measures;
        var box = layout.Supplies[index];
        var end = Math.Min(first + supply.Supply.Outlets.Count, view.Part.EndOutlet);
        first = Math.Max(first, view.Part.FirstOutlet);
        var outlets = view.Rig.Outlets.Items.AsSpan(first, Math.Max(0, end - first));
        var shapes = new List<Shape>();
        var mainsY = box.Y + 14;
        shapes.Add(new LineShape(Ink.MainsLine, new(measures.BusX, mainsY), new(box.X, mainsY)));
        shapes.Add(new CircleShape(Ink.LeadPlug, new(measures.BusX, mainsY), 2.6));
        var rails = RailsOf(outlets, measures);
        foreach (var (x, from, to) in rails.Values)
        {
            // A rail with one outlet on it is drawn too: its return is the supply's, not its own.
            var (top, bottom) = (layout.Outlets[from].Middle.Y, layout.Outlets[to].Middle.Y);
            shapes.Add(new LineShape(Ink.ReturnRail, new(x, top - 9), new(x, bottom + 9)));
        }

        if (measures.IsNarrow && outlets.Length > 0)
            shapes.Add(
                new LineShape(
                    Ink.LeadLine,
                    new(measures.StubX, box.Bottom),
                    new(measures.StubX, layout.Outlets[first + outlets.Length - 1].Middle.Y)));
        shapes.Add(new RectShape(Ink.Outline, box, 4));
        face.Draw(shapes, new Point(box.X, box.Y));
        var worst = view.WorstOf(supply.Supply.Id);
        HarmFrame.Add(shapes, worst, box);
        groups.Add(new SceneGroup
        {
            Key = $"supply {supply.Supply.Id}",
            Kind = SubjectKind.Supply,
            Subject = supply.Supply.Id,
            Title = Sentences.OfSupply(view, supply),
            Severity = worst,
            Shapes = [.. shapes],
            Bounds = box,
        });
        foreach (var outlet in outlets)
            groups.Add(OutletDrawing.Of(view, layout, outlet, rails.TryGetValue(outlet.Rating.Return, out var rail) ? rail.X : null));
    }

    /// <summary>The rails by the return they carry: where they stand, and their first and last outlet.</summary>
    private static Dictionary<string, (double X, int First, int Last)> RailsOf(ReadOnlySpan<WiredOutlet> outlets, DiagramMeasures measures)
    {
        var rails = new Dictionary<string, (double X, int First, int Last)>(StringComparer.Ordinal);
        foreach (var outlet in outlets)
        {
            if (!OutletDrawing.SharesReturn(outlet))
                continue;
            rails[outlet.Rating.Return] = rails.TryGetValue(outlet.Rating.Return, out var rail)
                ? rail with { Last = outlet.Index }
                : (0, outlet.Index, outlet.Index);
        }

        // Rails that stand beside one another in the same rows take lanes of their own.
        var ends = new int[MostLanes];
        Array.Fill(ends, -1);
        foreach (var (name, rail) in rails.OrderBy(static entry => entry.Value.First).ToList())
        {
            var lane = Array.FindIndex(ends, end => end < rail.First);
            lane = lane < 0 ? MostLanes - 1 : lane;
            ends[lane] = Math.Max(ends[lane], rail.Last);
            rails[name] = rail with { X = measures.RailX - (lane * DiagramMeasures.RailPitch) };
        }

        return rails;
    }
}
