using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Painting;
using Loadmark.Drawing.Scenes;
using SkiaSharp;

namespace Loadmark.Drawing.Png;

/// <summary>Paints on a canvas of Skia; the caller scales and places it.</summary>
internal sealed class PngSurface(SKCanvas canvas) : IPaintSurface
{
    public void Line(InkPaint paint, Point from, Point to)
    {
        using var stroke = StrokeOf(paint);
        if (stroke is not null)
            canvas.DrawLine(At(from), At(to), stroke);
    }

    public void Rectangle(InkPaint paint, Box box, double corner)
    {
        var (area, radius) = (SKRect.Create((float)box.X, (float)box.Y, (float)box.Width, (float)box.Height), (float)corner);
        Draw(paint, pen => canvas.DrawRoundRect(area, radius, radius, pen));
    }

    public void Circle(InkPaint paint, Point centre, double radius) =>
        Draw(paint, pen => canvas.DrawCircle(At(centre), (float)radius, pen));

    public void Path(InkPaint paint, ReadOnlySpan<Point> points, bool isClosed)
    {
        var corners = new SKPoint[points.Length];
        for (var index = 0; index < corners.Length; index++)
            corners[index] = At(points[index]);

        using var builder = new SKPathBuilder();
        builder.AddPoly(corners, isClosed);
        using var path = builder.Detach();
        Draw(isClosed ? paint : paint with { Fill = null }, pen => canvas.DrawPath(path, pen));
    }

    public void Text(InkPaint paint, FontFace face, double size, Point baseline, string text)
    {
        using var font = new SKFont(face.Typeface, (float)size) { Hinting = SKFontHinting.None, LinearMetrics = true, Subpixel = true };
        using var fill = FillOf(paint);
        if (fill is not null)
            canvas.DrawText(text, At(baseline), SKTextAlign.Left, font, fill);
    }

    private static SKPoint At(Point point) => new((float)point.X, (float)point.Y);

    private static void Draw(InkPaint paint, Action<SKPaint> draw)
    {
        using var fill = FillOf(paint);
        if (fill is not null)
            draw(fill);
        using var stroke = StrokeOf(paint);
        if (stroke is not null)
            draw(stroke);
    }

    private static SKPaint? FillOf(InkPaint paint) => paint.Fill is { } colour
        ? new SKPaint { IsAntialias = true, Color = SKColor.Parse(colour).WithAlpha((byte)Math.Round(255 * paint.FillOpacity)) }
        : null;

    private static SKPaint? StrokeOf(InkPaint paint)
    {
        if (paint.Stroke is not { } colour)
            return null;
        var stroke = new SKPaint
        {
            IsAntialias = true,
            IsStroke = true,
            Color = SKColor.Parse(colour),
            StrokeWidth = (float)paint.Width,
            StrokeCap = paint.Dashes.Length == 0 ? SKStrokeCap.Round : SKStrokeCap.Butt,
            StrokeJoin = SKStrokeJoin.Round,
        };
        if (paint.Dashes.Length > 0)
            stroke.PathEffect = SKPathEffect.CreateDash([.. paint.Dashes.Select(static dash => (float)dash)], 0);
        return stroke;
    }
}
