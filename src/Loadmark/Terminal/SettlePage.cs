using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Spreading;

namespace Loadmark.Terminal;

/// <summary>The steady state of a rig: what each load gets and each outlet gives.</summary>
internal static class SettlePage
{
    private const int Indent = 2;

    /// <summary>Writes the page.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="settled">The steady state.</param>
    /// <param name="check">What the rules say of the rig.</param>
    /// <param name="file">The rig's file as typed.</param>
    /// <param name="spread">What becomes of it when the figures are not known exactly; null where that was not asked.</param>
    public static void Write(Sheet sheet, SettleResult settled, CheckResult check, string file, SpreadResult? spread)
    {
        sheet.Put("SETTLE  ", SheetStyle.Strong).Wrap(settled.Rig, sheet.Column, SheetStyle.Strong).EndLine();
        if (settled.Loads.Items.All(static load => load.Volts is null) && settled.Outlets.Items.All(static outlet => outlet.IsFree))
            SimulationParts.WriteUnwired(sheet, file);
        else
            SimulationParts.WriteVerdict(sheet, check, Verdict(settled), settled.AllRun);

        var loads = new ColumnTable("load", "needs", "gets", "draws", "state");
        foreach (var load in settled.Loads)
            loads.Add(
                load.Load,
                $"{load.LowestPrinted}",
                load.State == LoadState.Off && load.Volts is null ? "-" : FigureDisplay.Said(load.Volts),
                FigureDisplay.Said(load.Amps),
                State(load));
        loads.Write(sheet);

        var outlets = new ColumnTable("outlet", "gives", "limit", "at", "state");
        foreach (var outlet in settled.Outlets.Items.Where(static outlet => !outlet.IsFree))
            outlets.Add(
                $"{outlet.Outlet}",
                FigureDisplay.Said(outlet.Amps),
                FigureDisplay.Printed(outlet.Limit),
                FigureDisplay.Said(outlet.Volts),
                State(outlet));
        outlets.Write(sheet);
        var free = settled.Outlets.Items.Where(static outlet => outlet.IsFree).Select(static outlet => $"{outlet.Outlet}").ToList();
        if (free.Count > 0)
            sheet.PadTo(Indent).Wrap($"Free: {Phrases.List(free)}.", Indent, SheetStyle.Faint).EndLine();
        SimulationParts.WriteTotals(sheet, settled.Totals, "");
        SpreadBlock.Write(sheet, spread);
        SimulationParts.WriteRest(sheet, check, settled.Assumptions, settled.Untold);
    }

    private static string Verdict(SettleResult settled)
    {
        if (!settled.IsFound)
            return "No steady state was found for part of it.";
        var dark = settled.Loads.Items.Where(static load => load.State == LoadState.Off).Select(static load => load.Load).ToList();
        var low = settled.Loads.Items.Where(static load => load.State == LoadState.Low).Select(static load => load.Load).ToList();
        if (dark.Count == 0 && low.Count == 0)
            return "Every load runs, at no less than 0.90 of its lowest printed voltage.";
        return string.Join(
            " ",
            new[]
            {
                dark.Count > 0 ? $"{Phrases.List(dark)} {Phrases.Verb(dark.Count, "does", "do")} not run." : "",
                low.Count > 0
                    ? $"{Phrases.List(low)} {Phrases.Verb(low.Count, "gets", "get")} under 0.90 of the lowest printed voltage."
                    : "",
            }.Where(static text => text.Length > 0));
    }

    private static string State(SettledLoad load) => load.State switch
    {
        LoadState.Runs => "runs",
        LoadState.Low => "low",
        _ => $"off{(load.Cycles ? ", over and over" : "")}: {load.Because}",
    };

    private static string State(SettledOutlet outlet) => (outlet.State, outlet.Cycles) switch
    {
        (OutletState.Limiting, true) => "at its limit: switches off and on over and over",
        (OutletState.Limiting, _) => "at its limit",
        (OutletState.Off, _) => "gives nothing",
        _ => "within its limit",
    };
}
