using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Draws a load: its tag and name, what it needs, what it draws, and the worst that is said about it.</summary>
internal static class LoadDrawing
{
    private const double Inset = 8;

    /// <summary>The room for a sign and its word at the right, and the box width from which there is such room.</summary>
    private const double SignRoom = 66;
    private const double SignBeside = 230;

    public static SceneGroup Of(RigView view, DiagramLayout layout, WiredLoad load)
    {
        var box = layout.Loads[load.Index];
        var worst = view.WorstOf(load.Id);
        var lines = layout.Measures.LoadLines;
        var isBeside = lines == 2 && box.Width >= SignBeside;
        var shapes = new List<Shape> { new RectShape(Ink.Outline, box, 3) };
        var first = box.Middle.Y + 4.5 - ((lines - 1) * DiagramMeasures.LinePitch / 2);
        var room = box.Width - (2 * Inset);
        if (isBeside && worst is { } severity)
        {
            room -= SignRoom;
            var sign = TextFlow.Lay([SignPiece(severity)], SignRoom, 1);
            TextFlow.Draw(shapes, sign, box.Right - Inset - SignPiece(severity).Width, first, DiagramMeasures.LinePitch);
        }

        var pieces = Pieces(view, load, isBeside ? null : worst, lines);
        var laid = TextFlow.Lay(pieces, room, lines);
        TextFlow.Draw(shapes, laid, box.X + Inset, first + ((lines - laid.Count) * DiagramMeasures.LinePitch / 2), DiagramMeasures.LinePitch);
        return new SceneGroup
        {
            Key = $"load {load.Id}",
            Kind = SubjectKind.Load,
            Subject = load.Id,
            Title = Sentences.OfLoad(view, load),
            Severity = worst,
            Shapes = [.. shapes],
            Bounds = box,
        };
    }

    private static TextPiece SignPiece(Severity severity) => new(SignShapes.WordOf(severity), SignShapes.InkOf(severity)) { Sign = severity };

    private static List<TextPiece> Pieces(RigView view, WiredLoad load, Severity? sign, int lines)
    {
        var rating = load.Rating;
        var pieces = new List<TextPiece>
        {
            new(SafeText.Clean(load.Id), Ink.TextStrong) { Role = TextRole.Body, MayShrink = true },
        };
        if (sign is { } worst && lines == 2)
            pieces.Add(SignPiece(worst));
        if (rating.Load.Name is { } name)
            pieces.Add(new TextPiece(SafeText.Clean(name), Ink.Text, 4) { MayShrink = true });
        else if (rating.Load.Kind is { } kind)
            pieces.Add(new TextPiece(SafeText.Clean(kind.Text), Ink.TextQuiet, 7) { MayShrink = true });

        if (view.ReadingOf(load) is { } reading)
        {
            pieces.Add(new TextPiece(reading.Volts.ToString(), Ink.TextReading) { BeginsLine = true });
            if (reading.State is { } state)
                pieces.Add(new TextPiece(SafeText.Clean(state), Ink.TextReading, 1));
            pieces.Add(new TextPiece($"needs {NeedOf(rating)}", Ink.TextQuiet, 2));
        }
        else
        {
            pieces.Add(new TextPiece(NeedOf(rating), Ink.TextFigure) { BeginsLine = true });
        }

        pieces.Add(new TextPiece(rating.Running is { } run ? $"{(run.IsAssumed ? "~" : "")}{run.Value}" : "? mA", Ink.TextFigure));
        if (rating.StartIsGiven && rating.Starting is { } start && start.Value != rating.Running?.Value)
            pieces.Add(new TextPiece($"start {start.Value}", Ink.TextQuiet, 5));
        if (rating.Polarity.Value != Polarity.CentreNegative)
            pieces.Add(new TextPiece(PolarityText.Of(rating.Polarity.Value), Ink.Text, 3));
        if (rating.Ground == GroundSide.Positive)
            pieces.Add(new TextPiece("positive ground", Ink.Text, 3));
        if (rating.Load.Isolate)
            pieces.Add(new TextPiece("own return", Ink.TextQuiet, 6));
        if (sign is { } below && lines > 2)
            pieces.Add(SignPiece(below) with { BeginsLine = true });
        return pieces;
    }

    private static string NeedOf(LoadRating rating)
    {
        var volts = rating.Voltage.Value;
        var text = volts.IsSingle ? volts.Low.ToString() : $"{volts.Low.ToNumberString()} to {volts.High}";
        return $"{(rating.Voltage.IsAssumed ? "~" : "")}{text}{(rating.Form.Value == SupplyForm.Alternating ? " a.c." : "")}";
    }
}
