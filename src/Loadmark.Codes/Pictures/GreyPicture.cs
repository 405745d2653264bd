namespace Loadmark.Codes.Pictures;

/// <summary>A picture in greys.</summary>
/// <param name="Width">The width in dots.</param>
/// <param name="Height">The height in dots.</param>
/// <param name="Greys">How light each dot is, row by row: 0 black, 255 white.</param>
internal sealed record GreyPicture(int Width, int Height, byte[] Greys)
{
    /// <summary>The picture with half as many dots across and down, each the mean of four: noise and fine grain are averaged out.</summary>
    public GreyPicture Halved()
    {
        var (width, height) = (Math.Max(1, Width / 2), Math.Max(1, Height / 2));
        var greys = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            var upper = Greys.AsSpan(2 * y * Width, Width);
            var lower = Greys.AsSpan(Math.Min((2 * y) + 1, Height - 1) * Width, Width);
            for (var x = 0; x < width; x++)
            {
                var right = Math.Min((2 * x) + 1, Width - 1);
                greys[(y * width) + x] = (byte)((upper[2 * x] + upper[right] + lower[2 * x] + lower[right] + 2) / 4);
            }
        }

        return new GreyPicture(width, height, greys);
    }

    /// <summary>The picture with twice as many dots across and down, those between being means: for modules of few dots.</summary>
    public GreyPicture Doubled()
    {
        var (width, height) = (2 * Width, 2 * Height);
        var greys = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            var (upper, lower) = (y / 2, Math.Min((y + 1) / 2, Height - 1));
            for (var x = 0; x < width; x++)
            {
                var (left, right) = (x / 2, Math.Min((x + 1) / 2, Width - 1));
                greys[(y * width) + x] = (byte)((
                    Greys[(upper * Width) + left] + Greys[(upper * Width) + right] + Greys[(lower * Width) + left]
                    + Greys[(lower * Width) + right] + 2) / 4);
            }
        }

        return new GreyPicture(width, height, greys);
    }
}
