using System.Globalization;

namespace Loadmark.Files.Texts;

/// <summary>Brings the ways to type a coaxial plug's size to one: <c>5.5x2.1</c>.</summary>
internal static class PlugText
{
    /// <summary>
    /// The size with the outer diameter first, in mm, for "5,5 × 2,1 mm" and its like; any other text as it is, trimmed.
    /// </summary>
    public static string Normalise(string text)
    {
        text = text.Trim();
        var cross = text.AsSpan().IndexOfAny("xX×*");
        if (cross < 0 || !TryMillimetres(text.AsSpan(0, cross), out var first) || !TryMillimetres(text.AsSpan(cross + 1), out var second))
            return text;
        return $"{Plain(Math.Max(first, second))}x{Plain(Math.Min(first, second))}";
    }

    private static string Plain(decimal value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static bool TryMillimetres(ReadOnlySpan<char> text, out decimal value)
    {
        text = text.Trim();
        if (text.EndsWith("mm", StringComparison.OrdinalIgnoreCase))
            text = text[..^2].TrimEnd();
        return PlainNumber.TryRead(text, out value) && value is >= 0.1m and <= 100m && decimal.Round(value, 3) == value;
    }
}
