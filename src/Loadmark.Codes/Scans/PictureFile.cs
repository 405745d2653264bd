using System.Globalization;
using Loadmark.Codes.Pictures;
using SkiaSharp;

namespace Loadmark.Codes.Scans;

/// <summary>Decodes pictures from files, after having looked how large they are.</summary>
internal static class PictureFile
{
    /// <summary>The most dots of a picture: what telephones take at the most, and 600 dots an inch of A4 with room to spare.</summary>
    public const long MostDots = 65_000_000;

    private const int MostSide = 60_000;

    /// <summary>Whether a file begins as a picture does (ISO/IEC 15948 and 10918-1; RIFF with WEBP by RFC 9649).</summary>
    public static bool Is(ReadOnlySpan<byte> bytes) =>
        bytes is [0x89, (byte)'P', (byte)'N', (byte)'G', ..]
            or [0xFF, 0xD8, 0xFF, ..]
            or [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..];

    /// <summary>A picture in greys, on white where it is transparent.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="picture">The picture; null where it cannot be read.</param>
    /// <returns>What keeps it from being read; null where nothing does.</returns>
    public static string? Read(byte[] bytes, out GreyPicture? picture)
    {
        picture = null;
        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);
        if (codec?.EncodedFormat is not (SKEncodedImageFormat.Png or SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Webp))
            return "it is no picture that can be read. Expected a PNG or JPEG picture, or a PDF.";
        var size = codec.Info.Size;
        if (Complaint(size.Width, size.Height) is { } complaint)
            return complaint;
        using var bitmap = new SKBitmap();
        if (!bitmap.TryAllocPixels(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul)))
            return "there is no memory for a picture of this size.";

        // Of a file that was cut off in sending, what came may hold the codes; what did not come is white.
        bitmap.Erase(SKColors.White);
        var result = codec.GetPixels(bitmap.Info, bitmap.GetPixels());
        if (result is not (SKCodecResult.Success or SKCodecResult.IncompleteInput or SKCodecResult.ErrorInInput))
            return "the picture is damaged.";
        picture = Of(bitmap);
        return null;
    }

    /// <summary>What is wrong with the size of a picture; null for nothing.</summary>
    public static string? Complaint(int width, int height) =>
        width > 0 && height > 0 && width <= MostSide && height <= MostSide && (long)width * height <= MostDots
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"the picture has {width} x {height} dots. At most {MostDots / 1_000_000} million are looked at: make it smaller, or cut "
                + $"it to the page with the codes.");

    /// <summary>How light a picture's dots are (ITU-R BT.601: 0.299 red, 0.587 green, 0.114 blue).</summary>
    public static GreyPicture Of(SKBitmap bitmap)
    {
        var greys = new byte[bitmap.Width * bitmap.Height];
        for (var y = 0; y < bitmap.Height; y++)
        {
            var row = bitmap.GetPixelSpan().Slice(y * bitmap.RowBytes, bitmap.Width * 4);
            for (var x = 0; x < bitmap.Width; x++)
            {
                var light = ((77 * row[4 * x]) + (150 * row[(4 * x) + 1]) + (29 * row[(4 * x) + 2])) >> 8;
                var opacity = row[(4 * x) + 3];
                greys[(y * bitmap.Width) + x] = (byte)(((light * opacity) + (255 * (255 - opacity))) / 255);
            }
        }

        return new GreyPicture(bitmap.Width, bitmap.Height, greys);
    }
}
