using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;

namespace Loadmark.Files;

/// <summary>
/// Reads rig files: YAML, or JSON of the same shape. Whatever is wrong with a file comes back as errors, never as an exception.
/// </summary>
public static class RigFileReader
{
    /// <summary>The largest file, in bytes: 1 MiB. A rig of ten thousand loads is smaller.</summary>
    public const int MostBytes = 1024 * 1024;

    /// <summary>How many errors are told in full; one more then says how many were left out.</summary>
    public const int MostErrors = ErrorList.Most;

    /// <summary>Reads the text of a rig file.</summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="fileName">The name that errors carry.</param>
    /// <param name="library">The gear that the file may take <c>from: library</c>; null where there is no library, and then such a file is
    /// refused.</param>
    /// <returns>The rig, or every error in the text.</returns>
    public static RigFileResult Read(string text, string fileName, IGearLookup? library = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        return Read(text, new ErrorList(fileName), library);
    }

    /// <summary>Reads a rig file and gives its text too, to the letter.</summary>
    /// <param name="path">Its path. One that cannot be read comes back as an error.</param>
    /// <param name="library">The gear that the file may take <c>from: library</c>; null where there is no library, and then such a file is
    /// refused.</param>
    /// <param name="patience">How long to wait for somebody to write to it, where it is a pipe; null for the common time, of 10 s.</param>
    /// <returns>The rig, or every error in the file; and its text, null when there is none.</returns>
    public static (RigFileResult Reading, string? Text) ReadFileWithText(
        string path, IGearLookup? library = null, TimeSpan? patience = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var errors = new ErrorList(path);
        var text = RigFile.LoadText(path, errors, patience: patience);
        return (text is null ? new RigFileResult(null, errors.ToArray()) : Read(text, errors, library), text);
    }

    /// <summary>Reads a rig from a stream to its end, such as standard input, and gives its text too, to the letter.</summary>
    /// <param name="stream">The stream; it stays open.</param>
    /// <param name="name">The name that errors carry.</param>
    /// <param name="library">The gear that the text may take <c>from: library</c>; null where there is no library, and then such a text is
    /// refused.</param>
    /// <returns>The rig, or every error in the text; and the text, null when there is none.</returns>
    public static (RigFileResult Reading, string? Text) ReadWithText(Stream stream, string name, IGearLookup? library = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(name);
        var errors = new ErrorList(name);
        var text = RigFile.LoadText(stream, errors);
        return (text is null ? new RigFileResult(null, errors.ToArray()) : Read(text, errors, library), text);
    }

    private static RigFileResult Read(string text, ErrorList errors, IGearLookup? library)
    {
        if (text.StartsWith('\uFEFF'))
            text = text[1..];
        var control = ControlCharacters.FirstIn(text);
        if (text.Length > MostBytes)
            errors.Add(null, RigFile.TooLarge());
        else if (control >= 0 && text[control] == '\0')
            errors.Add(Spot.At(text, control), "this is not a text file: it holds a zero character here", null, "a text in UTF-8");
        else if (control >= 0)
            errors.Add(
                Spot.At(text, control),
                $"the character U+{(int)text[control]:X4} has no place in a text file",
                $"U+{(int)text[control]:X4}");
        else if (TreeReader.Read(text, errors) is { } root && RigTreeReader.Read(root, errors, library) is { } rig && !errors.Any)
            return new RigFileResult(rig, []);

        return new RigFileResult(null, errors.ToArray());
    }
}
