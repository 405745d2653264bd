using Loadmark.Files.Texts;

namespace Loadmark.Files.Entry;

/// <summary>One line of what was typed.</summary>
/// <param name="Number">Which line, from 1.</param>
/// <param name="Text">The line without its line end.</param>
internal sealed record SourceLine(int Number, string Text)
{
    private static readonly string[] Bullets = ["- ", "* ", "• ", "– "];

    /// <summary>Whether the line is indented.</summary>
    public bool IsIndented => Text.Length > 0 && Text[0] is ' ' or '\t';

    /// <summary>The line without spaces round it and without the mark of a list.</summary>
    public string Content
    {
        get
        {
            var text = Text.Trim();
            var bullet = Array.Find(Bullets, one => text.StartsWith(one, StringComparison.Ordinal));
            return bullet is null ? text : text[bullet.Length..].TrimStart();
        }
    }

    /// <summary>The lines with text in them.</summary>
    public static List<SourceLine> Split(string text) =>
        [.. text.Split(["\r\n", "\n", "\r"], StringSplitOptions.None)
            .Select((line, index) => new SourceLine(index + 1, line))
            .Where(line => !string.IsNullOrWhiteSpace(line.Text))];

    /// <summary>Why no text of this size or with these characters is read; null when it is.</summary>
    /// <param name="text">The text.</param>
    /// <param name="mostLines">The most lines with text that are read.</param>
    /// <param name="mostCharacters">The most characters that are read.</param>
    public static string? ProblemOf(string text, int mostLines = EntryResult.MostLines, int mostCharacters = RigFileReader.MostBytes)
    {
        if (text.Length > mostCharacters)
            return $"this is over {mostCharacters / 1_000_000} million characters; enter less at once";
        var lines = 1 + text.AsSpan().Count('\n') + text.AsSpan().Count('\r');
        return lines > mostLines + 1 && Split(text).Count is var count && count > mostLines
            ? $"these are {count} lines; at most {mostLines} are read at once"
            : null;
    }

    /// <summary>Why a piece cannot be kept in a rig file; null when it can.</summary>
    public static EntryRefusal? RefuseCharacters(string text)
    {
        var at = ControlCharacters.FirstIn(text);
        return at < 0 ? null : new EntryRefusal($"it holds the character U+{(int)text[at]:X4}, which has no place in a text", null);
    }

    /// <summary>A row that is refused.</summary>
    public EntryRow Refuse(string because, string? expected) => Refuse(new EntryRefusal(because, expected));

    /// <summary>A row that is refused.</summary>
    public EntryRow Refuse(EntryRefusal refusal) => new() { Line = Number, Text = Text, Refusal = refusal };
}
