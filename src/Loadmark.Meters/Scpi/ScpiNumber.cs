using System.Globalization;

namespace Loadmark.Meters.Scpi;

/// <summary>Reads the number at the start of a text, in any of its forms.</summary>
public static class ScpiNumber
{
    /// <summary>More characters than any number in a message has.</summary>
    private const int MostCharacters = 255;

    /// <summary>Reads a number.</summary>
    /// <param name="text">The text; what follows the number is not looked at.</param>
    /// <param name="value">The number; not finite where it is too large for a double.</param>
    /// <param name="length">How many characters it takes; 0 where there is none.</param>
    public static NumberForm Read(ReadOnlySpan<char> text, out double value, out int length)
    {
        value = 0;
        length = 0;
        if (text.Length > 2 && text[0] == '#')
        {
            return char.ToUpperInvariant(text[1]) switch
            {
                'H' => ReadDigits(text, 16, NumberForm.Hexadecimal, out value, out length),
                'Q' => ReadDigits(text, 8, NumberForm.Octal, out value, out length),
                'B' => ReadDigits(text, 2, NumberForm.Binary, out value, out length),
                _ => NumberForm.None,
            };
        }

        var end = text.Length > 0 && text[0] is '+' or '-' ? 1 : 0;
        var whole = CountDigits(text[end..]);
        end += whole;
        var fraction = 0;
        if (end < text.Length && text[end] == '.')
        {
            fraction = CountDigits(text[(end + 1)..]);
            end += 1 + fraction;
        }

        if (whole + fraction == 0 || end > MostCharacters)
            return NumberForm.None;
        length = end + ExponentLength(text[end..]);

        // Spaces may stand about the E, which the framework does not read.
        Span<char> bare = stackalloc char[length];
        var count = 0;
        foreach (var character in text[..length])
        {
            if (character is not (' ' or '\t'))
                bare[count++] = character;
        }

        value = double.Parse(bare[..count], NumberStyles.Float, CultureInfo.InvariantCulture);
        return NumberForm.Decimal;
    }

    private static int ExponentLength(ReadOnlySpan<char> text)
    {
        var at = CountSpaces(text);
        if (at >= text.Length || text[at] is not ('e' or 'E'))
            return 0;
        at++;
        at += CountSpaces(text[at..]);
        if (at < text.Length && text[at] is '+' or '-')
            at++;
        var digits = CountDigits(text[at..]);

        // An exponent of more digits is none that an instrument sends.
        return digits is 0 or > 5 ? 0 : at + digits;
    }

    private static NumberForm ReadDigits(ReadOnlySpan<char> text, int radix, NumberForm form, out double value, out int length)
    {
        value = 0;
        length = 2;
        while (length < text.Length && length <= MostCharacters && DigitOf(text[length]) is >= 0 and var digit && digit < radix)
        {
            value = (value * radix) + digit;
            length++;
        }

        if (length > 2)
            return form;
        length = 0;
        return NumberForm.None;
    }

    private static int DigitOf(char character) => char.IsAsciiHexDigit(character) ? Convert.ToInt32($"{character}", 16) : -1;

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        var count = 0;
        while (count < text.Length && char.IsAsciiDigit(text[count]))
            count++;
        return count;
    }

    private static int CountSpaces(ReadOnlySpan<char> text)
    {
        var count = 0;
        while (count < text.Length && text[count] is ' ' or '\t')
            count++;
        return count;
    }
}
