using Loadmark.Codes.Symbols;
using SkiaSharp;

namespace Loadmark.Codes.Tests;

/// <summary>What paper, lens, light and file do to a picture of codes.</summary>
internal static class DisturbedPicture
{
    private const double MillimetresPerInch = 25.4;
    private const double ModuleMm = 0.8;
    private const double PageMm = 200;

    /// <summary>Codes two beside one another on white, as on a sheet, 200 mm wide.</summary>
    public static SKBitmap Of(IReadOnlyList<byte[]> codes, int dotsPerInch)
    {
        var dots = dotsPerInch / MillimetresPerInch;
        var rows = (codes.Count + 1) / 2;
        var picture = new SKBitmap(new SKImageInfo((int)(PageMm * dots), (int)(((90 * rows) + 20) * dots), SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(picture);
        canvas.Clear(SKColors.White);
        using var ink = new SKPaint { Color = SKColor.Parse("#22262b"), IsAntialias = true };
        for (var index = 0; index < codes.Count; index++)
        {
            var symbol = QrSymbol.Of(codes[index]);
            var (left, top) = ((10 + (95 * (index % 2))) * dots, (10 + (90 * (index / 2))) * dots);
            foreach (var bar in symbol.Bars)
                canvas.DrawRect(SKRect.Create(
                    (float)(left + (bar.X * ModuleMm * dots)), (float)(top + (bar.Y * ModuleMm * dots)), (float)(bar.Width * ModuleMm * dots), (float)(bar.Height * ModuleMm * dots)), ink);
        }

        return picture;
    }

    /// <summary>Turned, on a grey table that shows at its corners.</summary>
    public static SKBitmap Turned(SKBitmap picture, float degrees)
    {
        var side = (int)Math.Ceiling(Math.Sqrt(((double)picture.Width * picture.Width) + ((double)picture.Height * picture.Height)));
        return Drawn(side, side, canvas =>
        {
            canvas.Translate(side / 2f, side / 2f);
            canvas.RotateDegrees(degrees);
            canvas.Translate(-picture.Width / 2f, -picture.Height / 2f);
            canvas.DrawBitmap(picture, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        });
    }

    /// <summary>Seen from aside: the right edge is shorter than the left one by this share.</summary>
    public static SKBitmap Tilted(SKBitmap picture, float share) => Drawn(picture.Width, picture.Height, canvas =>
    {
        // Straight lines stay straight: 1 + p x in the divisor makes the far edge smaller.
        var far = share / (1 - share) / picture.Width;
        canvas.Concat(new SKMatrix(1, 0, 0, far * picture.Height / 2, 1, 0, far, 0, 1));
        canvas.DrawBitmap(picture, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
    });

    /// <summary>Out of focus: a Gaussian of this many modules of 0.8 mm.</summary>
    public static SKBitmap Blurred(SKBitmap picture, double modules) => Drawn(picture.Width, picture.Height, canvas =>
    {
        var sigma = (float)(modules * ModuleMm * picture.Width / PageMm);
        using var filter = SKImageFilter.CreateBlur(sigma, sigma);
        using var paint = new SKPaint { ImageFilter = filter };
        canvas.DrawBitmap(picture, 0, 0, SKSamplingOptions.Default, paint);
    });

    /// <summary>A lamp at the upper left: the lower right gets this share of its light.</summary>
    public static SKBitmap Shaded(SKBitmap picture, double share) => Changed(picture, (x, y, grey) =>
        grey * (share + ((1 - share) * (1 - ((((double)x / picture.Width) + ((double)y / picture.Height)) / 2)))));

    /// <summary>Noise of a sensor with this standard deviation, of 255: the same in all three colours, which no averaging takes away.</summary>
    public static SKBitmap Noisy(SKBitmap picture, double deviation, int seed)
    {
        var random = new Random(seed);
        return Changed(picture, (_, _, grey) => grey + (deviation * Normals[random.Next(Normals.Length)]));
    }

    /// <summary>Samples of the normal distribution (Box and Muller 1958), drawn once: a picture has millions of dots.</summary>
    private static readonly double[] Normals = DrawNormals();

    private static double[] DrawNormals()
    {
        var random = new Random(1);
        return
        [
            .. Enumerable.Range(0, 1 << 16).Select(_ =>
                Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble())),
        ];
    }

    /// <summary>In one channel instead of three.</summary>
    public static SKBitmap Grey(SKBitmap picture)
    {
        var grey = new SKBitmap(new SKImageInfo(picture.Width, picture.Height, SKColorType.Gray8, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(grey);
        canvas.DrawBitmap(picture, 0, 0, SKSamplingOptions.Default);
        return grey;
    }

    public static byte[] Png(SKBitmap picture) => Encoded(picture, SKEncodedImageFormat.Png, 100);

    public static byte[] Jpeg(SKBitmap picture, int quality) => Encoded(picture, SKEncodedImageFormat.Jpeg, quality);

    /// <summary>Packed as fast as can be, where nothing is lost: how small the file is does not matter here.</summary>
    private static byte[] Encoded(SKBitmap picture, SKEncodedImageFormat format, int quality)
    {
        if (format == SKEncodedImageFormat.Png)
        {
            using var dots = picture.PeekPixels();
            using var png = dots!.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.Sub, zLibLevel: 1));
            return png!.ToArray();
        }

        using var data = picture.Encode(format, quality);
        return data.ToArray();
    }

    private static SKBitmap Drawn(int width, int height, Action<SKCanvas> draw)
    {
        var picture = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(picture);
        canvas.Clear(SKColors.Gray);
        draw(canvas);
        return picture;
    }

    private static SKBitmap Changed(SKBitmap picture, Func<int, int, double, double> change)
    {
        var changed = picture.Copy();
        var dots = changed.GetPixelSpan();
        for (var y = 0; y < changed.Height; y++)
        {
            for (var x = 0; x < changed.Width; x++)
            {
                // The codes' ink is so nearly grey that its green stands for all three.
                var dot = dots.Slice((y * changed.RowBytes) + (4 * x), 3);
                dot.Fill((byte)Math.Clamp(change(x, y, dot[1]), 0, 255));
            }
        }

        return changed;
    }
}
