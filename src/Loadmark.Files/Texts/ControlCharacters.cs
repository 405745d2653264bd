namespace Loadmark.Files.Texts;

/// <summary>Finds characters that have no place in a text file.</summary>
internal static class ControlCharacters
{
    /// <summary>
    /// The index of the first control character other than tab and line ends, of a line or paragraph separator (which
    /// YAML counts as a line end and most editors do not), or of half a surrogate pair; -1 when there is none.
    /// </summary>
    public static int FirstIn(ReadOnlySpan<char> text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            var character = text[i];
            if (character is >= ' ' and < '\u007F' or '\n' or '\r' or '\t')
                continue;
            if (char.IsControl(character) || character is '\u2028' or '\u2029' or '\uFFFE' or '\uFFFF')
                return i;
            if (!char.IsSurrogate(character))
                continue;
            if (i + 1 >= text.Length || !char.IsSurrogatePair(character, text[i + 1]))
                return i;
            i++;
        }

        return -1;
    }
}
