using System.Text;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Paper;

/// <summary>Text of paper, broken into lines by the widths of its own typeface.</summary>
public static class WrappedText
{
    /// <summary>A space that no line ends at; it is set, and copied, as a common one.</summary>
    public const char Tie = '\u00A0';

    /// <summary>The lines of a text, at least one.</summary>
    /// <param name="text">Any text; it is cleaned here.</param>
    /// <param name="face">The face it is set in.</param>
    /// <param name="size">The size of the type, px.</param>
    /// <param name="width">The width of a line, px; a single character may be wider.</param>
    public static List<string> Lay(string text, FontFace face, double size, double width)
    {
        var lines = new List<string>();
        foreach (var paragraph in text.Split('\n'))
        {
            var clean = SafeText.Clean(paragraph).Normalize(NormalizationForm.FormC);
            lines.AddRange(LineBreaks.Of(clean, line => face.WidthOf(line, size), width).Select(static line => line.Replace(Tie, ' ')));
        }

        return lines;
    }

    /// <summary>The width of the widest piece that is not broken if it need not be, px.</summary>
    public static double WidestPiece(string text, FontFace face, double size) =>
        text.Split('\n').SelectMany(static line => LineBreaks.Pieces(SafeText.Clean(line)))
            .Select(piece => face.WidthOf(piece.TrimEnd(), size)).DefaultIfEmpty(0).Max();

    /// <summary>The width of the text where nothing of it is broken, px.</summary>
    public static double NaturalWidth(string text, FontFace face, double size) =>
        text.Split('\n').Max(line => face.WidthOf(SafeText.Clean(line), size));
}
