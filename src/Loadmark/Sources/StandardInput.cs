using Loadmark.Files.Errors;

namespace Loadmark.Sources;

/// <summary>How standard input is named on the command line and in messages.</summary>
internal static class StandardInput
{
    /// <summary>What is typed in the place of a path.</summary>
    public const string Mark = "-";

    /// <summary>What is wrong where standard input is named twice.</summary>
    public const string OnceOnly = "- stands for standard input, which can be read once only.";

    /// <summary>Whether standard input is named more than once.</summary>
    /// <param name="paths">The paths as typed; null for none.</param>
    public static bool IsNamedTwice(IEnumerable<string>? paths) => paths?.Count(static path => path == Mark) > 1;

    /// <summary>A path as messages name it.</summary>
    /// <param name="path">The path as typed.</param>
    public static string NameOf(string path) => path == Mark ? FileError.StandardInput : path;
}
