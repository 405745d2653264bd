using Loadmark.Questions;
using Loadmark.Terminal;

namespace Loadmark.CommandLines;

/// <summary>How the program, or a command, is used.</summary>
internal static class HelpPage
{
    private const string Program = "loadmark";

    /// <summary>Writes the page on a command.</summary>
    /// <param name="sheet">Where to.</param>
    /// <param name="spec">The command.</param>
    /// <param name="path">The command as it is typed after the program's name; empty for the program itself.</param>
    public static void Write(Sheet sheet, CommandSpec spec, string path)
    {
        var isProgram = path.Length == 0;
        var name = $"{Program} {path}".TrimEnd();
        HelpBlocks.WriteTitle(sheet, isProgram ? name : $"{name} {spec.FullUsage(withCommon: true)}", spec.Question);
        if (isProgram && spec.Run is not null)
            HelpBlocks.WriteEntry(sheet, name, "Open the page, in your browser and for this machine only.");
        foreach (var below in spec.Commands)
            HelpBlocks.WriteEntry(
                sheet, $"{(isProgram ? $"{name} " : "")}{below.Name} {below.Spec.ShortUsage}".TrimEnd(), SentenceOf(below.Spec));
        if (spec.Commands.Count > 0)
            sheet.BlankLine();
        foreach (var parameter in spec.Parameters)
            HelpBlocks.WriteEntry(sheet, parameter.Placeholder, parameter.Text);
        WriteOptions(sheet, spec, isProgram);
        sheet.BlankLine();
        if (spec.Note.Length > 0)
            HelpBlocks.WriteParagraph(sheet, spec.Note);
        if (spec.TellsVerdicts)
            HelpBlocks.WriteSeverities(sheet);
        HelpBlocks.WriteCodes(sheet);
        if (spec.Example.Length > 0)
            HelpBlocks.WriteExample(sheet, spec.Example);
        if (!isProgram)
            return;
        sheet.BlankLine();
        Cautions.Write(sheet);
    }

    /// <summary>Writes the one line that tells the version.</summary>
    /// <param name="sheet">Where to.</param>
    /// <param name="version">The version; null where the program has none.</param>
    public static void WriteVersion(Sheet sheet, Version? version) =>
        HelpBlocks.WriteLine(sheet, $"{Program} {version?.ToString(3)}");

    private static void WriteOptions(Sheet sheet, CommandSpec spec, bool isProgram)
    {
        if (isProgram)
            Entry(sheet, CommonOptions.Data);
        foreach (var option in spec.EveryOption)
            Entry(sheet, option);
        if (isProgram)
        {
            Entry(sheet, CommonOptions.Json);
            HelpBlocks.WriteEntry(sheet, $"{CommonOptions.Help.Typed}, -h", CommonOptions.Help.Text);
            Entry(sheet, CommonOptions.Version);
            return;
        }

        if (spec.IsOnStore)
            Entry(sheet, CommonOptions.Data);
        if (spec.Json is { } json)
            HelpBlocks.WriteEntry(sheet, CommonOptions.Json.Usage, json);
    }

    /// <summary>What a command is for; of one that only has others below it, these too.</summary>
    private static string SentenceOf(CommandSpec spec) => spec.Commands.Count == 0
        ? spec.Sentence
        : $"{spec.Sentence.TrimEnd('.')}: {string.Join(", ", spec.Commands.Select(static one => one.Name))}.";

    private static void Entry(Sheet sheet, OptionSpec option) => HelpBlocks.WriteEntry(sheet, option.Usage, option.Text);
}
