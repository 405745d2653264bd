namespace Loadmark.Files.Writing;

/// <summary>Tells which texts can stand in YAML without quotes.</summary>
internal static class PlainText
{
    private const string NotFirst = "-?:,[]{}#&*!|>'\"%@` ";

    /// <summary>
    /// Whether a text reads as itself without quotes, in a block and in brackets, here and in programs that take
    /// <c>yes</c>, <c>12</c> or <c>null</c> for something other than a text. Stricter than YAML asks, never laxer.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="numberIsFine">Whether the text may look like a number, as outlet ids do.</param>
    public static bool Suits(string text, bool numberIsFine)
    {
        if (text.Length == 0 || NotFirst.Contains(text[0], StringComparison.Ordinal) || text[^1] is ' ' or ':')
            return false;
        if (IsWordOfYaml(text) || (!numberIsFine && LooksLikeNumber(text)) || text.StartsWith("...", StringComparison.Ordinal))
            return false;

        for (var i = 0; i < text.Length; i++)
        {
            var character = text[i];
            if (character is ',' or '[' or ']' or '{' or '}' or '"' or '\'' || char.IsControl(character) || char.IsSurrogate(character))
                return false;
            if (character is '\u2028' or '\u2029' or '\uFEFF' or '\u00A0' or '\uFFFE' or '\uFFFF')
                return false;
            if (character == ':' && (i + 1 == text.Length || text[i + 1] == ' '))
                return false;
            if (character == '#' && i > 0 && text[i - 1] == ' ')
                return false;
        }

        return true;
    }

    private static bool IsWordOfYaml(string text) => text.ToLowerInvariant() is
        "~" or "null" or "true" or "false" or "yes" or "no" or "on" or "off" or "y" or "n" or ".nan" or ".inf" or "<<" or "=";

    /// <summary>Whether some reader of YAML would take it for a number, a date or a time.</summary>
    private static bool LooksLikeNumber(string text)
    {
        if (text.StartsWith("0x", StringComparison.OrdinalIgnoreCase) || text.StartsWith("0o", StringComparison.OrdinalIgnoreCase))
            return true;
        var start = text[0] is '+' or '.' ? 1 : 0;
        return start < text.Length && char.IsAsciiDigit(text[start])
            && text.All(character => char.IsAsciiDigit(character) || character is '.' or '+' or '-' or '_' or ':' or 'e' or 'E');
    }
}
