using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Simulation.Figures;
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
                State(load));
        loads.Write(sheet);

        var outlets = new ColumnTable("outlet", "limit", "peak", "at", "at its limit or over it for");
        foreach (var outlet in started.Outlets.Items.Where(static outlet => !outlet.IsFree))
            outlets.Add(
                $"{outlet.Outlet}",
                FigureDisplay.Printed(outlet.Limit),
                Peak(outlet),
                outlet.PeakAt is { } at ? FigureDisplay.Said(at) : "-",
                OverLimit(outlet));
        outlets.Write(sheet);
        WritePulses(sheet, started);
        SimulationParts.WriteTotals(sheet, started.Totals, "at most ");
        WriteStory(sheet, started, check);
        if (csv is not null)
            sheet.BlankLine().Wrap($"Waveforms written to {csv}.", 0).EndLine();
        SpreadBlock.Write(sheet, spread);
        SimulationParts.WriteRest(sheet, check, started.Assumptions, started.Untold);
    }

    private static void WriteVerdict(Sheet sheet, StartUpResult started, CheckResult check)
    {
        var failing = started.Loads.Items.Where(static load => load.State != LoadState.Runs).Select(static load => load.Load).ToList();
        var text = (failing.Count, started.IsComplete) switch
        {
            (_, false) => $"The first {FigureDisplay.Said(started.Duration)} could be computed, no more.",
            (0, _) when started.SettledAfter is { } after =>
                $"Everything comes up and stays up; at rest after {FigureDisplay.Said(after)}.",
            (0, _) => "Everything comes up and stays up, but what the outlets do never comes to rest.",
            _ => $"In the first {FigureDisplay.Said(started.Duration)} {Phrases.List(failing)} {Phrases.Verb(failing.Count, "does", "do")} "
                + "not come up properly.",
        };
        SimulationParts.WriteVerdict(sheet, check, text, failing.Count == 0 && started.IsComplete);
    }

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

    private static string State(StartedLoad load) => (load.State, load.Cycles) switch
    {
        (LoadState.Runs, _) => "runs",
        (LoadState.Low, _) => "low",
        (_, true) => "off: starts and drops out over and over",
        _ => load.Because is { } because ? $"off: {because}" : "off",
    };

    private static string Peak(StartedOutlet outlet) => outlet.Pulse?.Peaks ?? FigureDisplay.Said(outlet.PeakAmps);

    private static string OverLimit(StartedOutlet outlet)
    {
        var (least, most) = outlet.Pulse is { } pulse ? (pulse.OverLimitLeast, pulse.OverLimitMost) : (outlet.OverLimit, outlet.OverLimit);
        var time = most.Value == 0 ? "-" : Range(least, most);
        return time + (outlet.SurgeIsSpent ? ", longer than it bears its surge" : "");
    }

    private static string Range(Seconds least, Seconds most) =>
        least == most ? FigureDisplay.Said(least) : $"{FigureDisplay.Said(least)} to {FigureDisplay.Said(most)}";
}
