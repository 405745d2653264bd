using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Starting;

namespace Loadmark.Terminal;

/// <summary>The first seconds of a rig: whether it all comes up, and what happens on the way.</summary>
internal static class StartUpPage
{
    private const int Indent = 2;
    private const int TextColumn = 14;
    private const int MostEvents = 16;

    /// <summary>Writes the page.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="started">The first seconds.</param>
    /// <param name="check">What the rules say of the rig.</param>
    /// <param name="file">The rig's file as typed.</param>
    /// <param name="csv">The file that the waveforms were written to; null for none.</param>
    /// <param name="spread">What becomes of it when the figures are not known exactly; null where that was not asked.</param>
    public static void Write(Sheet sheet, StartUpResult started, CheckResult check, string file, string? csv, SpreadResult? spread)
    {
        sheet.Put("START-UP  ", SheetStyle.Strong).Wrap(started.Rig, sheet.Column, SheetStyle.Strong).EndLine();
        if (started.Outlets.Items.All(static outlet => outlet.IsFree))
            SimulationParts.WriteUnwired(sheet, file);
        else
            WriteVerdict(sheet, started, check);

        var loads = new ColumnTable("load", "runs after", "lowest", "restarts", "state");
        foreach (var load in started.Loads)
            loads.Add(
                load.Load,
                load.RunsAfter is { } after ? FigureDisplay.Said(after) : "-",
                load.LowestVolts is null ? "-" : FigureDisplay.Said(load.LowestVolts),
                $"{load.Restarts}",
                StartUpText.State(load));
        loads.Write(sheet);

        var outlets = new ColumnTable("outlet", "limit", "peak", "at", "at its limit or over it for");
        foreach (var outlet in started.Outlets.Items.Where(static outlet => !outlet.IsFree))
            outlets.Add(
                $"{outlet.Outlet}",
                FigureDisplay.Printed(outlet.Limit),
                StartUpText.Peak(outlet),
                outlet.PeakAt is { } at ? FigureDisplay.Said(at) : "-",
                StartUpText.OverLimit(outlet));
        outlets.Write(sheet);
        WritePulses(sheet, started);
        SimulationParts.WriteTotals(sheet, started.Totals, "at most ");
        WriteStory(sheet, started, check);
        if (csv is not null)
            sheet.BlankLine().Wrap($"Waveforms written to {csv}.", 0).EndLine();
        SpreadBlock.Write(sheet, spread);
        SimulationParts.WriteRest(sheet, check, started.Assumptions, started.Untold);
    }

    private static void WriteVerdict(Sheet sheet, StartUpResult started, CheckResult check) =>
        SimulationParts.WriteVerdict(sheet, check, StartUpText.Verdict(started), StartUpText.AllComesUp(started));

    /// <summary>On what the peaks rest that are told as a range, once for all outlets where that is the same.</summary>
    private static void WritePulses(Sheet sheet, StartUpResult started)
    {
        var reasons = started.Outlets.Items.Where(static outlet => outlet.Pulse is not null)
            .GroupBy(static outlet => outlet.Pulse!.Because, static outlet => $"{outlet.Outlet}").ToList();
        if (reasons.Count > 0)
            sheet.BlankLine();
        foreach (var outlets in reasons)
            sheet.PadTo(Indent).Wrap($"The peak of {Phrases.List([.. outlets])} is a range: {outlets.Key}.", Indent).EndLine();
    }

    /// <summary>What happens: where something does not come up, only on its outlets; the rest is not what one looks for.</summary>
    private static void WriteStory(Sheet sheet, StartUpResult started, CheckResult check)
    {
        var concerned = check.Findings.Items.Where(static finding => finding.Rule == RuleId.DoesNotStart)
            .SelectMany(static finding => finding.Subjects.Items).ToHashSet(StringComparer.Ordinal);
        foreach (var outlet in check.Outlets.Items.Where(outlet => concerned.Contains($"{outlet.Outlet}")))
            concerned.UnionWith(outlet.Loads.Items);
        var events = started.Events.Items.Where(happening => concerned.Count == 0 || concerned.Contains(happening.Subject)).ToList();
        if (events.Count == 0)
            return;

        sheet.BlankLine()
            .Line(concerned.Count == 0 ? "What happens after switch-on" : "What happens where it does not come up", SheetStyle.Strong);
        foreach (var happening in events.Take(MostEvents))
            WriteEvent(sheet, happening);
        if (events.Count > MostEvents)
            sheet.PadTo(TextColumn)
                .Wrap(
                    $"... and so on: {events.Count - MostEvents} more, the last after {FigureDisplay.Said(events[^1].Time)}.",
                    TextColumn).EndLine();
        foreach (var repeating in events.Skip(MostEvents).Where(static happening => happening.Kind == StartUpEventKind.Repeats))
            WriteEvent(sheet, repeating);
    }

    private static void WriteEvent(Sheet sheet, StartUpEvent happening) =>
        sheet.PutRight(FigureDisplay.Said(happening.Time), TextColumn - 2, SheetStyle.Faint).PadTo(TextColumn)
            .Wrap(happening.Text, TextColumn).EndLine();
}
