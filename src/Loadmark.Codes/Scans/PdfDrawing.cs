using Loadmark.Codes.Pictures;
using SkiaSharp;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Loadmark.Codes.Scans;

/// <summary>Paints the filled faces of a page, which is all that a code on a sheet is made of. No text, no lines, no pictures.</summary>
internal static class PdfDrawing
{
    private const double PointsPerInch = 72;
    private const double DotsPerInch = 200;
    private const int MostFaces = 200_000;

    /// <summary>The smallest code has more faces than this, its three corners alone having nine; a page of words has fewer.</summary>
    private const int LeastFaces = 12;
    private const double MostSide = 4000;

    /// <summary>The faces of a page; null where it has fewer than a code has.</summary>
    public static GreyPicture? Of(Page page)
    {
        var faces = page.Paths.Where(static path => path is { IsFilled: true, IsClipping: false }).Take(MostFaces).ToList();
        if (faces.Count < LeastFaces)
            return null;
        var scale = Math.Min(DotsPerInch / PointsPerInch, MostSide / Math.Max(1, Math.Max(page.Width, page.Height)));
        var (width, height) = ((int)Math.Ceiling(page.Width * scale), (int)Math.Ceiling(page.Height * scale));
        if (width < 1 || height < 1)
            return null;
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        foreach (var face in faces)
            Paint(canvas, face, scale, height);
        return PictureFile.Of(bitmap);
    }

    private static void Paint(SKCanvas canvas, PdfPath face, double scale, int height)
    {
        using var builder = new SKPathBuilder();
        foreach (var command in face.SelectMany(static part => part.Commands))
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    builder.MoveTo(At(move.Location));
                    break;
                case PdfSubpath.Line line:
                    builder.LineTo(At(line.To));
                    break;
                case PdfSubpath.CubicBezierCurve curve:
                    builder.CubicTo(At(curve.FirstControlPoint), At(curve.SecondControlPoint), At(curve.EndPoint));
                    break;
                case PdfSubpath.Close:
                    builder.Close();
                    break;
                default:
                    break;
            }
        }

        using var path = builder.Detach();
        var (red, green, blue) = face.FillColor?.ToRGBValues() ?? (0, 0, 0);
        using var paint = new SKPaint { IsAntialias = true, Color = new SKColor(Byte(red), Byte(green), Byte(blue)) };
        canvas.DrawPath(path, paint);

        SKPoint At(PdfPoint point) => new((float)(point.X * scale), (float)(height - (point.Y * scale)));
    }

    private static byte Byte(double share) => (byte)Math.Clamp(Math.Round(share * 255), 0, 255);
}
