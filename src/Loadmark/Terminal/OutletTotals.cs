using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Processes;

namespace Loadmark.Terminal;

/// <summary>
/// The line under the table of outlets: how many are in use, and the power at them all, P = Σ V·I. Power and not
/// current, because amps at different voltages do not add up to anything.
/// </summary>
internal static class OutletTotals
{
    /// <summary>Writes the line.</summary>
    public static void Write(Sheet sheet, CheckResult result)
    {
        var outlets = result.Outlets;
        var used = 0;
        var run = Watts.Zero;
        var start = Watts.Zero;
        var whole = true;
        foreach (var outlet in outlets)
        {
            if (outlet.Loads.Count == 0)
                continue;

            used++;
            whole &= outlet is { Volts: not null, Run: not null, Start: not null };
            if (outlet is { Volts: { } volts, Run: { } running })
                run += volts * running;
            if (outlet is { Volts: { } atStart, Start: { } starting })
                start += atStart * starting;
        }

        var of = outlets.Count == 1 ? "1 outlet" : $"{outlets.Count} outlets";
        var atLeast = whole ? "" : "at least ";
        var watts = $"{FigureDisplay.Said(run)} running, {FigureDisplay.Said(start)} starting";
        sheet.PadTo(2).Wrap($"In all: {used} of {of} in use; {atLeast}{watts}.", 2).EndLine();
        foreach (var total in result.Totals)
        {
            var least = total.IsWhole ? "" : "at least ";
            var (running, starting) = (FigureDisplay.SaidTotal(total.Run, total.Limit), FigureDisplay.SaidTotal(total.Start, total.Limit));
            sheet.PadTo(2)
                .Wrap($"{TerminalText.Neutral(total.Holder)}: {least}{running} of {total.Limit} running, {starting} starting.", 2)
                .EndLine();
        }
    }
}
