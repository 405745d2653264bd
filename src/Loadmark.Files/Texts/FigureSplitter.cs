namespace Loadmark.Files.Texts;

/// <summary>Takes apart texts of several figures: "2 A 18 W", "230V/50Hz", "520 mA for 1.5 s".</summary>
internal static class FigureSplitter
{
    private static readonly char[] Separators = [' ', '\t', ',', ';', '/', '~'];

    /// <summary>
    /// The figures, each with its unit. A new one begins at a digit that follows a letter and something between,
    /// or a letter straight away ("230V50Hz"); what stands between two figures is cut off.
    /// </summary>
    public static List<string> Split(string text)
    {
        var figures = new List<string>(2);
        var start = 0;
        var unitSeen = false;
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsLetter(text[i]))
            {
                unitSeen = true;
            }
            else if (unitSeen && (char.IsAsciiDigit(text[i]) || (text[i] == '.' && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1]))))
            {
                figures.Add(Cut(text[start..i]));
                start = i;
                unitSeen = false;
            }
        }

        figures.Add(Cut(text[start..]));
        return figures;
    }

    private static string Cut(string figure)
    {
        var cut = figure.Trim(Separators);
        return cut.EndsWith(" for", StringComparison.OrdinalIgnoreCase) ? cut[..^4].TrimEnd() : cut;
    }
}
