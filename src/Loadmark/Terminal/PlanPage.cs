using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Explaining;
using Loadmark.Planning;

namespace Loadmark.Terminal;

/// <summary>A plan as a person plugs it in: one line a feed, what changes, what stays free, what stands in the way.</summary>
internal static class PlanPage
{
    private const int Indent = 2;

    /// <summary>Writes the page.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="rig">The rig as it was, for what changes.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="explanation">What stands in the way of the loads it does not feed.</param>
    /// <param name="written">The file the wiring was written to; null when it was written to none.</param>
    public static void Write(Sheet sheet, Rig rig, PlanResult plan, PlanExplanation explanation, string? written)
    {
        WriteHead(sheet, plan);
        sheet.BlankLine();
        FeedLines.Write(sheet, plan, Indent);
        WriteMoves(sheet, rig, plan);
        WriteExplanation(sheet, plan, explanation);
        WriteChecked(sheet, plan, written);
        Cautions.Write(sheet);
    }

    private static void WriteHead(Sheet sheet, PlanResult plan)
    {
        sheet.Put("PLAN  ", SheetStyle.Strong).Wrap(plan.Rig.Name, sheet.Column, SheetStyle.Strong).EndLine();
        sheet.PadTo(Indent).Wrap(PlanSentence.Of(plan), Indent).EndLine();
        if (plan.Unfed.Count > 0)
            sheet.PadTo(Indent).Wrap($"Not fed: {string.Join(", ", plan.Unfed)}.", Indent, SheetStyle.Orange).EndLine();
    }

    /// <summary>What to do where something is wired already.</summary>
    private static void WriteMoves(Sheet sheet, Rig rig, PlanResult plan)
    {
        if (rig.Wired is not { Count: > 0 })
            return;

        sheet.BlankLine().Line("What changes against the wiring in the file", SheetStyle.Strong);
        var moves = LoadMove.Between(rig, plan.Rig);
        if (moves.Count == 0)
            sheet.PadTo(Indent).Put("Nothing.").EndLine();
        foreach (var move in moves)
        {
            var before = string.Join(" and ", move.Before.Items.Select(LoadMove.PlaceOf));
            sheet.PadTo(Indent).Wrap(
                (move.After, before.Length) switch
                {
                    (null, _) => $"{move.Load}: off {before}, not fed",
                    ({ } after, 0) => $"{move.Load}: not fed now, to {LoadMove.PlaceOf(after)}",
                    ({ } after, _) => $"{move.Load}: from {before} to {LoadMove.PlaceOf(after)}",
                },
                Indent).EndLine();
        }
    }

    private static void WriteExplanation(Sheet sheet, PlanResult plan, PlanExplanation explanation)
    {
        if (explanation.Reasons.Count > 0)
        {
            sheet.BlankLine().Line("What stands in the way", SheetStyle.Strong);
            foreach (var reason in explanation.Reasons)
                sheet.PadTo(Indent).Wrap(reason.Because, Indent).EndLine();
        }

        if (explanation.Dark.Count > 0)
        {
            sheet.BlankLine().Line("What would do for the loads that are not fed, one outlet each", SheetStyle.Strong);
            foreach (var alike in explanation.Dark.Items.GroupBy(
                static dark => dark.Outlet, static dark => dark.Load, StringComparer.Ordinal))
                sheet.PadTo(Indent).Wrap($"{alike.Key}: {Phrases.List([.. alike])}", Indent).EndLine();
        }

        if (explanation.Changes.Count > 0)
        {
            sheet.BlankLine()
                .Line(
                    plan.Unfed.Count > 0 ? "Any one of these solves it (each was tried)" : "If less may stay free (tried)",
                    SheetStyle.Strong);
            foreach (var change in explanation.Changes)
                sheet.PadTo(Indent).Wrap(change.Text, Indent).EndLine();
        }
    }

    private static void WriteChecked(Sheet sheet, PlanResult plan, string? written)
    {
        sheet.BlankLine().Line("Best by, in this order", SheetStyle.Strong);
        foreach (var level in plan.Objective)
        {
            var bound = level.IsProven ? "proven" : $"not below {FigureDisplay.Number(level.Bound)}";
            sheet.PadTo(Indent).Wrap($"{level.Name}: {FigureDisplay.Number(level.Value)} ({bound})", Indent).EndLine();
        }

        var worst = SeverityLook.Of(plan.Check.Verdict);
        sheet.BlankLine();
        var where = written is null
            ? "Write it to a file (--write FILE) and 'loadmark check' it"
            : $"Written to {written}; 'loadmark check' it";
        sheet.Wrap($"Checked by the rules: {worst.Word}. {where} for every finding.", 0).EndLine();
    }
}
