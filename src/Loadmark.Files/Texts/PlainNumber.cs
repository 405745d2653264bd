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
        if (text.Length is 0 or > Longest)
            return false;
        Span<char> point = stackalloc char[Longest];
        text.Replace(point[..text.Length], ',', '.');
        return decimal.TryParse(point[..text.Length], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
    }
}
