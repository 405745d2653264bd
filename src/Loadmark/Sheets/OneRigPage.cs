using Loadmark.Core.Checks;
using Loadmark.Core.Display;

namespace Loadmark.Sheets;

/// <summary>Everything there is to say about one rig.</summary>
internal static class OneRigPage
{
    private const int Indent = 2;

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, CheckResult result)
    {
        VerdictBlock.Write(sheet, result);
        FindingsBlock.Write(sheet, result);
        OutletTable.Write(sheet, result);
        WriteUntold(sheet, result);
        FindingsBlock.WriteSources(sheet, result);

        var origin = result.HeadroomIsDefault ? "default: the rig gives none" : "as the rig asks";
        sheet.BlankLine();
        sheet.Wrap($"Headroom: {FigureDisplay.Percent(result.Headroom)} of each limit is to stay free ({origin}).", 0).EndLine();
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
