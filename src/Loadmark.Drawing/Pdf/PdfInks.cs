using System.Globalization;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Painting;
using Loadmark.Drawing.Paper;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Loadmark.Drawing.Pdf;

/// <summary>The pens, brushes and fonts of one document, each made once.</summary>
internal sealed class PdfInks
{
    private readonly Dictionary<InkPaint, (XPen? Pen, XBrush? Brush)> _paints = [];
    private readonly Dictionary<(FontFace Face, double Points), XFont> _fonts = [];

    /// <summary>What lines and faces of a paint are drawn with; null for none.</summary>
    public (XPen? Pen, XBrush? Brush) Of(InkPaint paint)
    {
        if (_paints.TryGetValue(paint, out var made))
            return made;
        made = (paint.Stroke is { } stroke ? PenOf(paint, stroke) : null, paint.Fill is { } fill ? BrushOf(paint, fill) : null);
        _paints.Add(paint, made);
        return made;
    }

    /// <summary>What lines of a paint that has lines are drawn with.</summary>
    public XPen PenOf(InkPaint paint) => Of(paint).Pen ?? throw new ArgumentException("It draws no lines.", nameof(paint));

    /// <summary>What faces and text of a paint that has them are filled with.</summary>
    public XBrush BrushOf(InkPaint paint) => Of(paint).Brush ?? throw new ArgumentException("It fills nothing.", nameof(paint));

    /// <summary>A face in a size.</summary>
    public XFont FontOf(FontFace face, double points)
    {
        points = Math.Round(points, 3);
        if (_fonts.TryGetValue((face, points), out var font))
            return font;
        font = new XFont(
            PaperFonts.Family,
            points,
            ReferenceEquals(face, PaperFonts.Bold) ? XFontStyleEx.Bold : XFontStyleEx.Regular,
            new XPdfFontOptions(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset));
        _fonts.Add((face, points), font);
        return font;
    }

    private static XPen PenOf(InkPaint paint, string colour)
    {
        var pen = new XPen(ColourOf(colour, 1), paint.Width * PaperSize.PointsPerPx)
        {
            LineCap = paint.Dashes.Length == 0 ? XLineCap.Round : XLineCap.Flat,
            LineJoin = XLineJoin.Round,
        };

        // PDFsharp counts dashes in widths of the line.
        if (paint.Dashes.Length > 0)
            pen.DashPattern = [.. paint.Dashes.Select(dash => dash / paint.Width)];
        return pen;
    }

    private static XSolidBrush BrushOf(InkPaint paint, string colour) => new(ColourOf(colour, paint.FillOpacity));

    private static XColor ColourOf(string colour, double opacity)
    {
        var rgb = int.Parse(colour.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return XColor.FromArgb((int)Math.Round(255 * opacity), (rgb >> 16) & 255, (rgb >> 8) & 255, rgb & 255);
    }
}
