using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Draws an outlet: its mark gauge, its setting, its figures, and what return it has.</summary>
internal static class OutletDrawing
{
    private const double GaugeInset = 9;
    private const double TextInset = GaugeInset + GaugeShapes.Width + 9;

    public static SceneGroup Of(DiagramModel view, DiagramLayout layout, WiredOutlet outlet, double? railX)
    {
        var box = layout.Outlets[outlet.Index];
        var measures = layout.Measures;
        var loading = view.LoadingOf(outlet);
        var worst = view.WorstOf(outlet.Name);
        var isFree = loading.Loads.Count == 0;
        var shapes = new List<Shape>();
        AddStub(shapes, outlet, measures.StubX, box, railX);
        shapes.Add(new RectShape(isFree ? Ink.Hair : Ink.Outline, box, 3));

        var reading = view.ReadingOf(outlet);
        GaugeShapes.Add(
            shapes,
            new Point(box.X + GaugeInset, box.Middle.Y - (GaugeShapes.Height / 2) + 1),
            Gauge.Of(
                loading.Limit?.Value,
                reading is null ? loading.Run?.Value : reading.Amps.Value,
                loading.Start?.Value,
                view.Check.Headroom,
                loading.StartsOver,
                reading is not null));

        var lines = layout.OutletTexts[outlet.Index];
        TextFlow.Draw(
            shapes,
            lines,
            box.X + TextInset,
            box.Middle.Y + 4.5 - ((lines.Count - 1) * DiagramMeasures.LinePitch / 2),
            DiagramMeasures.LinePitch);
        HarmFrame.Add(shapes, worst, box);
        return new SceneGroup
        {
            Key = $"outlet {outlet.Name}",
            Kind = SubjectKind.Outlet,
            Subject = outlet.Name,
            Title = Sentences.OfOutlet(view, outlet),
            Severity = worst,
            Shapes = [.. shapes],
            Bounds = box,
        };
    }

    /// <summary>What an outlet's box says, line by line.</summary>
    public static List<List<PlacedPiece>> Lay(DiagramModel view, DiagramMeasures measures, WiredOutlet outlet)
    {
        var (loading, reading, worst) = (view.LoadingOf(outlet), view.ReadingOf(outlet), view.WorstOf(outlet.Name));
        var pieces = new List<TextPiece> { new(SafeText.Clean(outlet.Name), Ink.TextStrong) { Role = TextRole.Body, MayShrink = true } };
        pieces.Add(
            new TextPiece(
                $"{outlet.Volts?.ToString() ?? "? V"}{(outlet.Rating.Form.Value == SupplyForm.Alternating ? " a.c." : "")}",
                Ink.TextFigure));
        if (worst is { } severity && measures.OutletLines == 2)
            pieces.Add(new TextPiece(SignShapes.WordOf(severity), SignShapes.InkOf(severity)) { Sign = severity });

        var ceiling = loading.Limit?.ToString();
        var assumed = loading.DrawIsAssumed ? "~" : "";
        if (reading is not null)
            pieces.Add(new TextPiece(AmountText.Of(reading.Amps, loading.Limit), Ink.TextReading) { BeginsLine = true });
        else if (loading.Loads.Count == 0)
            pieces.Add(new TextPiece($"free, {ceiling ?? "limit ?"}", Ink.TextQuiet) { BeginsLine = true });
        else
            pieces.Add(new TextPiece($"{assumed}{AmountText.Of(loading.Run, loading.Limit)}", Ink.TextFigure) { BeginsLine = true });

        if (PolarityNote.Of(outlet.Rating.Polarity, outlet.Rating.Form, isShort: true) is { } polarity)
            pieces.Add(new TextPiece(polarity, Ink.Text));
        if (reading?.State is { } state)
            pieces.Add(new TextPiece(SafeText.Clean(state), Ink.TextReading, 1));
        else if (reading is null && loading.Start is { } start && start != loading.Run)
            pieces.Add(new TextPiece($"start {FigureDisplay.Said(start, loading.Limit)}", Ink.TextQuiet, 3));
        if (worst is { } below && measures.OutletLines > 2)
            pieces.Add(new TextPiece(SignShapes.WordOf(below), SignShapes.InkOf(below)) { Sign = below, BeginsLine = true });

        return view.Lay(pieces, measures.OutletWidth - TextInset - 5, measures.OutletLines);
    }

    /// <summary>Whether an outlet shares its return with other outlets; the only outlet of a supply has none to share it with.</summary>
    public static bool SharesReturn(WiredOutlet outlet) => !outlet.Rating.Isolated.Value && outlet.Rating.Supply.Outlets.Count > 1;

    /// <summary>An isolated outlet hangs on its supply across a gap between two bars, one with a shared return on the rail.</summary>
    private static void AddStub(List<Shape> shapes, WiredOutlet outlet, double from, Box box, double? railX)
    {
        var y = box.Middle.Y;
        if (railX is { } rail)
        {
            shapes.Add(new LineShape(Ink.LeadLine, new(from, y), new(box.X, y)));
            shapes.Add(new CircleShape(Ink.LeadPlug, new(rail, y), 3));
            return;
        }

        if (!outlet.Rating.Isolated.Value)
        {
            shapes.Add(new LineShape(Ink.LeadLine, new(from, y), new(box.X, y)));
            return;
        }

        var middle = (from + box.X) / 2;
        shapes.Add(new LineShape(Ink.LeadLine, new(from, y), new(middle - 2, y)));
        shapes.Add(new LineShape(Ink.LeadLine, new(middle + 2, y), new(box.X, y)));
        foreach (var x in (ReadOnlySpan<double>)[middle - 2, middle + 2])
            shapes.Add(new LineShape(Ink.LeadLine, new(x, y - 5), new(x, y + 5)));
    }
}
