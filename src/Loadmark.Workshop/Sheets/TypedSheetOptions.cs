using System.Globalization;
using Loadmark.Drawing.Paper;

namespace Loadmark.Workshop.Sheets;

/// <summary>Reads what somebody typed of a sheet, at the command line, in an address or on the page.</summary>
public static class TypedSheetOptions
{
    /// <summary>
    /// The words for the parts, in the order of <see cref="SheetPart"/>. Written out, for every command that begins lists its options.
    /// </summary>
    public static IReadOnlyList<string> PartWords { get; } =
        ["diagram", "feeds", "leads", "shopping", "labels", "findings", "startup", "player", "codes"];

    /// <summary>The words for the sizes of paper, in the order of <see cref="PaperSize.All"/>.</summary>
    public static IReadOnlyList<string> PaperWords { get; } = ["a4", "letter"];

    /// <summary>Reads the options.</summary>
    /// <param name="given">What stands where nothing was typed.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="options">What was read.</param>
    /// <returns>Null when read; otherwise the option's name with what was expected and found.</returns>
    public static string? Read(SheetOptions given, TypedSheet typed, out SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(typed);
        options = given;
        var only = new List<SheetPart>();
        foreach (var word in typed.Only)
        {
            var place = PlaceOf(PartWords, word);
            if (place < 0)
                return $"only: expected {string.Join(", ", PartWords)}, found \"{word}\".";
            if (!only.Contains((SheetPart)place))
                only.Add((SheetPart)place);
        }

        var size = PaperSize.A4;
        if (typed.Paper is { } paper)
        {
            var place = PlaceOf(PaperWords, paper);
            if (place < 0)
                return $"paper: expected {string.Join(" or ", PaperWords)}, found \"{paper}\".";
            size = PaperSize.All[place];
        }

        var label = typed.Labels is null ? given.Labels : ReadLabels(typed.Labels);
        if (label is not { IsPossible: true })
            return $"labels: expected width x height in mm, 15x8 to 190x100, such as 45x16, found \"{typed.Labels}\".";
        var (ends, cut) = (given.Cutting.Allowance, given.Cutting.CutLoss);
        if (TypedReels.Read(typed.Reels, out var reels) is { } noReels)
            return $"reels: {noReels}";
        if (TypedReels.Read(typed.Ends, ref ends) is { } noEnds)
            return $"ends: {noEnds}";
        if (TypedReels.Read(typed.Cut, ref cut) is { } noCut)
            return $"cut: {noCut}";
        options = given with
        {
            Cutting = new CuttingWishes { Reels = reels.Count > 0 ? reels : given.Cutting.Reels, Allowance = ends, CutLoss = cut },
            Only = only.Count > 0 ? only : given.Only,
            Paper = typed.Paper is null ? given.Paper : size,
            Labels = label,
            Contact = string.IsNullOrWhiteSpace(typed.Contact) ? given.Contact : typed.Contact.Trim(),
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
