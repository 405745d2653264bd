using Loadmark.Core.Display;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Spreading;

namespace Loadmark.Terminal;

/// <summary>What becomes of the answer when the figures are not known exactly.</summary>
internal static class SpreadBlock
{
    private const int Indent = 2;

    /// <summary>Writes the block; nothing where there is no spread.</summary>
    public static void Write(Sheet sheet, SpreadResult? spread)
    {
        if (spread is null)
            return;
        sheet.BlankLine().Line("When the figures are not quite those", SheetStyle.Strong);
        if (!spread.IsComplete)
            Line(
                sheet,
                $"Stopped: {spread.Samples} of the {spread.Asked} samples were computed, and the rest of this is of them.",
                SheetStyle.Orange);
        Line(sheet, Verdict(spread), spread.Runs.Held == spread.Runs.Samples ? SheetStyle.Green : SheetStyle.Orange);
        if (spread.LeftOut.Count > 0)
        {
            var names = Core.Checks.Phrases.List([.. spread.LeftOut]);
            Line(sheet, $"Left out, as nothing tells what becomes of it: {names}.", SheetStyle.Orange);
        }

        if (spread.OpenUpwards.Count > 0)
            Line(
                sheet,
                $"The draw of {Core.Checks.Phrases.List([.. spread.OpenUpwards])} is known from below only. "
                + "All of this is for that least draw, and the worst corner cannot be told: measure it.",
                SheetStyle.Orange);
        if (spread.Uncomputed > 0)
            Line(sheet, $"{spread.Uncomputed} samples could not be computed in full; they count as not running.", SheetStyle.Orange);

        var volts = new ColumnTable(
            "load", spread.IsStartUp ? "lowest 5 %" : "gets 5 %", "median", "95 %", "corner", spread.IsStartUp ? "comes up" : "runs");
        foreach (var load in spread.Loads)
            Add(
                volts,
                load.Load,
                load.Volts,
                static value => FigureDisplay.Said(value),
                "-",
                $"{FigureDisplay.Chance(load.Runs.Share)}{(load.Corner == LoadState.Runs ? "" : $"; corner: {Word(load.Corner)}")}");
        volts.Write(sheet);

        var after = new ColumnTable("load", "runs after 5 %", "median", "95 %", "corner", "");
        foreach (var load in spread.Loads.Items.Where(static load => load.RunsAfter is { Samples: > 0 }))
            Add(after, load.Load, load.RunsAfter!, static time => FigureDisplay.Said(time), "never", "");
        after.Write(sheet);

        var amps = new ColumnTable("outlet", spread.IsStartUp ? "peak 5 %" : "gives 5 %", "median", "95 %", "corner", "limit");
        foreach (var outlet in spread.Outlets)
            Add(
                amps,
                $"{outlet.Outlet}",
                outlet.Amps,
                static value => FigureDisplay.Said(value),
                "-",
                FigureDisplay.Printed(outlet.Limit));
        amps.Write(sheet);

        sheet.BlankLine();
        Line(
            sheet,
            "Corner: every draw at its highest, every outlet at its lowest voltage, every lead at its longest, all at once, "
            + "or all the other way round; the worse of the two.",
            SheetStyle.Faint);
        foreach (var assumption in spread.Assumptions)
            sheet.PadTo(Indent).Wrap($"{assumption}.", Indent + Indent, SheetStyle.Faint).EndLine();
        Line(sheet, "How this is computed: docs/theory/spread.md.", SheetStyle.Faint);
    }

    private static string Verdict(SpreadResult spread)
    {
        var what = spread.IsStartUp ? "everything comes up and stays up" : "every load runs";
        return spread.Samples == 0
            ? "No sample was computed."
            : $"In {spread.Runs.Held} of {spread.Samples} samples {what}: {FigureDisplay.Chance(spread.Runs.Share)}. "
                + $"The probability is between {FigureDisplay.Chance(spread.Runs.Low)} and {FigureDisplay.Chance(spread.Runs.High)} (95 % "
                + $"interval of Wilson); seed {spread.Seed}.";
    }

    private static void Add<TUnit>(
        ColumnTable table, string name, Percentiles<TUnit> figure, Func<Quantity<TUnit>, string> text, string none, string last)
        where TUnit : struct, IUnit =>
        table.Add(
            name,
            figure.Low is { } low ? text(low) : none,
            figure.Median is { } median ? text(median) : none,
            figure.High is { } high ? text(high) : none,
            figure.Corner is { } corner ? text(corner) : none,
            last);

    private static void Line(Sheet sheet, string text, Spectre.Console.Style style) =>
        sheet.PadTo(Indent).Wrap(text, Indent, style).EndLine();

    private static string Word(LoadState state) => state == LoadState.Low ? "low" : "off";
}
