using System.Globalization;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// Makes one character out of the many that print alike: every dash, every space, full-width letters and digits,
/// the drawings of direct and alternating current. One character stays one character, so places stay places.
/// </summary>
internal static class Folding
{
    /// <summary>The sign for direct current, U+2393 (drawn as IEC 60417-5031).</summary>
    public const char DirectMark = '\u2393';

    /// <summary>Folds <paramref name="text"/> into <paramref name="folded"/>, and in small letters into <paramref name="lower"/>.</summary>
    public static void Fold(ReadOnlySpan<char> text, Span<char> folded, Span<char> lower)
    {
        for (var i = 0; i < text.Length; i++)
        {
            var character = text[i];
            if (character is '\u00B7' or '\u2219' && i > 0 && i + 1 < text.Length && folded[i - 1] is >= '0' and <= '9'
                && text[i + 1] is >= '0' and <= '9')
                character = '.'; // the raised decimal point of older print: 9·6 V
            else if (character == '\u30FC' && i > 0 && text[i - 1] is >= '\u30A1' and <= '\u30FA')
                character = '\u30FC'; // the mark that makes a kana long; elsewhere it is a dash
            else if (character >= 0x7F)
                character = FoldOther(character);
            else if (character == '`')
                character = '\'';
            else if (character < ' ' && character is not ('\n' or '\r'))
                character = ' ';

            folded[i] = character;
            lower[i] = character is >= 'A' and <= 'Z' ? (char)(character | 0x20)
                : character < 0x80 ? character
                : char.ToLowerInvariant(character);
        }
    }

    private static char FoldOther(char character) => character switch
    {
        // Full-width forms are ASCII moved up as one block.
        >= '\uFF01' and <= '\uFF5E' => (char)(character - 0xFEE0),
        '\u00AD' or (>= '\u2010' and <= '\u2015') or '\u2212' or '\u2043' or '\uFE58' or '\uFE63' or '\u2500' or '\u2501' or '\u30FC'
            or '\u2E3A' or '\u2E3B' => '-',
        '\u223F' or '\u23E6' or '\u301C' or '\u223C' or '\u02DC' or '\u2053' or '\u223D' or '\u223E' or '\u3030' => '~',
        '\u2550' or '\u2A75' or '\u2A76' or '\uFE66' or '\u3013' or '\u2E40' or '\u30A0' or '\uA4FF' => '=',
        '\u00D7' or '\u2715' or '\u2716' or '\u2A2F' or '\u22C5' or '\u2217' => '*',
        '\u2295' or '\u2A01' => '\u2295',
        '\u2296' => '\u2296',
        '\u2044' or '\u2215' or '\u29F8' => '/',
        '\u201C' or '\u201D' or '\u2033' or '\u02BA' or '\u201F' => '"',
        '\u2018' or '\u2019' or '\u2032' or '\u00B4' => '\'',
        '\u3001' or '\u201A' or '\u060C' => ',',
        '\u0085' or '\u2028' or '\u2029' => '\n',
        '\u03BC' => '\u00B5',
        '\u2164' => 'V',
        '\u007F' or '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' or (>= '\uFE00' and <= '\uFE0F') => ' ',
        _ => FoldByCategory(character),
    };

    private static char FoldByCategory(char character)
    {
        if (char.IsWhiteSpace(character) || char.IsControl(character))
            return ' ';
        var digit = CharUnicodeInfo.GetDecimalDigitValue(character);
        return digit >= 0 ? (char)('0' + digit) : character;
    }
}
