using System.Buffers;
using System.Globalization;

namespace Loadmark.Files.Parsing;

/// <summary>Reads ranges of outlet ids, such as <c>1-4</c>.</summary>
internal static class OutletRange
{
    /// <summary>The most outlets in one range.</summary>
    public const int Most = 1_000;

    /// <summary>Whether a text is written as a range: digits, a hyphen or dash, digits.</summary>
    public static bool Looks(string text) => TryParts(text, out _, out _);

    /// <summary>The ids of a range; null, with the problem, when it has none or too many.</summary>
    /// <param name="text">A text for which <see cref="Looks"/> holds.</param>
    /// <param name="problem">What is wrong; null when nothing is.</param>
    public static List<string>? Expand(string text, out string? problem)
    {
        TryParts(text, out var low, out var high);
        if (low.Length > 9 || high.Length > 9)
        {
            problem = "its numbers are too large";
            return null;
        }

        var first = int.Parse(low, CultureInfo.InvariantCulture);
        var last = int.Parse(high, CultureInfo.InvariantCulture);
        problem = first > last ? "it runs backwards" : last - first >= Most ? $"it holds more than {Most} outlets" : null;
        if (problem is not null)
            return null;

        // 01-12 means 01, 02 … 12, as the panel has them.
        var format = low[0] == '0' && low.Length > 1 ? $"D{low.Length}" : "D";
        var ids = new List<string>(last - first + 1);
        for (var number = first; number <= last; number++)
            ids.Add(number.ToString(format, CultureInfo.InvariantCulture));
        return ids;
    }

    private static readonly SearchValues<char> Dashes = SearchValues.Create("-\u2010\u2011\u2012\u2013\u2014\u2212");

    private static bool TryParts(string text, out string low, out string high)
    {
        low = high = "";
        var dash = text.AsSpan().IndexOfAny(Dashes);
        if (dash < 0)
            return false;
        low = text[..dash].Trim();
        high = text[(dash + 1)..].Trim();
        return low.Length > 0 && high.Length > 0 && low.All(char.IsAsciiDigit) && high.All(char.IsAsciiDigit);
    }
}
