using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Terminal;

/// <summary>What the pages on a rig's circuit have in common: totals, findings, assumptions, what could not be told.</summary>
internal static class SimulationParts
{
    private const int Indent = 2;

    /// <summary>Says what to do where nothing is wired.</summary>
    public static void WriteUnwired(Sheet sheet, string file) =>
        sheet.PadTo(Indent)
            .Wrap($"Nothing is wired yet. Have it planned and try again: loadmark plan {file} --write FILE", Indent, SheetStyle.Orange)
            .EndLine();

    /// <summary>
    /// Writes what came of it in a sentence; before that, where something would be harmed, that it must not be plugged in.
    /// </summary>
    /// <param name="sheet">The page.</param>
    /// <param name="check">What the rules say of the rig.</param>
    /// <param name="verdict">The sentence.</param>
    /// <param name="isGood">Whether it is good news.</param>
    public static void WriteVerdict(Sheet sheet, CheckResult check, string verdict, bool isGood)
    {
        var look = SeverityLook.Of(Severity.Harm);
        if (check.Verdict == Severity.Harm)
            sheet.PadTo(Indent).Wrap($"{look.SignOn(sheet)} {look.Meaning} See below. As computed:", Indent, look.Style).EndLine();
        var good = check.Verdict == Severity.Harm ? SheetStyle.Plain : SheetStyle.Green;
        sheet.PadTo(Indent).Wrap(verdict, Indent, isGood ? good : SheetStyle.Orange).EndLine();
    }

    /// <summary>Writes what supplies and banks give in all.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="totals">The totals.</param>
    /// <param name="peak">"at most" for a peak; empty for a steady state.</param>
    public static void WriteTotals(Sheet sheet, IReadOnlyCollection<TotalGiven> totals, string peak)
    {
        if (totals.Count > 0)
            sheet.BlankLine();
        foreach (var total in totals)
        {
            var over = total.IsOver ? ": more than it is printed for, and nothing in the circuit holds it back" : "";
            sheet.PadTo(Indent)
                .Wrap(
                    $"{total.Holder}: {peak}{FigureDisplay.SaidTotal(total.Given, total.Limit)} of {total.Limit}{over}.",
                    Indent,
                    total.IsOver ? SheetStyle.Orange : SheetStyle.Plain).EndLine();
        }
    }

    /// <summary>Writes the findings that stand against switching on, what was assumed and what could not be told.</summary>
    public static void WriteRest(
        Sheet sheet, CheckResult check, IReadOnlyCollection<Assumption> assumptions, IReadOnlyCollection<Untold> untold)
    {
        FindingsBlock.Write(sheet, check, Severity.Fails);
        if (untold.Count > 0)
            sheet.BlankLine().Line("Could not be told", SheetStyle.Strong);
        foreach (var entry in untold)
            sheet.Put("? ").Wrap(entry.Because, Indent).EndLine();

        if (assumptions.Count > 0)
            sheet.BlankLine().Line("Assumed, because the rig does not say", SheetStyle.Strong);
        foreach (var assumption in assumptions)
            sheet.PadTo(Indent).Wrap($"{assumption}.", Indent + Indent, SheetStyle.Faint).EndLine();
        sheet.BlankLine();
        sheet.Wrap("Copper at 20 °C. Where these figures come from: docs/theory/rig-circuit.md.", 0, SheetStyle.Faint).EndLine();
        Cautions.Write(sheet);
    }
}
