using Loadmark.Hosting;

namespace Loadmark.Sheets;

/// <summary>How the program is used.</summary>
internal static class HelpPage
{
    private const int Indent = 2;
    private const int TextColumn = 30;

    /// <summary>Writes the page on a topic.</summary>
    public static void Write(Sheet sheet, Topic topic)
    {
        switch (topic)
        {
            case Topic.Check:
                WriteCheck(sheet);
                break;
            case Topic.Plan:
                WritePlan(sheet);
                break;
            case Topic.Buy:
                WriteBuy(sheet);
                break;
            case Topic.Settle:
                SimulationHelp.WriteSettle(sheet);
                break;
            case Topic.StartUp:
                SimulationHelp.WriteStartUp(sheet);
                break;
            case Topic.Netlist:
                SimulationHelp.WriteNetlist(sheet);
                break;
            case Topic.Backup:
                CopyHelp.WriteBackup(sheet);
                break;
            case Topic.Restore:
                CopyHelp.WriteRestore(sheet);
                break;
            case Topic.Gear:
                LibraryHelp.WriteGear(sheet);
                break;
            case Topic.Rigs:
                LibraryHelp.WriteRigs(sheet);
                break;
            case Topic.Read:
                WriteRead(sheet);
                break;
            default:
                WriteProgram(sheet);
                break;
        }
    }

    /// <summary>Writes the one line that tells the version.</summary>
    public static void WriteVersion(Sheet sheet, Version? version) => sheet.Line($"loadmark {version?.ToString(3)}");

    private static void WriteProgram(Sheet sheet)
    {
        Title(sheet, "loadmark", "what feeds what on a player's effects rig, and the proof of it");
        Entry(sheet, "loadmark", "Open the page, in your browser and for this machine only.");
        Entry(sheet, "loadmark check RIG...", "As wired: is it safe, does it run, what is left?");
        Entry(sheet, "loadmark plan RIG", "What should feed what?");
        Entry(sheet, "loadmark buy RIG", "Which supplies should I buy?");
        Entry(sheet, "loadmark settle RIG", "What voltage does each load really get?");
        Entry(sheet, "loadmark startup RIG", "Does it all come up, and stay up?");
        Entry(sheet, "loadmark netlist RIG", "The same circuit for any SPICE program.");
        Entry(sheet, "loadmark read TEXT", "What does this nameplate say?");
        Entry(sheet, "loadmark backup FILE", "All that is kept, in one file.");
        Entry(sheet, "loadmark restore FILE", "A backup in the place of all that is kept.");
        Entry(sheet, "loadmark gear COMMAND", "The gear library: list, show, add, measure, import, export.");
        Entry(sheet, "loadmark rigs COMMAND", "The rigs that are kept: list, import, export, affected.");
        sheet.BlankLine();
        Entry(sheet, "--data FOLDER", "Rigs and gear are kept here; else in LOADMARK_DATA, else in your own data folder.");
        Entry(sheet, "--port N", "The page's port; one that is taken moves on to the next. 0 takes any that is free.");
        Entry(sheet, "--no-browser", "Print the page's address and do not open it.");
        Entry(
            sheet,
            "--log text|json",
            "How the page's log is written, on standard error: for people (default), or an object a line with each request.");
        Entry(sheet, "--log-content", "Let messages that may quote a rig into the log; else it holds none of your texts.");
        Entry(sheet, "--json", "Answer in JSON, in SI units.");
        Entry(sheet, "--help, -h", "This page, or a command's: loadmark check --help.");
        Entry(sheet, "--version", "The program's version.");
        sheet.BlankLine();
        WriteCodes(sheet);
        sheet.BlankLine();
        Cautions.Write(sheet);
    }

    private static void WriteCheck(Sheet sheet)
    {
        Title(sheet, "loadmark check RIG... [--startup] [--json]", "as wired: is it safe, does it run, what is left?");
        Entry(sheet, "RIG", "A rig file, or - for one on standard input. Several give each its verdict and a summary, worst first.");
        Entry(sheet, "--startup", "Compute the first seconds in any case, not only where a figure calls for it.");
        Entry(sheet, "--json", "One object for one rig, an array for several, in the order given.");
        sheet.BlankLine();
        sheet.Line("Severities, worst first:");
        foreach (var severity in SeverityLook.WorstFirst)
        {
            var look = SeverityLook.Of(severity);
            sheet.PadTo(Indent).Put($"{look.SignOn(sheet)} {look.Word}", look.Style).PadTo(12).Wrap(look.Meaning, 12).EndLine();
        }

        WriteCodesAndExample(sheet, "loadmark check examples/pit.rig.yaml");
    }

