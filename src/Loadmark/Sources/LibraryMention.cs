using Loadmark.Files;

namespace Loadmark.Sources;

/// <summary>Looks before anything else runs whether a rig file may take gear from the library.</summary>
internal static class LibraryMention
{
    private const string Word = "library";

    /// <summary>
    /// Whether any of what was typed names a file that has the word in it, whatever it means there, or something that cannot be looked
    /// into.
    /// </summary>
    /// <param name="typed">What was typed after the program's name.</param>
    public static bool IsIn(IEnumerable<string> typed) => typed.Any(IsInFile);

    private static bool IsInFile(string path)
    {
        try
        {
            if (path == StandardInput.Mark)
                return true;
            if (!File.Exists(path))
                return false;

            // What has no length may be a pipe, which can be read once only, or a device without an end: it is not looked into.
            var length = OrdinaryFile.LengthOf(path);
            return length == 0 || (
                length <= RigFileReader.MostBytes && File.ReadAllText(path).Contains(Word, StringComparison.OrdinalIgnoreCase));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The command that reads it says so.
            return false;
        }
    }
}
