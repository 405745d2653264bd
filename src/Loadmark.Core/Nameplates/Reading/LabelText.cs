namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Brings the many characters that print alike to one each, keeping every character at its place.</summary>
internal static class LabelText
{
    /// <summary>The symbol of direct current (IEC 60417-5031, U+2393).</summary>
    public const char Direct = '\u2393';

    /// <summary>The symbol of alternating current (IEC 60417-5032, U+23E6).</summary>
    public const char Alternating = '\u23E6';

    public static void Normalise(ReadOnlySpan<char> text, Span<char> into)
    {
        for (var index = 0; index < text.Length; index++)
        {
            var character = text[index];
            into[index] = character < 0x80 ? character : Normalise(character);
        }
    }

    private static char Normalise(char character) => character switch
    {
        // Full-width forms stand 0xFEE0 above their ASCII twins.
        >= '\uFF01' and <= '\uFF5E' => (char)(character - 0xFEE0),
        '\u00A0' or (>= '\u2000' and <= '\u200D') or '\u202F' or '\u205F' or '\u2060' or '\u3000' or '\uFEFF' => ' ',
        '\u2028' or '\u2029' or '\u0085' => '\n',
        '\u00AD' or (>= '\u2010' and <= '\u2015') or '\u2212' or '\u2043' or '\uFE58' or '\uFE63' or '\u2500' or '\u2501' => '-',
        '\u223C' or '\u301C' or '\u02DC' or '\u2053' => '~',
        '\u223F' or Alternating => Alternating,
        '\u2550' or '\u2A75' or '\uFE66' or '\u2261' or '\u2393' => Direct,
        '\u00D7' or '\u2715' or '\u2716' or '\u2A2F' or '\u2A09' => '×',
        '\u2044' or '\u2215' => '/',
        '\u03BC' => 'µ',
        '\u2126' => 'Ω',
        '\u2264' or '\u2A7D' => '<',
        '\u2033' or '\u201C' or '\u201D' or '\u201F' => '"',
        _ => character,
    };
}
