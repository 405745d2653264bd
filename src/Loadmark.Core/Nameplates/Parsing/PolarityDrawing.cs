namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// Reads polarity drawn in characters after IEC 60417-5926: a sign, a line, the sleeve as an arc with the centre as a
/// dot in it, a line, a sign. The line that meets the arc's back belongs to the sleeve, the other one to the centre.
/// </summary>
internal static class PolarityDrawing
{
    /// <summary>The drawing shows the centre negative.</summary>
    public const int CentreNegative = 1;

    /// <summary>The drawing shows the centre positive.</summary>
    public const int CentrePositive = 2;

    /// <summary>The signs are a drawing of a connector, but do not tell which contact is which.</summary>
    public const int Unclear = 3;

    /// <summary>No drawing is longer; the bound keeps reading linear.</summary>
    private const int Longest = 32;

    /// <summary>Reads the drawing at the start of the folded text.</summary>
    /// <param name="text">The label from here on.</param>
    /// <param name="length">How many characters the drawing takes.</param>
    /// <param name="shows">One of the constants of this class.</param>
    public static bool TryRead(ReadOnlySpan<char> text, out int length, out int shows)
    {
        length = 0;
        shows = 0;
        if (text.IsEmpty || text[0] is not ('+' or '-' or '(' or '\u2295' or '\u2296'))
            return false;

        text = text[..Math.Min(text.Length, Longest)];
        var i = 0;
        var left = SignAt(text, ref i);
        if (left == 0)
            return false;
        SkipLine(text, ref i);
        var arcBack = CoreAt(text, ref i);
        if (arcBack == null)
            return false;

        var lineStart = i;
        SkipLine(text, ref i);
        var right = SignAt(text, ref i);
        if (right == 0)
        {
            // "+-(o--": the last stroke of the line is the sign.
            while (i > lineStart && text[i - 1] == ' ')
                i--;
            if (left < 0 || i == lineStart || text[i - 1] != '-')
                return false;
            right = -1;
        }

        length = i;
        var centre = arcBack == 'l' ? right : arcBack == 'r' ? left : 0;
        shows = left == right || centre == 0 ? Unclear : centre < 0 ? CentreNegative : CentrePositive;
        return true;
    }

    /// <summary>+1 or −1, or 0 when no sign stands here.</summary>
    private static int SignAt(ReadOnlySpan<char> text, ref int i)
    {
        if (i >= text.Length)
            return 0;
        if (text[i] == '(' && i + 2 < text.Length && text[i + 2] == ')' && text[i + 1] is '+' or '-')
        {
            i += 3;
            return text[i - 2] == '+' ? 1 : -1;
        }

        var sign = text[i] switch { '+' or '\u2295' => 1, '-' or '\u2296' => -1, _ => 0 };
        if (sign != 0)
            i++;
        return sign;
    }

    private static void SkipLine(ReadOnlySpan<char> text, ref int i)
    {
        while (i < text.Length && text[i] is '-' or ' ' or '_')
            i++;
    }

    /// <summary>'l' for an arc with its back to the left, 'r' to the right, 'n' for a core without an arc; null for no core.</summary>
    private static char? CoreAt(ReadOnlySpan<char> text, ref int i)
    {
        if (i >= text.Length)
            return null;
        var next = i + 1 < text.Length ? text[i + 1] : '\0';
        if (text[i] is '(' or 'C' or '\u2282' or '\u03F9' && (IsDot(next) || (text[i] == '(' && next == 'C')))
        {
            i += 2;
            return 'l';
        }

        // An arc that opens away from its dot is drawn wrongly: it does not tell.
        if (text[i] is ')' && IsDot(next))
        {
            i += 2;
            return 'n';
        }

        // A letter alone is the arc only between lines: in "(-)-C-(+)" it opens towards the plus.
        if (text[i] is 'C' or '\u2282' or '\u03F9' && i > 0 && text[i - 1] == '-' && next == '-')
        {
            i++;
            return 'l';
        }

        if (IsDot(text[i]) && next is ')' or '\u2283' or '\u0186')
        {
            i += 2;
            return 'r';
        }

        if (text[i] is '●' or '•' or '⦿' or '⊙' or '◉' or '◎')
        {
            i++;
            return 'n';
        }

        return null;
    }

    private static bool IsDot(char character) => character is 'o' or 'O' or '●' or '•' or '∙' or '·' or '⦿' or '⊙' or '◉' or '.' or '°';
}
