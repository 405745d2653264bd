using Loadmark.Answers;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Workshop.Asking;
using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>The answer to "may I plug this in?".</summary>
internal static class AskPage
{
    private const int Indent = 2;
    private const int TextColumn = 14;

    /// <summary>Writes the page: the answer first, then what has to fit, then what is often asked next.</summary>
    public static void Write(Sheet sheet, PlugInAnswer answer)
    {
        sheet.Wrap(answer.Sentence, 0, SheetStyle.Strong).EndLine();
        foreach (var text in answer.Details)
            sheet.PadTo(Indent).Put(sheet.Unicode ? "• " : "- ").Wrap(SentenceCase.Ended(text), Indent + 2).EndLine();
        sheet.BlankLine();
        WriteRead(sheet, answer.Rig);
        if (answer.Points.Count > 0)
        {
            sheet.BlankLine();
            foreach (var point in answer.Points)
                WritePoint(sheet, point);
        }

        WriteTexts(sheet, answer.Points.Count > 0 ? "What else fits:" : "What would do:", answer.Fits);
        foreach (var next in answer.Next)
            sheet.BlankLine().Wrap(next.Question, 0, SheetStyle.Strong).EndLine().PadTo(Indent).Wrap(next.Answer, Indent).EndLine();
        sheet.BlankLine();
        Cautions.Write(sheet);
    }

    /// <summary>What was understood of each thing, so that a wrong reading is seen.</summary>
    private static void WriteRead(Sheet sheet, Rig rig)
    {
        foreach (var load in rig.Loads)
            WriteThing(sheet, load.Id, load.Label);
        foreach (var supply in rig.Supplies)
            WriteThing(sheet, supply.Id, supply.Label);
    }

    private static void WriteThing(Sheet sheet, string name, Core.Nameplates.Nameplate? label)
    {
        var unread = label is { Unread.Length: > 0 }
            ? $"; not understood: {string.Join(", ", label.Unread.Select(static piece => $"“{piece.Text}”"))}"
            : "";
        sheet.PadTo(Indent)
            .PutShortened(name, TextColumn - Indent - 1)
            .PadTo(TextColumn)
            .Wrap($"{label?.Text}{unread}", TextColumn, SheetStyle.Faint)
            .EndLine();
    }

    private static void WritePoint(Sheet sheet, PlugInPoint point)
    {
        var look = LookOf(point.State);
        sheet.PadTo(Indent)
            .Put($"{(sheet.Unicode ? look.Sign : look.Ascii)} {AskJson.WordOf(point.Aspect)}", look.Style)
            .PadTo(TextColumn)
            .Wrap(point.Working, TextColumn)
            .EndLine();
    }

    private static (string Sign, string Ascii, Style Style) LookOf(PointState state) => state switch
    {
        PointState.Good => ("✔", "+", SheetStyle.Green),
        PointState.Unsure => ("?", "?", SheetStyle.Olive),
        _ => ("✖", "X", SheetStyle.Vermilion),
    };

    private static void WriteTexts(Sheet sheet, string head, ValueList<string> texts)
    {
        if (texts.Count == 0)
            return;
        sheet.BlankLine().Wrap(head, 0, SheetStyle.Strong).EndLine();
        foreach (var text in texts)
            sheet.PadTo(Indent).Wrap(text, Indent).EndLine();
    }
}
