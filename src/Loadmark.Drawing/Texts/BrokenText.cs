using System.Text;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Texts;

/// <summary>Breaks a piece of text that is wider than its line into pieces that begin lines of their own.</summary>
internal static class BrokenText
{
    /// <summary>The piece where it fits, else its parts.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="width">The width of a line, px; a single character may be wider.</param>
    public static IEnumerable<TextPiece> Of(TextPiece piece, double width)
    {
        if (piece.Width <= width)
            return [piece];
        var isBold = TextWidth.IsBold(piece.Ink);

        // The phrase that Unicode has as one character of sixteen ems has no room anywhere.
        var whole = string.Concat(piece.Text.EnumerateRunes().Select(rune =>
            TextWidth.Of($"{rune}", piece.Role, isBold) > width - piece.SignWidth ? Rune.ReplacementChar : rune));
        var lines = LineBreaks.Of(
            whole, text => TextWidth.Of(text, piece.Role, isBold), Math.Max(1, width - piece.SignWidth));
        return lines.Select((line, index) =>
            index == 0 ? piece with { Text = line } : piece with { Text = line, Sign = null, BeginsLine = true });
    }
}
