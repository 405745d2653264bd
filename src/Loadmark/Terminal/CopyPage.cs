using System.Globalization;
using Loadmark.Core.Display;
using Loadmark.Storage.Copies;

namespace Loadmark.Terminal;

/// <summary>What became of a backup.</summary>
internal static class CopyPage
{
    /// <summary>Writes a backup's report.</summary>
    public static void Write(Sheet sheet, BackupReport report)
    {
        sheet.Put("Backed up ", SheetStyle.Strong)
            .Wrap($"{Held(report.Contents)} to {report.File} ({FigureDisplay.Size(report.Bytes)}). The copy was checked and is whole.", 0)
            .EndLine();
        WriteUnreadable(sheet, report.Contents.Unreadable);
    }

    /// <summary>Writes the report of restoring.</summary>
    public static void Write(Sheet sheet, RestoreReport report)
    {
        var older = report.WasOlder ? " An older version of Loadmark wrote it; it was brought forward." : "";
        sheet.Put("Restored ", SheetStyle.Strong).Wrap($"{Held(report.Contents)} from {report.File}.{older}", 0).EndLine();
        if (report.Previous is { } previous)
            sheet.Wrap($"What was kept before is in {previous}.", 0).EndLine();
        sheet.Wrap("A page that is open on a rig is told at its next edit.", 0).EndLine();
        WriteUnreadable(sheet, report.Contents.Unreadable);
    }

    private static void WriteUnreadable(Sheet sheet, int count)
    {
        if (count > 0)
            sheet.Wrap($"{Rigs(count)} in it cannot be read: the database was damaged before. An earlier backup may have them whole.", 0)
                .EndLine();
    }

    private static string Held(CopyContents contents) => contents.Gear switch
    {
        0 => Rigs(contents.Rigs),
        1 => $"{Rigs(contents.Rigs)} and 1 piece of gear",
        var gear => $"{Rigs(contents.Rigs)} and {gear.ToString(CultureInfo.InvariantCulture)} pieces of gear",
    };

    private static string Rigs(int count) => count == 1 ? "1 rig" : $"{count.ToString(CultureInfo.InvariantCulture)} rigs";
}
