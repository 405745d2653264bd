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
        {
            var was = report.WasDamaged ? "What was there before could not be opened; it" : "What was kept before";
            sheet.Wrap($"{was} is in {previous}.", 0).EndLine();
        }

        sheet.Wrap("A page that is open on a rig is told at its next edit.", 0).EndLine();
        WriteUnreadable(sheet, report.Contents.Unreadable);
    }

    /// <summary>Writes the list of automatic backups.</summary>
    public static void Write(Sheet sheet, IReadOnlyList<KeptCopy> copies)
    {
        if (copies.Count == 0)
        {
            sheet.Wrap("There are no automatic backups yet. The first is made on the first day that something is kept.", 0).EndLine();
            return;
        }

        sheet.Put(copies.Count == 1 ? "1 automatic backup" : $"{copies.Count} automatic backups", SheetStyle.Strong)
            .Wrap(", the last one first. Restore one by its name, or the last: loadmark restore --last", 0).EndLine();
        foreach (var copy in copies)
        {
            var why = copy.Reason switch
            {
                CopyReason.BeforeUpgrade => "before an upgrade",
                CopyReason.BeforeRestore => "before restoring",
                _ => "of the day",
            };
            var made = copy.Made.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
            sheet.Wrap($"  {made}  {why}, {FigureDisplay.Size(copy.Bytes)}: {copy.File}", 2).EndLine();
        }
    }

    /// <summary>Writes the report of salvaging.</summary>
    public static void Write(Sheet sheet, SalvageReport report)
    {
        sheet.Put("Salvaged ", SheetStyle.Strong).Wrap($"{Held(report.Contents)} to {report.File}.", 0).EndLine();
        if (report.Aside is { } aside)
            sheet.Wrap($"The damaged file is {aside} now; nothing in it was changed.", 0).EndLine();
        WriteList(sheet, "Lost:", report.Lost.Items);
        WriteList(sheet, "Taken from an automatic backup instead:", report.FromBackup.Items);
    }

    private static void WriteList(Sheet sheet, string head, IReadOnlyCollection<string> said)
    {
        if (said.Count == 0)
            return;
        sheet.Wrap(head, 0).EndLine();
        foreach (var one in said)
            sheet.Wrap($"  {one}", 2).EndLine();
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
