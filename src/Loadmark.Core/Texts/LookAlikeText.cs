using System.Globalization;
using System.Text;

namespace Loadmark.Core.Texts;

/// <summary>
/// What a text looks like, whatever characters it is made of: two texts with one skeleton can be taken for one another.
/// </summary>
/// <remarks>
/// After Unicode Technical Standard #39, section 4 (confusable detection), for what looks like a letter, a digit or a hyphen of ASCII; from
/// <see cref="LookAlikeTable"/>. Of ASCII itself 0 and O, 1 and I and l, and m and rn look alike, as there.
/// </remarks>
internal static class LookAlikeText
{
    /// <summary>The wide forms of ASCII, which the table does not have (Unicode, Halfwidth and Fullwidth Forms).</summary>
    private const int FirstWide = 0xFF01;
    private const int LastWide = 0xFF5E;

    private static Dictionary<string, string>? _table;

    /// <summary>What a text looks like.</summary>
    /// <param name="text">The text.</param>
    public static string SkeletonOf(string text)
    {
        if (!text.AsSpan().ContainsAny("01Im") && Ascii.IsValid(text))
            return text;
        var skeleton = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (!IsUnseen(rune))
                skeleton.Append(OfAscii(AsciiLike(rune) ?? rune.ToString()));
        }

        return skeleton.ToString();
    }

    /// <summary>
    /// The first character of a text that is not seen, or that looks like a letter of ASCII beside letters that are; null where there is
    /// none.
    /// </summary>
    /// <param name="text">The text.</param>
    public static (Rune Character, bool IsUnseen)? FirstOdd(string text)
    {
        if (Ascii.IsValid(text))
            return null;
        var hasAsciiLetter = text.Any(char.IsAsciiLetter);
        foreach (var rune in text.EnumerateRunes())
        {
            if (IsUnseen(rune))
                return (rune, true);
            if (hasAsciiLetter && !rune.IsAscii && Rune.IsLetter(rune) && AsciiLike(rune) is not null)
                return (rune, false);
        }

        return null;
    }

    /// <summary>A character by its number, as Unicode writes it: <c>U+0430</c>.</summary>
    public static string NumberOf(Rune rune) => string.Create(CultureInfo.InvariantCulture, $"U+{rune.Value:X4}");

    private static bool IsUnseen(Rune rune) => !rune.IsAscii && Rune.GetUnicodeCategory(rune) is UnicodeCategory.Format;

    private static string OfAscii(string like) => like switch
    {
        "0" => "O",
        "1" or "I" => "l",
        "m" => "rn",
        _ => like,
    };

    private static string? AsciiLike(Rune rune)
    {
        if (rune.IsAscii)
            return null;
        if (rune.Value is >= FirstWide and <= LastWide)
            return ((char)(rune.Value - FirstWide + 0x21)).ToString();
        return (_table ??= ReadTable()).GetValueOrDefault(NumberOf(rune));
    }

    private static Dictionary<string, string> ReadTable()
    {
        var table = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in LookAlikeTable.Lines.Split('\n'))
        {
            var parts = line.Split(' ');
            for (var place = 1; place < parts.Length; place++)
                table["U+" + parts[place].PadLeft(4, '0')] = parts[0];
        }

        return table;
    }
}
