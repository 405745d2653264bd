using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Draws a load: its tag and name, what it needs, what it draws, and the worst that is said about it.</summary>
internal static class LoadDrawing
{
    private const double Inset = 8;

    /// <summary>The width of a box below which polarity and ground are told in short, px.</summary>
    private const double ShortBelow = 330;

    /// <summary>The room between the name and the sign with its word at the right.</summary>
    private const double SignGap = 8;

    public static SceneGroup Of(DiagramModel view, DiagramLayout layout, WiredLoad load)
    {
        var box = layout.Loads[load.Index];
        var worst = view.WorstOf(load.Id);
        var laid = layout.LoadTexts[load.Index];
        var shapes = new List<Shape> { new RectShape(Ink.Outline, box, 3) };
        var first = box.Middle.Y + 4.5 - ((laid.Count - 1) * DiagramMeasures.LinePitch / 2);
        var sign = SignOf(worst);
        TextFlow.Draw(shapes, laid, box.X + Inset, first, DiagramMeasures.LinePitch);
        if (sign is not null)
            TextFlow.Draw(
                shapes, [[new PlacedPiece(sign, 0, sign.Text)]], box.Right - Inset - sign.Width, first, DiagramMeasures.LinePitch);
        HarmFrame.Add(shapes, worst, box);
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

    /// <summary>What a load's box says, line by line.</summary>
    /// <param name="view">The rig.</param>
    /// <param name="measures">The columns.</param>
    /// <param name="load">The load.</param>
    /// <param name="width">The width of its box, px.</param>
    public static List<List<PlacedPiece>> Lay(DiagramModel view, DiagramMeasures measures, WiredLoad load, double width)
    {
        var beside = SignOf(view.WorstOf(load.Id)) is { } sign ? sign.Width + SignGap : 0;
        return view.Lay(Pieces(view, load, measures.LoadWidth < ShortBelow), width - (2 * Inset), measures.LoadLines, beside);
    }

    private static TextPiece? SignOf(Core.Checks.Severity? worst) => worst is { } severity
        ? new TextPiece(SignShapes.WordOf(severity), SignShapes.InkOf(severity)) { Sign = severity }
        : null;

    private static List<TextPiece> Pieces(DiagramModel view, WiredLoad load, bool isShort)
    {
        var rating = load.Rating;
        var pieces = new List<TextPiece>
        {
            new(SafeText.Clean(load.Id), Ink.TextStrong) { Role = TextRole.Body, MayShrink = true },
        };
        if (rating.Load.Name is { } name)
            pieces.Add(new TextPiece(SafeText.Clean(name), Ink.Text, 4) { MayShrink = true });
        else if (rating.Load.Kind is { } kind)
            pieces.Add(new TextPiece(SafeText.Clean(kind.Text), Ink.TextQuiet, 7) { MayShrink = true });

        if (view.ReadingOf(load) is { } reading)
        {
            pieces.Add(new TextPiece(FigureDisplay.Said(reading.Volts), Ink.TextReading) { BeginsLine = true });
            if (reading.State is { } state)
                pieces.Add(new TextPiece(SafeText.Clean(state), Ink.TextReading, 1));
            pieces.Add(new TextPiece($"needs {NeedOf(rating)}, {DrawOf(rating)}", Ink.TextQuiet, 2));
        }
        else
        {
            pieces.Add(new TextPiece(NeedOf(rating), Ink.TextFigure) { BeginsLine = true });
            pieces.Add(new TextPiece(DrawOf(rating), Ink.TextFigure));
        }

        if (rating.StartIsGiven && rating.Starting is { } start && start.Value != rating.Running?.Value)
            pieces.Add(new TextPiece($"start {start.Value}", Ink.TextQuiet, 5));

        // What can harm is left out at no width.
        if (PolarityNote.Of(rating.Polarity, rating.Form, isShort) is { } polarity)
            pieces.Add(new TextPiece(polarity, Ink.Text));
        if (rating.Ground.Value == GroundSide.Positive)
            pieces.Add(new TextPiece(isShort ? "ground +" : "positive ground", Ink.Text));
        if (rating.Load.Isolate)
            pieces.Add(new TextPiece("needs isolated", Ink.TextQuiet, 6));
        return pieces;
    }

    private static string DrawOf(LoadRating rating) => rating.Running is { } run ? $"{(run.IsAssumed ? "~" : "")}{run.Value}" : "? mA";

    private static string NeedOf(LoadRating rating)
    {
        if (!rating.Voltage.IsKnown)
            return "? V";
        var volts = rating.Voltage.Value;
        var text = volts.IsSingle ? volts.Low.ToString() : $"{volts.Low.ToNumberString()} to {volts.High}";
        return $"{(rating.Voltage.IsAssumed ? "~" : "")}{text}{(rating.Form.Value == SupplyForm.Alternating ? " a.c." : "")}";
    }
}
