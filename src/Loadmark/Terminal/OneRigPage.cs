using Loadmark.Answers;
using Loadmark.Core.Checks;
using Loadmark.Core.Display;

namespace Loadmark.Terminal;

/// <summary>Everything there is to say about one rig.</summary>
internal static class OneRigPage
{
    private const int Indent = 2;

    /// <summary>Writes the page.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="answer">What came of checking it; it could be read.</param>
    public static void Write(Sheet sheet, CheckAnswer answer)
    {
        var result = answer.Result!;
        VerdictBlock.Write(sheet, result);
        FindingsBlock.Write(sheet, result);
        OutletTable.Write(sheet, result);
        WriteUntold(sheet, result);
        FindingsBlock.WriteSources(sheet, result);

        var origin = result.HeadroomIsDefault ? "default: the rig gives none" : "as the rig asks";
        sheet.BlankLine();
        sheet.Wrap($"Headroom: {FigureDisplay.Percent(result.Headroom)} of each limit is to stay free ({origin}).", 0).EndLine();
        QuestionsBlock.Write(sheet, answer.Questions);
        Cautions.Write(sheet);
    }

    private static void WriteUntold(Sheet sheet, CheckResult result)
    {
        if (result.Untold.Count == 0)
            return;

        sheet.BlankLine().Line("Could not be told", SheetStyle.Strong);
        foreach (var untold in result.Untold)
        {
            sheet.Put("? ").Put(untold.Rule).Put("  ");
            sheet.Wrap(untold.Because, Indent).EndLine();
        }
    }
}
