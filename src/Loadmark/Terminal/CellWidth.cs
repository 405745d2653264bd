using Loadmark.Processes;
using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>How many character cells of a terminal a text takes.</summary>
internal static class CellWidth
{
    /// <summary>The signs of the program's own that lie outside the blocks known to be narrow.</summary>
    private const string OwnSigns = "✖✔■△•⎓∿";

    /// <summary>Counts the cells of a text that went through <see cref="TerminalText"/>.</summary>
    public static int Of(string text)
    {
        foreach (var character in text)
        {
            if (!IsOne(character))
                return text.GetCellWidth();
        }

        return text.Length;
    }

    /// <summary>
    /// Whether a character is certain to take one cell. Only for speed: the library's tables know all, and take ten
    /// milliseconds to load that most pages can do without.
    /// </summary>
    internal static bool IsOne(char character) => character
        is (>= ' ' and <= '~') or (>= '\u00A1' and < '\u0300' and not '\u00AD') // Latin
        or (>= '\u2010' and <= '\u2026') // dashes, quotation marks, ellipsis
        or (>= '\u2190' and <= '\u22FF') // arrows, mathematical operators
        or (>= '\u2500' and <= '\u259F') // box drawing, blocks
        || OwnSigns.Contains(character);
}
