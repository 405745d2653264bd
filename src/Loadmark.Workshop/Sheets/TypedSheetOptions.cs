using System.Globalization;
using Loadmark.Drawing.Paper;

namespace Loadmark.Workshop.Sheets;

/// <summary>Reads what somebody typed of a sheet, at the command line, in an address or on the page.</summary>
public static class TypedSheetOptions
{
    /// <summary>
    /// The words for the parts, in the order of <see cref="SheetPart"/>. Written out, for every command that begins lists its options.
    /// </summary>
    public static IReadOnlyList<string> PartWords { get; } = ["diagram", "feeds", "leads", "labels", "findings", "startup", "player"];

    /// <summary>The words for the sizes of paper, in the order of <see cref="PaperSize.All"/>.</summary>
    public static IReadOnlyList<string> PaperWords { get; } = ["a4", "letter"];

    /// <summary>Reads the options.</summary>
    /// <param name="given">What stands where nothing was typed.</param>
    /// <param name="parts">The words for the parts; none for all.</param>
    /// <param name="paper">The word for the paper; null where none was typed.</param>
    /// <param name="labels">The size of labels, such as 45x16; null where none was typed.</param>
    /// <param name="contact">Whom to ask; null where nothing was typed.</param>
    /// <param name="options">What was read.</param>
    /// <returns>Null when read; otherwise the option's name with what was expected and found.</returns>
    public static string? Read(
        SheetOptions given, IReadOnlyList<string> parts, string? paper, string? labels, string? contact, out SheetOptions options)
    {
        options = given;
        var only = new List<SheetPart>();
        foreach (var word in parts)
        {
            var place = PlaceOf(PartWords, word);
            if (place < 0)
                return $"only: expected {string.Join(", ", PartWords)}, found \"{word}\".";
            if (!only.Contains((SheetPart)place))
                only.Add((SheetPart)place);
        }

        var size = PaperSize.A4;
        if (paper is not null)
        {
            var place = PlaceOf(PaperWords, paper);
            if (place < 0)
                return $"paper: expected {string.Join(" or ", PaperWords)}, found \"{paper}\".";
            size = PaperSize.All[place];
        }

        var label = labels is null ? given.Labels : ReadLabels(labels);
        if (label is not { IsPossible: true })
            return $"labels: expected width x height in mm, 15x8 to 190x100, such as 45x16, found \"{labels}\".";
        options = given with
        {
            Only = only.Count > 0 ? only : given.Only,
            Paper = paper is null ? given.Paper : size,
            Labels = label,
            Contact = string.IsNullOrWhiteSpace(contact) ? given.Contact : contact.Trim(),
        };
        return null;
    }

    private static int PlaceOf(IReadOnlyList<string> words, string word)
    {
        for (var place = 0; place < words.Count; place++)
        {
            if (words[place].Equals(word, StringComparison.OrdinalIgnoreCase))
                return place;
        }

        return -1;
    }

    private static LabelSize? ReadLabels(string text) =>
        text.ToLowerInvariant().Replace("mm", "", StringComparison.Ordinal).Replace(',', '.').Split('x', '×') is [var width, var height]
        && double.TryParse(width.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var across)
        && double.TryParse(height.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var down)
            ? new LabelSize(across, down)
            : null;
}
