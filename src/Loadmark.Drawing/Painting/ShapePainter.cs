using System.Text;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Painting;

/// <summary>Paints shapes on any surface, so that two kinds of file cannot disagree on what a shape is.</summary>
internal static class ShapePainter
{
    /// <summary>Paints shapes from the bottom up.</summary>
    public static void Paint(IPaintSurface surface, IEnumerable<Shape> shapes)
    {
        foreach (var shape in shapes)
            Paint(surface, shape);
    }

    private static void Paint(IPaintSurface surface, Shape shape)
    {
        var paint = InkPaint.Of(shape);
        switch (shape)
        {
            case LineShape line:
                surface.Line(paint, line.From, line.To);
                break;
            case RectShape rect:
                surface.Rectangle(paint, rect.Box, rect.Corner);
                break;
            case CircleShape circle:
                surface.Circle(paint, circle.Centre, circle.Radius);
                break;
            case PathShape path:
                surface.Path(paint, path.Points.AsSpan(), path.Closed);
                break;
            case TextShape { Text.Length: > 0 } text:
                // A letter with its mark as one character is drawn as such; no face here moves marks over letters.
                var words = text.Text.Normalize(NormalizationForm.FormC);
                var face = PaperFonts.Of(TextWidth.IsBold(text.Ink));
                var left = text.X - (face.WidthOf(words, text.Size) * text.ShareBefore);
                surface.Text(paint, face, text.Size, new Point(left, text.Y), words);
                break;
            case TextShape:
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape can be painted.");
        }
    }
}
