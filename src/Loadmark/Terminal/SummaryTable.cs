using Loadmark.Answers;
using Loadmark.Core.Checks;

namespace Loadmark.Terminal;

/// <summary>The summary of several rigs: a line for each, worst first, with how many findings of each severity it has.</summary>
internal static class SummaryTable
{
    private const int Gap = 2;
    private const int CountCells = 4;
    private const int WorstCells = 12; // "? unreadable"
    private static ReadOnlySpan<Severity> Counted =>
        [Severity.Harm, Severity.Fails, Severity.Unsure, Severity.Noise, Severity.Margin, Severity.Note];

    /// <summary>Writes the table and a line that counts the verdicts.</summary>
    public static void Write(Sheet sheet, IReadOnlyList<CheckAnswer> answers)
    {
        var fileColumn = WorstCells + Gap + (Counted.Length * CountCells) + Gap;
        WriteHead(sheet, fileColumn);
        var verdicts = new List<string>();
        WriteAll(sheet, answers, null, fileColumn, verdicts);
        foreach (var severity in SeverityLook.WorstFirst)
            WriteAll(sheet, answers, severity, fileColumn, verdicts);

        sheet.BlankLine();
        sheet.Wrap($"{answers.Count} rigs: {string.Join(", ", verdicts)}.", 0).EndLine();
    }

    private static void WriteHead(Sheet sheet, int fileColumn)
    {
        sheet.Put("verdict", SheetStyle.Faint);
        for (var index = 0; index < Counted.Length; index++)
        {
            var look = SeverityLook.Of(Counted[index]);
            sheet.PutRight(look.SignOn(sheet), WorstCells + ((index + 1) * CountCells), look.Style);
        }

        sheet.PadTo(fileColumn).Put("rig, file", SheetStyle.Faint).EndLine();
    }

    /// <summary>Writes the lines of one verdict in the order asked; null is for what could not be read.</summary>
    private static void WriteAll(
        Sheet sheet, IReadOnlyList<CheckAnswer> answers, Severity? verdict, int fileColumn, List<string> verdicts)
    {
        var count = 0;
        foreach (var answer in answers)
        {
            if (answer.Result?.Verdict != verdict)
                continue;

            count++;
            if (answer.Result is { } result)
                WriteCounts(sheet, result);
            else
                sheet.Put("? unreadable", SheetStyle.Orange);
            WriteNames(sheet, answer, fileColumn);
        }

        if (count > 0)
            verdicts.Add($"{count} {(verdict is { } severity ? SeverityLook.Of(severity).Word : "unreadable")}");
    }

    private static void WriteCounts(Sheet sheet, CheckResult result)
    {
        var look = SeverityLook.Of(result.Verdict);
        sheet.Put($"{look.SignOn(sheet)} {look.Word}", look.Style);
        for (var index = 0; index < Counted.Length; index++)
        {
            var count = 0;
            foreach (var finding in result.Findings)
                count += finding.Severity == Counted[index] ? 1 : 0;
            sheet.PutRight(
                count == 0 ? "." : count.ToString(),
                WorstCells + ((index + 1) * CountCells),
                count == 0 ? SheetStyle.Faint : SheetStyle.Plain);
        }
    }

    /// <summary>The rig's name and its file on one line where both fit, else on two.</summary>
    private static void WriteNames(Sheet sheet, CheckAnswer answer, int column)
    {
        sheet.PadTo(column);
        if (answer.Result is { } result)
        {
            sheet.PutShortened(result.Rig, sheet.Width - column, SheetStyle.Strong);
            if (sheet.Column + Gap + sheet.CellsOf(answer.File) > sheet.Width)
                sheet.EndLine().PadTo(column);
            else
                sheet.PadTo(sheet.Column + Gap);
        }

        sheet.Wrap(answer.File, column, SheetStyle.Faint).EndLine();
    }
}
