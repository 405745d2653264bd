namespace Loadmark.Sheets;

/// <summary>How backups are made and restored.</summary>
internal static class CopyHelp
{
    /// <summary>Writes the page on backing up.</summary>
    public static void WriteBackup(Sheet sheet)
    {
        HelpPage.Title(sheet, "loadmark backup FILE [--force] [--data FOLDER] [--json]", "all that is kept, with every edit, in one file");
        HelpPage.Entry(sheet, "FILE", "Where to. The page may be open meanwhile; the copy is of one moment, and checked whole.");
        HelpPage.Entry(sheet, "--force", "Replace a file of that name. Without it nothing is ever replaced.");
        HelpPage.DataEntry(sheet);
        HelpPage.Entry(sheet, "--json", "One object: file, rigs, gear, unreadableRigs, bytes; or fault and message.");
        HelpPage.WriteCodesAndExample(sheet, "loadmark backup monday.db");
    }

    /// <summary>Writes the page on restoring.</summary>
    public static void WriteRestore(Sheet sheet)
    {
        HelpPage.Title(sheet, "loadmark restore FILE [--data FOLDER] [--json]", "puts a backup in the place of all that is kept");
        HelpPage.Entry(
            sheet,
            "FILE",
            "A backup. It is checked first, and only read. What is kept now is copied to a file beside the database, which the answer names.");
        HelpPage.DataEntry(sheet);
        HelpPage.Entry(sheet, "--json", "One object: file, rigs, gear, unreadableRigs, previous, wasOlder; or fault and message.");
        sheet.BlankLine();
        sheet.Wrap("The page may be open meanwhile. It is told at its next edit of a rig, and nothing is overwritten.", 0).EndLine();
        HelpPage.WriteCodesAndExample(sheet, "loadmark restore monday.db");
    }
}
