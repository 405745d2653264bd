using System.Text;

namespace Loadmark.Drawing.Texts;

/// <summary>
/// Breaks text into lines that fit: at spaces, behind the dashes and slashes of ids, and within what is wider than a line.
/// </summary>
internal static class LineBreaks
{
    private static readonly HashSet<string> Units = new(StringComparer.Ordinal)
    {
        "V", "mV", "kV", "A", "mA", "µA", "W", "mW", "VA", "Ω", "mΩ", "kΩ", "s", "ms", "µs", "ns", "m", "mm", "cm", "mm²", "Hz", "kHz",
        "F", "µF", "nF", "mF", "g", "kg", "%", "°C", "⎓", "⏦",
    };

    /// <summary>The lines of a text, at least one.</summary>
    /// <param name="text">The text, clean.</param>
    /// <param name="widthOf">How wide a text is.</param>
    /// <param name="width">The width of a line; a single character may be wider.</param>
    public static List<string> Of(string text, Func<string, double> widthOf, double width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        var taken = 0.0;
        foreach (var piece in Pieces(text))
        {
            var needed = widthOf(piece.TrimEnd());
            if (taken > 0 && taken + needed > width)
                End();
            if (needed <= width)
            {
                Add(piece);
                continue;
            }

            foreach (var rune in piece.EnumerateRunes())
            {
                var character = rune.ToString();
                if (taken > 0 && taken + widthOf(character) > width)
                    End();
                Add(character);
            }
        }

        lines.Add(line.ToString().TrimEnd());
        return lines;

        void Add(string piece)
        {
            line.Append(piece);
            taken += widthOf(piece);
        }

        void End()
        {
            lines.Add(line.ToString().TrimEnd());
            line.Clear();
            taken = 0;
        }
    }

    /// <summary>The text in pieces that a line may end behind, the spaces behind a piece with it.</summary>
    public static IEnumerable<string> Pieces(string text)
    {
        var start = 0;
        for (var index = 1; index < text.Length; index++)
        {
            var isEnd = text[index] != ' ' && ((text[index - 1] == ' ' && !IsBeforeUnit(text, index)) || IsHinge(text, index - 1));
            if (!isEnd)
                continue;
            yield return text[start..index];
            start = index;
        }

        if (start < text.Length)
            yield return text[start..];
    }

    /// <summary>Whether a unit or the sign of a kind of current begins there, which stays with the figure before it.</summary>
    private static bool IsBeforeUnit(string text, int at)
    {
        if (at < 2 || !(char.IsDigit(text[at - 2]) || IsUnitEnd(text[at - 2])))
            return false;
        var end = at;
        while (end < text.Length && (char.IsLetter(text[end]) || text[end] is 'Ω' or '%' or '⎓' or '⏦' or '²' or '°'))
            end++;
        return Units.Contains(text[at..end]) && (end == text.Length || !char.IsDigit(text[end]));
    }

    private static bool IsUnitEnd(char character) => character is 'V' or 'A' or '?';

    /// <summary>Behind a dash or slash between letters; never between a figure and its sign.</summary>
    private static bool IsHinge(string text, int at) =>
        text[at] is '-' or '/' or '_' && at > 1 && char.IsLetter(text[at - 1]) && char.IsLetter(text[at + 1]);
}