    private static void WritePlan(Sheet sheet)
    {
        Title(sheet, "loadmark plan RIG [--only SUPPLY] [--write FILE [--force]] [--json]", "what should feed what?");
        Entry(sheet, "RIG", "A rig file, or - for one on standard input. Its own wiring does not bind, except feeds with 'pinned: true'.");
        Entry(sheet, "--only SUPPLY", "Plan with this supply alone; several are parted by commas.");
        Entry(
            sheet,
            "--write FILE",
            "Write the rig with the planned wiring to this file, comments kept; with - to standard output instead of the answer.");
        ForceEntry(sheet);
        Entry(sheet, "--json", "One object: status, feeds, what is not fed and why, what would mend it.");
        WriteCodesAndExample(sheet, "loadmark plan examples/pit.rig.yaml");
    }

    private static void WriteBuy(Sheet sheet)
    {
        Title(sheet, "loadmark buy RIG --prices CSV [--room LABEL] [--only SUPPLY] [--all] [--json]", "which supplies should I buy?");
        Entry(
            sheet,
            "RIG",
            "A rig file, or - for one on standard input. Its supplies and leads are used for nothing; feeds with 'pinned: true' stay.");
        Entry(sheet, "--prices CSV", "Your price list: one supply a line (docs/price-list.md).");
        Entry(sheet, "--room LABEL", "Keep room for a load to come, such as \"9 V 300 mA\"; may be given several times.");
        Entry(sheet, "--only SUPPLY", "Of the rig's supplies use this one alone; several are parted by commas.");
        Entry(sheet, "--all", "Show every option with its wiring, not only the cheapest.");
        Entry(sheet, "--json", "One object: status, options with their plans, what was left out and why.");
        WriteCodesAndExample(sheet, "loadmark buy examples/to-buy.rig.yaml --prices examples/harbour-row.prices.csv");
    }

    private static void WriteRead(Sheet sheet)
    {
        Title(sheet, "loadmark read TEXT [--json]", "what does this nameplate say?");
        Entry(
            sheet,
            "TEXT",
            "What is printed, best in quotes; words without quotes are one label. - reads standard input, a label a line. After -- a text may begin with a dash.");
        Entry(sheet, "--json", "One object a line for each text.");
        sheet.BlankLine();
        sheet.Line("Example:").Line("  loadmark read \"9V DC 300mA centre negative\"");
    }

    /// <summary>Writes the exit codes and an example.</summary>
    internal static void WriteCodesAndExample(Sheet sheet, string example)
    {
        sheet.BlankLine();
        WriteCodes(sheet);
        sheet.BlankLine();
        sheet.Line("Example:").Line($"  {example}");
    }

    /// <summary>Writes what is typed and what for.</summary>
    internal static void Title(Sheet sheet, string usage, string job)
    {
        sheet.Put(usage, SheetStyle.Strong).EndLine();
        sheet.PadTo(Indent).Wrap(job, Indent).EndLine().BlankLine();
    }

    /// <summary>Writes a word and what it means.</summary>
    internal static void Entry(Sheet sheet, string name, string text) =>
        sheet.PadTo(Indent).Put(name, SheetStyle.Strong).PadTo(TextColumn).Wrap(text, TextColumn).EndLine();

    /// <summary>Writes what allows a file to be replaced.</summary>
    internal static void ForceEntry(Sheet sheet) => Entry(
        sheet, "--force", "Replace a file of that name. What is read, what is kept, and what is no ordinary file is never replaced.");

    /// <summary>Writes which folder a command on what is kept works in.</summary>
    internal static void DataEntry(Sheet sheet) => Entry(
        sheet, "--data FOLDER", "Where rigs and gear are kept; else in LOADMARK_DATA, else in your own data folder. The page may be open on it.");

    private static void WriteCodes(Sheet sheet)
    {
        sheet.Line("Exit codes:");
        Code(sheet, ExitCode.Fine, "fine");
        Code(sheet, ExitCode.Refused, "some rig has a finding of harm or fails, or nothing plugged in");
        Code(sheet, ExitCode.Unreadable, "an input, or the command line, cannot be read");
        Code(sheet, ExitCode.Fault, "a fault in the program");
        Code(sheet, ExitCode.Interrupted, "interrupted");
    }

    private static void Code(Sheet sheet, int code, string meaning) =>
        sheet.PutRight(code.ToString(), Indent + 3).Put("  ").Wrap(meaning, Indent + 5).EndLine();
}
