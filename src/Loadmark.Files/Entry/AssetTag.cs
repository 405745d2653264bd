namespace Loadmark.Files.Entry;

/// <summary>Finds asset tags such as drive-3: up to six letters, perhaps a sign between, and up to four digits.</summary>
internal static class AssetTag
{
    private const int MostLetters = 6;
    private const int MostDigits = 4;

    /// <summary>Whether a whole text is a tag, with a hyphen, a space, an underscore or nothing between letters and digits.</summary>
    public static bool Is(string text) => LengthIn(text, "-_ ", needsSign: false) == text.Length && text.Length > 0;

    /// <summary>The length of the hyphenated tag, followed by a space or the end, that a text begins with; 0 when there is none.</summary>
    public static int LengthAtStart(string text)
    {
        var length = LengthIn(text, "-", needsSign: true);
        return length < text.Length && !char.IsWhiteSpace(text[length]) ? 0 : length;
    }

    private static int LengthIn(string text, string signs, bool needsSign)
    {
        var letters = text.TakeWhile(char.IsAsciiLetter).Count();
        var hasSign = letters < text.Length && signs.Contains(text[letters], StringComparison.Ordinal);
        var digits = text.Skip(letters + (hasSign ? 1 : 0)).TakeWhile(char.IsAsciiDigit).Count();
        var isTag = letters is > 0 and <= MostLetters && digits is > 0 and <= MostDigits && (hasSign || !needsSign);
        return isTag ? letters + (hasSign ? 1 : 0) + digits : 0;
    }
}
