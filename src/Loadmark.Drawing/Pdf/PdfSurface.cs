using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Painting;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using PdfSharp.Drawing;

namespace Loadmark.Drawing.Pdf;

/// <summary>Paints on a page of PDFsharp, whose unit is the point of 1/72 inch.</summary>
internal sealed class PdfSurface(XGraphics page, PdfInks inks) : IPaintSurface
{
    public void Line(InkPaint paint, Point from, Point to)
    {
        if (paint.Stroke is not null)
            page.DrawLine(inks.PenOf(paint), At(from), At(to));
    }

    public void Rectangle(InkPaint paint, Box box, double corner)
    {
        var (pen, brush) = inks.Of(paint);
        var area = new XRect(At(new Point(box.X, box.Y)), new XSize(box.Width * PaperSize.PointsPerPx, box.Height * PaperSize.PointsPerPx));
        if (corner > 0)
            page.DrawRoundedRectangle(pen, brush, area, new XSize(2 * corner * PaperSize.PointsPerPx, 2 * corner * PaperSize.PointsPerPx));
        else
            page.DrawRectangle(pen, brush, area);
    }

    public void Circle(InkPaint paint, Point centre, double radius)
    {
        var (pen, brush) = inks.Of(paint);
        var across = 2 * radius * PaperSize.PointsPerPx;
        page.DrawEllipse(pen, brush, new XRect(At(new Point(centre.X - radius, centre.Y - radius)), new XSize(across, across)));
    }

    public void Path(InkPaint paint, ReadOnlySpan<Point> points, bool isClosed)
    {
        var corners = new XPoint[points.Length];
        for (var index = 0; index < corners.Length; index++)
            corners[index] = At(points[index]);

        var (pen, brush) = inks.Of(paint);
        if (isClosed)
            page.DrawPolygon(pen, brush, corners, XFillMode.Winding);
        else if (paint.Stroke is not null)
            page.DrawLines(inks.PenOf(paint), corners);
    }

    public void Text(InkPaint paint, FontFace face, double size, Point baseline, string text)
    {
        if (paint.Fill is not null)
            page.DrawString(
                text, inks.FontOf(face, size * PaperSize.PointsPerPx), inks.BrushOf(paint), At(baseline), XStringFormats.BaseLineLeft);
    }

    private static XPoint At(Point point) => new(point.X * PaperSize.PointsPerPx, point.Y * PaperSize.PointsPerPx);
}
