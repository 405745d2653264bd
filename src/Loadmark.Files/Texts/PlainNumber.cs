using System.Globalization;

namespace Loadmark.Files.Texts;

/// <summary>Reads a bare number with decimal point or comma; no sign, no exponent, no grouping.</summary>
internal static class PlainNumber
{
    private const int Longest = 16;

    /// <summary>Reads the whole text as a number.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out decimal value)
    {
        value = 0;
        if (text.Length is 0 or > Longest || !char.IsAsciiDigit(text[^1]))
            return false;
        Span<char> point = stackalloc char[Longest];
        text.Replace(point[..text.Length], ',', '.');
        return decimal.TryParse(point[..text.Length], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
    }

    /// <summary>Reads the whole text as a whole number of a few digits, and nothing but digits.</summary>
    public static bool TryWhole(ReadOnlySpan<char> text, out int value) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value);

    /// <summary>Whether a comma in a number may as well group thousands: <c>1,000</c> is either 1 or 1000. Never in <c>0,100</c>.</summary>
    public static bool MayBeThousands(ReadOnlySpan<char> text) =>
        text.IndexOf(',') is > 0 and var comma && text.Length - comma == 4 && text[0] != '0';
}
