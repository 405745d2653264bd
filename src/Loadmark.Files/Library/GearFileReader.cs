using Loadmark.Core.Gear;
using Loadmark.Files.Entry;
using Loadmark.Files.Errors;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Library;

/// <summary>
/// Reads files of gear: YAML or JSON with the sections <c>loads</c>, <c>supplies</c> and <c>leads</c> of a rig file, which a whole rig file
/// has too; or a table of loads, of supplies or of leads. Whatever is wrong comes back as errors and refused rows, never as an exception.
/// </summary>
public static class GearFileReader
{
    /// <summary>The largest file, in bytes: 16 MiB. A library of 20,000 pieces takes about 4.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    /// <summary>The most lines of a table.</summary>
    public const int MostLines = 60_000;

    private static readonly string[] Tables = [".csv", ".tsv", ".txt"];

    /// <summary>Reads the text of a file.</summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="fileName">The name that errors carry; its end tells a table from other files, and where it does not the text
    /// does.</param>
    public static GearFileResult Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        return Read(text.TrimStart('\uFEFF'), fileName, new ErrorList(fileName));
    }

    /// <summary>Reads the bytes of a file: UTF-8, with or without a byte order mark.</summary>
    /// <param name="bytes">The bytes, as they came over a network or from elsewhere.</param>
    /// <param name="fileName">The name that errors carry; its end tells a table from other files, and where it does not the text
    /// does.</param>
    public static GearFileResult Read(ReadOnlySpan<byte> bytes, string fileName)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        var errors = new ErrorList(fileName);
        return RigBytes.Decode(bytes, errors) is { } text ? Read(text, fileName, errors) : new GearFileResult([], errors.ToArray(), []);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">Its path. One that cannot be read comes back as an error.</param>
    /// <param name="patience">How long to wait for somebody to write to it, where it is a pipe; null for the common time, of 10 s.</param>
    public static GearFileResult ReadFile(string path, TimeSpan? patience = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var errors = new ErrorList(path);
        return RigFile.LoadText(path, errors, "file of gear", MostBytes, patience) is { } text
            ? Read(text.TrimStart('\uFEFF'), path, errors)
            : new GearFileResult([], errors.ToArray(), []);
    }

    private static GearFileResult Read(string text, string fileName, ErrorList errors)
    {
        if (text.Length > MostBytes)
            errors.Add(null, RigFile.TooLarge("file of gear", MostBytes));
        else if (IsTable(text, fileName))
            return Checked(GearTables.Read(text, errors));
        else if (ControlCharacters.FirstIn(text) is >= 0 and var control)
            errors.Add(Spot.At(text, control), $"the character U+{(int)text[control]:X4} has no place in a text file");
        else if (TreeReader.Read(text, errors) is { } root)
            return Checked(GearTrees.Read(root, errors));
        return new GearFileResult([], errors.ToArray(), []);
    }

    private static bool IsTable(string text, string fileName)
    {
        var end = Path.GetExtension(fileName);
        if (Tables.Contains(end, StringComparer.OrdinalIgnoreCase))
            return true;
        if (end is ".yaml" or ".yml" or ".json")
            return false;
        var first = text.AsSpan().TrimStart();
        first = first[..Math.Max(0, first.IndexOfAny('\r', '\n'))];
        return first.Length > 0 && first[0] is not ('#' or '{' or '-') && !first.Contains(':') && first.ContainsAny(',', ';', '\t');
    }

    /// <summary>Refuses a tag that stands twice, capitals aside, and what cannot stand in a list.</summary>
    private static GearFileResult Checked(GearFileResult reading)
    {
        var lines = new Dictionary<(GearKind?, string), int>();
        return reading with
        {
            Rows =
            [
                .. reading.Rows.Select(row => row.Piece is null ? row
                    : HoldsControl(row)
                        ? Refused(row, "its name or one of its words holds a control character", "letters, digits and signs")
                    : lines.TryAdd((row.Kind, GearTag.KeyOf(row.Tag)), row.Line) ? row
                    : Refused(
                        row,
                        $"'{ErrorList.Quote(row.Tag)}' stands here a second time; "
                        + $"the first is on line {lines[(row.Kind, GearTag.KeyOf(row.Tag))]}",
                        "each tag once")),
            ],
        };
    }

    private static GearFileRow Refused(GearFileRow row, string because, string expected) =>
        row with { Piece = null, Refusal = new EntryRefusal(because, expected) };

    /// <summary>Quotes in YAML may spell characters that the text itself does not have.</summary>
    private static bool HoldsControl(GearFileRow row) =>
        ControlCharacters.FirstIn(row.Piece!.Name) >= 0
            || (row.Words?.Items.Any(static word => ControlCharacters.FirstIn(word) >= 0) ?? false);
}
