using System.Globalization;
using Loadmark.Storage.Rigs;

namespace Loadmark.Terminal;

/// <summary>The rigs that are kept.</summary>
internal static class RigsPage
{
    private const int Indent = 2;
    private const int NameColumn = 20;

    /// <summary>Writes the list, the last changed first.</summary>
    public static void Write(Sheet sheet, IReadOnlyList<RigSummary> rigs)
    {
        sheet.Put("RIGS  ", SheetStyle.Strong)
            .Wrap(rigs.Count == 0 ? "none is kept" : $"{rigs.Count} kept, the last changed first", sheet.Column, SheetStyle.Strong)
            .EndLine();
        foreach (var rig in rigs)
            sheet.PadTo(Indent).Put(rig.Changed.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), SheetStyle.Faint)
                .PadTo(NameColumn).Wrap(rig.Name, NameColumn).EndLine();
    }

    /// <summary>Writes that a rig was written to a file.</summary>
    public static void WriteExport(Sheet sheet, string rig, string file, bool isWrittenOut) =>
        sheet.Wrap(
            $"The rig file of {rig} is written to "
            + $"{file}{(isWrittenOut ? "; what it takes from the gear library is written into it" : "")}.",
            0).EndLine();

    /// <summary>Writes which rigs are kept now.</summary>
    public static void WriteKept(Sheet sheet, IReadOnlyList<RigSummary> rigs) =>
        sheet.Wrap(rigs.Count == 0 ? "No rig was kept." : $"Kept: {string.Join(", ", rigs.Select(static rig => rig.Name))}.", 0).EndLine();
}
