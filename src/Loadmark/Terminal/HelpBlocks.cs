using Loadmark.Processes;

namespace Loadmark.Terminal;

/// <summary>What pages of help are made of.</summary>
internal static class HelpBlocks
{
    private const int Indent = 2;
    private const int TextColumn = 30;
    private const int SeverityColumn = 12;

    /// <summary>Writes what is typed and what for.</summary>
    public static void WriteTitle(Sheet sheet, string usage, string job)
    {
        sheet.Wrap(usage, 2 * Indent, SheetStyle.Strong).EndLine();
        sheet.PadTo(Indent).Wrap(job, Indent).EndLine().BlankLine();
    }

    /// <summary>Writes a word and what it means; the meaning of a word that is too long for its column stands below it.</summary>
    public static void WriteEntry(Sheet sheet, string name, string text)
    {
        sheet.PadTo(Indent).Put(name, SheetStyle.Strong);
        if (sheet.Column >= TextColumn)
            sheet.EndLine();
        sheet.PadTo(TextColumn).Wrap(text, TextColumn).EndLine();
    }

    /// <summary>Writes a line.</summary>
    public static void WriteLine(Sheet sheet, string text) => sheet.Line(text);

    /// <summary>Writes an example, after a free line.</summary>
    public static void WriteExample(Sheet sheet, string example) => sheet.BlankLine().Line("Example:").Line($"  {example}");

    /// <summary>Writes a paragraph, and leaves a line free.</summary>
    public static void WriteParagraph(Sheet sheet, string text) => sheet.Wrap(text, 0).EndLine().BlankLine();

    /// <summary>Writes the severities with what each means, and leaves a line free.</summary>
    public static void WriteSeverities(Sheet sheet)
    {
        sheet.Line("Severities, worst first:");
        foreach (var severity in SeverityLook.WorstFirst)
        {
            var look = SeverityLook.Of(severity);
            sheet.PadTo(Indent)
                .Put($"{look.SignOn(sheet)} {look.Word}", look.Style)
                .PadTo(SeverityColumn)
                .Wrap(look.Meaning, SeverityColumn)
                .EndLine();
        }

        sheet.BlankLine();
    }

    /// <summary>Writes the exit codes.</summary>
    public static void WriteCodes(Sheet sheet)
    {
        sheet.Line("Exit codes:");
        WriteCode(sheet, ExitCode.Fine, "fine");
        WriteCode(sheet, ExitCode.Refused, "some rig has a finding of harm or fails, or nothing plugged in");
        WriteCode(sheet, ExitCode.Unreadable, "an input, or the command line, cannot be read");
        WriteCode(sheet, ExitCode.Fault, "a fault in the program");
        WriteCode(sheet, ExitCode.Interrupted, "interrupted");
    }

    private static void WriteCode(Sheet sheet, int code, string meaning) =>
        sheet.PutRight(code.ToString(), Indent + 3).Put("  ").Wrap(meaning, Indent + 5).EndLine();
}
