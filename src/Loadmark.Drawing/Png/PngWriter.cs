using Loadmark.Drawing.Painting;
using Loadmark.Drawing.Paper;
using SkiaSharp;

namespace Loadmark.Drawing.Png;

/// <summary>Writes pages as one PNG, under one another.</summary>
public static class PngWriter
{
    /// <summary>The coarsest a picture is written, in dots an inch.</summary>
    public const int LeastDotsPerInch = 36;

    /// <summary>The finest a picture is written, in dots an inch.</summary>
    public const int MostDotsPerInch = 600;

    /// <summary>The most dots of a picture: a page of A4 at 600 dots an inch has 35 million.</summary>
    public const long MostDots = 200_000_000;

    /// <summary>Writes a document.</summary>
    /// <param name="document">The document.</param>
    /// <param name="dotsPerInch">
    /// How fine, 36 to <see cref="MostDotsPerInch"/>; what would have more than <see cref="MostDots"/> is coarser.
    /// </param>
    /// <returns>The file. On one machine, equal documents make equal files.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is finer or coarser than that.</exception>
    public static byte[] Write(PaperDocument document, int dotsPerInch = 150)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentOutOfRangeException.ThrowIfLessThan(dotsPerInch, LeastDotsPerInch);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dotsPerInch, MostDotsPerInch);
        var stack = PageStack.Of(document);
        var scale = Math.Min(dotsPerInch / 96.0, Math.Sqrt(MostDots / (stack.Width * stack.Height)));
        var info = new SKImageInfo(
            (int)Math.Ceiling(stack.Width * scale), (int)Math.Ceiling(stack.Height * scale), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info) ?? throw new InvalidOperationException("There is no memory for a picture of this size.");
        var canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        canvas.Scale((float)scale);
        var painted = new PngSurface(canvas);
        foreach (var (page, top) in stack.Pages)
        {
            canvas.Save();
            canvas.Translate(0, (float)top);
            foreach (var part in page.All())
                ShapePainter.Paint(painted, part.Shapes);
            canvas.Restore();
        }

        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
