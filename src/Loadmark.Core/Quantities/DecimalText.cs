using System.Globalization;

namespace Loadmark.Core.Quantities;

/// <summary>Reads the number at the start of a text as labels print it: <c>9</c>, <c>0,3</c>, <c>.5</c>, <c>1.25</c>.</summary>
internal static class DecimalText
{
    /// <summary>More digits than any figure on a label has; past it a number is a serial number or a prank.</summary>
    private const int MostDigits = 15;

    /// <summary>
    /// Reads digits with at most one decimal point or comma. No sign, no exponent, no digit grouping.
    /// </summary>
    /// <param name="text">The text; only its start is looked at.</param>
    /// <param name="value">The number read.</param>
    /// <param name="length">How many characters it took; 0 when there is no number here.</param>
    /// <param name="grouping">
    /// True when the comma could as well group thousands: <c>1,000</c> is either 1 or 1000. Never for <c>0,300</c>.
    /// </param>
    public static bool TryRead(ReadOnlySpan<char> text, out decimal value, out int length, out bool grouping)
    {
        value = 0;
        length = 0;
        grouping = false;

        var whole = CountDigits(text);
        var end = whole;
        var fraction = 0;
        if (end < text.Length && text[end] is '.' or ',')
        {
            fraction = CountDigits(text[(end + 1)..]);
            if (fraction > 0)
                end += 1 + fraction;
        }

        if (whole + fraction is 0 or > MostDigits)
            return false;

        // Digits into a long and one scaling: exact, and several times faster than decimal.Parse.
        long digits = 0;
        foreach (var character in text[..end])
        {
            if (character is >= '0' and <= '9')
                digits = (digits * 10) + (character - '0');
        }

        value = new decimal((int)digits, (int)(digits >> 32), 0, isNegative: false, (byte)fraction);
        length = end;
        grouping = fraction == 3 && whole is >= 1 and <= 3 && text[whole] == ',' && text[0] != '0';
        return true;
    }

    /// <summary>The number as text, invariant.</summary>
    public static string Write(decimal value) => QuantityText.Plain(value).ToString(CultureInfo.InvariantCulture);

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        var count = 0;
        while (count < text.Length && text[count] is >= '0' and <= '9')
            count++;
        return count;
    }
}
