using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Paper;

namespace Loadmark.Workshop.Sheets;

/// <summary>Sets the texts of a label as large as they fit, wrapped where that lets them be larger.</summary>
internal static class FittedLabel
{
    private const double Largest = 12 * 96.0 / 72;
    private const double Smallest = 3 * 96.0 / 72;
    private const double Step = 0.5 * 96.0 / 72;
    private const double SmallShare = 0.8;

    /// <summary>The lines and the size of each, px.</summary>
    /// <param name="texts">The texts, one below the other, each with the width it has; bold ones are set larger.</param>
    /// <param name="height">The height for all of them, px.</param>
    public static (List<(string Text, bool IsBold)> Lines, List<double> Sizes) Of(
        IReadOnlyList<(string Text, bool IsBold, double Width)> texts, double height)
    {
        for (var size = Largest; ; size -= Step)
        {
            var lines = new List<(string Text, bool IsBold)>();
            var sizes = new List<double>();
            foreach (var (text, isBold, width) in texts)
            {
                var own = isBold ? size : size * SmallShare;
                foreach (var line in WrappedText.Lay(text, PaperFonts.Of(isBold), own, width))
                {
                    lines.Add((line, isBold));
                    sizes.Add(own);
                }
            }

            if (sizes.Sum() * TypeSize.Leading <= height)
                return (lines, sizes);
            if (size - Step < Smallest)
                return Cut(lines, sizes, height);
        }
    }

    /// <summary>What no size lets fit, a name of hundreds of letters, ends with …; the lead list has the whole of it.</summary>
    private static (List<(string Text, bool IsBold)> Lines, List<double> Sizes) Cut(
        List<(string Text, bool IsBold)> lines, List<double> sizes, double height)
    {
        var (taken, count) = (0.0, 0);
        while (count < lines.Count && taken + (sizes[count] * TypeSize.Leading) <= height)
            taken += sizes[count++] * TypeSize.Leading;
        if (count == 0)
            return ([], []);
        lines[count - 1] = lines[count - 1] with { Text = $"{lines[count - 1].Text[..Math.Max(0, lines[count - 1].Text.Length - 2)]}…" };
        return (lines[..count], sizes[..count]);
    }
}
