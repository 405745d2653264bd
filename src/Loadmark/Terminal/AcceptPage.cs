using Loadmark.Core.Acceptance;
using Loadmark.Core.Checks;
using Loadmark.Workshop.Accepting;
using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>Whether a rig was built as drawn; before anything was measured, what is to be measured and in which order.</summary>
internal static class AcceptPage
{
    private const int Indent = 2;
    private const int LeadColumn = 4;
    private const int NameColumn = 8;
    private const int ExpectedColumn = 38;
    private const int ReadColumn = 59;

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, AcceptanceResult result)
    {
        sheet.Put("ACCEPT  ", SheetStyle.Strong).Wrap(result.Plan.Rig.Name, sheet.Column, SheetStyle.Strong).EndLine();
        var look = LookOf(result.Verdict);
        sheet.Put($"{(sheet.Unicode ? look.Sign : look.Ascii)} {look.Word}", look.Style).Put("  ")
            .Wrap(SentenceOf(result), sheet.Column, look.Style).EndLine();
        foreach (var reason in result.Because)
            sheet.PadTo(Indent).Put(sheet.Unicode ? "• " : "- ").Wrap(reason, Indent + 2).EndLine();
        if (result.Verdict == AcceptanceVerdict.Accepted && result.MayBePluggedIn.Count == 0)
            sheet.BlankLine();

        foreach (var step in result.Measures.Items.GroupBy(static one => one.Measure))
            WriteStep(sheet, step.Key, [.. step], result);
        WriteSession(sheet, result);
        sheet.BlankLine();
        sheet.Wrap("Judged with guard bands (JCGM 106): a reading passes where the meter's own error could not matter. "
            + "docs/acceptance.md tells more.", 0, SheetStyle.Faint).EndLine();
        Cautions.Write(sheet);
    }

    private static string SentenceOf(AcceptanceResult result) => result.Verdict switch
    {
        AcceptanceVerdict.Accepted => "Built as drawn: every plug was found right, open and loaded.",
        AcceptanceVerdict.Refused => "Not as drawn. Mend it before anything is plugged in.",
        _ => "Not proven yet.",
    };

    private static void WriteStep(Sheet sheet, BenchMeasure measure, List<JudgedMeasure> measures, AcceptanceResult result)
    {
        sheet.BlankLine();
        sheet.Put($"{(int)measure + 1}  ", SheetStyle.Strong).Wrap($"{MeasureText.StepOf(measure)}.", 3, SheetStyle.Strong).EndLine();
        if (measure == BenchMeasure.Open)
            sheet.PadTo(Indent).Wrap(AcceptancePlan.ProbeText, Indent, SheetStyle.Faint).EndLine();
        if (measure == BenchMeasure.Loaded && result.Session.Readings.Count > 0)
            sheet.PadTo(Indent).Wrap(MayBePluggedIn(result), Indent, SheetStyle.Faint).EndLine();
        if (measure == BenchMeasure.Draw)
            sheet.PadTo(Indent).Wrap(
                "An ampere range is a short circuit: in series with one load only, never across a supply.", Indent, SheetStyle.Faint)
                .EndLine();
        sheet.PadTo(LeadColumn).Put("lead", SheetStyle.Faint).PadTo(NameColumn + 1).Put("plug of", SheetStyle.Faint)
            .PadTo(ExpectedColumn).Put("expected", SheetStyle.Faint).PadTo(ReadColumn).Put("read", SheetStyle.Faint).EndLine();
        foreach (var one in measures)
            WriteMeasure(sheet, one);
    }

    private static string MayBePluggedIn(AcceptanceResult result) => result.MayBePluggedIn.Count == 0
        ? "Nothing may be plugged in yet."
        : $"May be plugged in: {Phrases.List(result.MayBePluggedIn)}.";

    private static void WriteMeasure(Sheet sheet, JudgedMeasure one)
    {
        var look = LookOf(one.Judged);
        sheet.PadTo(Indent).Put(sheet.Unicode ? look.Sign : look.Ascii, look.Style)
            .PadTo(LeadColumn).PutRight($"{one.Point.Plug.Lead.Number}", NameColumn, SheetStyle.Plain).PadTo(NameColumn + 1)
            .PutShortened($"{one.Point.Plug.Load.Id} ({one.Point.Name})", ExpectedColumn - NameColumn - 3, SheetStyle.Strong)
            .PadTo(ExpectedColumn).Put(MeasureText.Expected(one)).Put(" ").PadTo(ReadColumn)
            .Put(MeasureText.Read(one) is { Length: > 0 } read ? read : "-", look.Style).EndLine();
        if (one.Means.Length > 0)
            sheet.PadTo(NameColumn + 1).Wrap($"{one.Means} {one.Next}", NameColumn + 1).EndLine();
    }

    private static void WriteSession(Sheet sheet, AcceptanceResult result)
    {
        var session = result.Session;
        var words = new (string Name, string? Text)[]
        {
            ("by", session.By), ("taken", session.Taken), ("meter", session.Meter), ("serial", session.Serial),
            ("volts accuracy", session.VoltsAccuracy?.ToString()), ("amps accuracy", session.AmpsAccuracy?.ToString()),
            ("ambient", session.Ambient), ("note", session.Note), ("rig version", result.Plan.Version),
        };
        sheet.BlankLine();
        sheet.Wrap(string.Join(
            "; ", words.Where(static one => one.Text is not null).Select(static one => $"{one.Name}: {one.Text}")), 0).EndLine();
    }

    private static (string Sign, string Ascii, string Word, Style Style) LookOf(AcceptanceVerdict verdict) => verdict switch
    {
        AcceptanceVerdict.Accepted => ("✔", "+", "accepted", SheetStyle.Green),
        AcceptanceVerdict.Refused => ("✖", "X", "refused", SheetStyle.Vermilion),
        _ => ("□", "o", "open", SheetStyle.Plain),
    };

    private static (string Sign, string Ascii, Style Style) LookOf(Conformity? judged) => judged switch
    {
        Conformity.Pass => ("✔", "+", SheetStyle.Green),
        Conformity.NotSure => ("?", "?", SheetStyle.Olive),
        Conformity.Fail => ("✖", "X", SheetStyle.Vermilion),
        _ => ("□", "o", SheetStyle.Faint),
    };
}
