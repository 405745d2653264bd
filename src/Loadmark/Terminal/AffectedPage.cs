using Loadmark.Core.Checks;
using Loadmark.Workshop.Library;

namespace Loadmark.Terminal;

/// <summary>The rigs that a change of a piece of gear means something to, worst first.</summary>
internal static class AffectedPage
{
    private const int Indent = 2;
    private const int Deeper = 4;

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, LibraryGear gear, IReadOnlyList<AffectedRig> rigs)
    {
        sheet.Put("AFFECTED  ", SheetStyle.Strong).Wrap(rigs.Count switch
        {
            0 => $"no rig has other figures of {gear.Tag} than the library",
            1 => $"one rig by the library's figures of {gear.Tag}",
            var count => $"{count} rigs by the library's figures of {gear.Tag}",
        }, sheet.Column, SheetStyle.Strong).EndLine();
        foreach (var rig in rigs)
            Write(sheet, rig);
        if (rigs.Count > 0)
            sheet.BlankLine()
                .Wrap("Take the new figures, or keep the old, for each rig on the page: loadmark.", 0, SheetStyle.Faint).EndLine();
    }

    private static void Write(Sheet sheet, AffectedRig rig)
    {
        sheet.BlankLine().PadTo(Indent).Wrap(rig.Rig.Name, Indent, SheetStyle.Strong).EndLine();
        sheet.PadTo(Deeper);
        if (rig is { Before: { } before, After: { } after })
        {
            Put(sheet, before.Verdict);
            sheet.Put(" → ");
            Put(sheet, after.Verdict);
        }
        else
        {
            sheet.Wrap($"? {rig.Problem}", Deeper, SheetStyle.Orange);
        }

        sheet.EndLine();
        foreach (var difference in rig.Differences)
            sheet.PadTo(Deeper).Wrap(GearPage.Say(difference), Deeper).EndLine();
        foreach (var finding in AffectedFindings.New(rig).Where(static finding => finding.Severity >= Severity.Noise))
            sheet.PadTo(Deeper).Wrap(finding.Message, Deeper).EndLine();
        if (rig.IsInDoubt)
            sheet.PadTo(Deeper)
                .Wrap(
                    "It may be another piece of that tag: neither its name nor its label is that of the library's.",
                    Deeper,
                    SheetStyle.Orange)
                .EndLine();
        if (rig.TakesFromLibrary)
            sheet.PadTo(Deeper).Wrap("It takes its figures from the library, and so has the new ones already.", Deeper, SheetStyle.Faint)
                .EndLine();
    }

    private static void Put(Sheet sheet, Severity severity)
    {
        var look = SeverityLook.Of(severity);
        sheet.Put($"{look.SignOn(sheet)} {look.Word}", look.Style);
    }
}
