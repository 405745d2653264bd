using Loadmark.Questions;

namespace Loadmark.CommandLines;

/// <summary>Options that mean the same with every command.</summary>
internal static class CommonOptions
{
    /// <summary>The folder of what is kept.</summary>
    public static OptionSpec Data { get; } = new(
        "data",
        OptionKind.Text,
        "Where rigs and gear are kept; else in LOADMARK_DATA, else in your own data folder. The page may be open on it.")
    { Placeholder = "FOLDER", Needs = "the name of a folder" };

    /// <summary>Whether the answer is JSON.</summary>
    public static OptionSpec Json { get; } = new("json", OptionKind.Flag, "Answer in JSON, in SI units.");

    /// <summary>Whether the help is wanted.</summary>
    public static OptionSpec Help { get; } = new("help", OptionKind.Flag, "This page, or a command's: loadmark check --help.");

    /// <summary>Whether the version is wanted.</summary>
    public static OptionSpec Version { get; } = new("version", OptionKind.Flag, "The program's version.");

    /// <summary>Whether a file of the name that is written to is replaced.</summary>
    public static OptionSpec Force { get; } = new(
        "force",
        OptionKind.Flag,
        "Replace a file of that name. What is read, what is kept, and what is no ordinary file is never replaced.");
}
