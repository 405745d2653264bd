namespace Loadmark.Files.Tables;

/// <summary>
/// Keeps spreadsheets from running a cell's text as a formula: one that begins as a formula does gets an apostrophe before it.
/// What begins a formula: = + - @, tab and carriage return (OWASP, "CSV Injection"); a line feed and spaces before any of these
/// are counted too.
/// </summary>
internal static class CellGuard
{
    private const char Mark = '\'';
    private const string Starts = "=+-@\t\r\n";

    /// <summary>The cell for a text. <see cref="Unguard"/> gives the text back.</summary>
    public static string Guard(string text) => Begins(text) ? $"{Mark}{text}" : text;

    /// <summary>The cell for a text that may be there and empty, which differs from none.</summary>
    /// <param name="text">The text; null gives an empty cell.</param>
    public static string GuardOrEmpty(string? text) => text is null ? "" : text.Length == 0 ? $"{Mark}" : Guard(text);

    /// <summary>The text of a cell; null of an empty one. Only an apostrophe that was put there is taken off.</summary>
    public static string? Unguard(string cell)
    {
        if (cell.Length == 0)
            return null;
        return cell[0] == Mark && (cell.Length == 1 || Begins(cell[1..])) ? cell[1..] : cell;
    }

    /// <summary>Whether a text begins as a formula does, or so that it would be mistaken for one with an apostrophe.</summary>
    private static bool Begins(string text)
    {
        var rest = text.AsSpan().TrimStart(' ');
        if (rest.Length > 0 && Starts.Contains(rest[0], StringComparison.Ordinal))
            return true;
        return text.Length > 0 && text[0] == Mark && (text.Length == 1 || Begins(text[1..]));
    }
}
