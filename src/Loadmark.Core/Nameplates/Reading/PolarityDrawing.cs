using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>
/// Reads the drawing of a plug's polarity where somebody typed it: two signs, the arc of the sleeve and the dot of the
/// centre between them (IEC 60417-5926). The sign on the dot's side is the centre's.
/// </summary>
internal static class PolarityDrawing
{
    /// <summary>Finds the drawing that starts at the start of <paramref name="text"/>.</summary>
    /// <param name="text">The rest of the label, normalised.</param>
    /// <param name="length">How long the drawing is; 0 when there is none.</param>
    /// <returns>The polarity; null when there is no drawing, or when it is one that can be taken both ways.</returns>
    public static Polarity? TryRead(ReadOnlySpan<char> text, out int length)
    {
        var (first, last, arc, dot, end) = ('\0', '\0', -1, -1, 0);
        var opens = false;
        for (var index = 0; index < text.Length; index++)
        {
            var part = Part(text[index]);
            if (part == '\0')
                break;
            if (part == ' ')
                continue;

            end = index + 1;
            switch (part)
            {
                case '+' or '-' when IsSign(text, index):
                    if (first == '\0' && dot < 0)
                        first = part;
                    else if (dot >= 0 || arc >= 0)
                        last = part;
                    break;
                case '(' or ')' when arc < 0 || dot < 0:
                    (arc, opens) = (index, part == '(');
                    break;
                case 'o':
                    dot = index;
                    break;
            }
        }

        length = 0;
        if (first == '\0' || last == '\0' || first == last || dot < 0)
            return null;

        length = end;
        if (arc < 0)
            return null;
        var centre = opens && arc < dot ? last : !opens && arc > dot ? first : '\0';
        return centre switch
        {
            '+' => Polarity.CentrePositive,
            '-' => Polarity.CentreNegative,
            _ => null,
        };
    }

    /// <summary>A drawing starts with a sign in a circle, or with a bare plus or minus that a line follows.</summary>
    public static bool MayStart(ReadOnlySpan<char> text) =>
        text[0] is '\u2295' or '\u2296' || (text[0] is '+' or '-' && text.Length > 3 && Part(text[1]) is '-' or '(' or ' ');

    private static char Part(char character) => character switch
    {
        '\u2295' or '+' => '+',
        '\u2296' or '-' => '-',
        '\u2014' or '\u2500' => '-',
        '(' or '\u25D0' or '\u2282' => '(',
        ')' or '\u25D1' or '\u2283' => ')',
        '\u2022' or '\u25CF' or '\u25C9' or '\u29BF' or '\u2299' or '\u25CB' or 'o' or '•' or '·' => 'o',
        ' ' => ' ',
        _ => '\0',
    };

    /// <summary>A dash is the sign at either end of the drawing and a line in between.</summary>
    private static bool IsSign(ReadOnlySpan<char> text, int index)
    {
        if (text[index] is '\u2295' or '\u2296' or '+')
            return true;
        return index == 0 || index + 1 == text.Length || Part(text[index + 1]) == '\0';
    }
}
