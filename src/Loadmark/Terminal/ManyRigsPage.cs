using Loadmark.Answers;
using Loadmark.Core.Checks;

namespace Loadmark.Terminal;

/// <summary>Several rigs: each with its verdict and findings, then a summary, worst first.</summary>
internal static class ManyRigsPage
{
    /// <summary>With more rigs than this, only findings of harm and fails are shown.</summary>
    public const int MostInFull = 10;

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, IReadOnlyList<CheckAnswer> answers)
    {
        var brief = answers.Count > MostInFull;
        foreach (var answer in answers)
        {
            if (answer.Result is not { } result || (brief && !result.IsRefused))
                continue;

            VerdictBlock.Write(sheet, result, answer.File);
            FindingsBlock.Write(sheet, result, brief ? Severity.Fails : Severity.Good);
            sheet.Rule();
        }

        SummaryTable.Write(sheet, answers);
        sheet.BlankLine();
        var shown = brief
            ? $"With more than {MostInFull} rigs only findings of harm and fails are shown. For all of one rig: "
            : "For the outlets of one rig: ";
        sheet.Wrap(shown + "loadmark check FILE. For everything at once: --json.", 0).EndLine();
        Cautions.Write(sheet);
    }
}
