using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Texts;

/// <summary>Lays pieces of text into lines; what has no room is left out by its rank, what is too wide is shortened.</summary>
internal static class TextFlow
{
    private const double Gap = 7;
    private const double Shrunk = 34;

    /// <summary>Lays the pieces out.</summary>
    /// <param name="pieces">The pieces, in order.</param>
    /// <param name="width">The width of a line in px.</param>
    /// <param name="lines">How many lines there are.</param>
    /// <param name="beside">What the first line is shorter by, in px.</param>
    /// <returns>The lines, each with its pieces.</returns>
    public static List<List<PlacedPiece>> Lay(IEnumerable<TextPiece> pieces, double width, int lines, double beside = 0)
    {
        var left = pieces.Where(static piece => piece.Text.Length > 0).ToList();
        while (true)
        {
            var laid = Fill(left, width, beside);
            var dropped = laid.Count > lines ? Expendable(left) : -1;
            if (dropped < 0)
            {
                for (var line = 0; line < laid.Count; line++)
                    laid[line] = Widen(laid[line], line == 0 ? width - beside : width);
                return laid.Count > lines ? laid[..lines] : laid;
            }

            left.RemoveAt(dropped);
        }
    }

    /// <summary>Lays the pieces out in as many lines as they need: nothing is left out, what is too wide goes on below.</summary>
    /// <param name="pieces">The pieces, in order.</param>
    /// <param name="width">The width of a line in px.</param>
    /// <param name="beside">What the first line is shorter by, in px.</param>
    /// <returns>The lines, each with its pieces.</returns>
    public static List<List<PlacedPiece>> LayAll(IEnumerable<TextPiece> pieces, double width, double beside = 0)
    {
        var whole = new List<TextPiece>();
        foreach (var piece in pieces)
        {
            if (piece.Text.Length > 0)
                whole.AddRange(BrokenText.Of(piece with { MayShrink = false }, whole.Count == 0 ? width - beside : width));
        }

        return Fill(whole, width, beside);
    }

    /// <summary>Adds the shapes of laid-out lines.</summary>
    /// <param name="shapes">Where they go.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="x">Where lines begin.</param>
    /// <param name="baseline">The first baseline.</param>
    /// <param name="pitch">From baseline to baseline.</param>
    public static void Draw(List<Shape> shapes, List<List<PlacedPiece>> lines, double x, double baseline, double pitch)
    {
        for (var line = 0; line < lines.Count; line++)
        {
            foreach (var (piece, at, text) in lines[line])
            {
                var y = baseline + (line * pitch);
                if (piece.Sign is { } severity)
                    SignShapes.Add(shapes, severity, new Point(x + at + 5, y - 4));
                if (text.Length > 0)
                    shapes.Add(new TextShape(piece.Ink, x + at + piece.SignWidth, y, text, TextAnchor.Start, piece.Role));
            }
        }
    }

    private static List<List<PlacedPiece>> Fill(List<TextPiece> pieces, double width, double beside)
    {
        var lines = new List<List<PlacedPiece>>();
        var at = 0.0;
        foreach (var piece in pieces)
        {
            var needed = piece.MayShrink ? Math.Min(piece.Width, Shrunk) : piece.Width;
            if (lines.Count == 0 || piece.BeginsLine || at + needed > (lines.Count == 1 ? width - beside : width))
            {
                lines.Add([]);
                at = 0;
            }

            lines[^1].Add(new PlacedPiece(piece, at, piece.Text));
            at += needed + Gap;
        }

        return lines;
    }

    /// <summary>Gives what may shrink the room that is left on its line, and shortens what is wider than the line.</summary>
    private static List<PlacedPiece> Widen(List<PlacedPiece> line, double width)
    {
        var taken = (line.Count - 1) * Gap;
        foreach (var (piece, _, _) in line)
            taken += piece.MayShrink ? Math.Min(piece.Width, Shrunk) : piece.Width;

        var spare = Math.Max(0, width - taken);
        var at = 0.0;
        var widened = new List<PlacedPiece>(line.Count);
        foreach (var (piece, _, _) in line)
        {
            var space = piece.Width;
            if (piece.MayShrink && space > Shrunk)
            {
                space = Math.Min(space, Shrunk + spare);
                spare -= space - Shrunk;
            }

            space = Math.Min(space, width - at);
            var text = space >= piece.Width
                ? piece.Text
                : FittedText.Of(piece.Text, piece.Role, TextWidth.IsBold(piece.Ink), space - piece.SignWidth);
            widened.Add(new PlacedPiece(piece, at, text));
            at += space + Gap;
        }

        return widened;
    }

    private static int Expendable(List<TextPiece> pieces)
    {
        var (worst, place) = (0, -1);
        for (var index = 0; index < pieces.Count; index++)
        {
            if (pieces[index].Rank > worst)
                (worst, place) = (pieces[index].Rank, index);
        }

        return place;
    }
}
