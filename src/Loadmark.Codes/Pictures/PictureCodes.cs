using Loadmark.Codes.Packing;
using ZXing;
using ZXing.Common;

namespace Loadmark.Codes.Pictures;

/// <summary>Finds the codes of a picture: a few ways of telling dark from light, at several sizes, until nothing is missing.</summary>
internal static class PictureCodes
{
    /// <summary>The longer side that is begun with, in dots: 200 an inch of A4. Smaller sizes come after it, then larger ones.</summary>
    private const int CommonSide = 2400;

    /// <summary>A picture whose longer side is shorter is looked at enlarged too.</summary>
    private const int SmallSide = 1600;

    private const int LeastSide = 300;

    /// <summary>The shorter side of the smallest code, of 21 modules of a dot: what is narrower holds none.</summary>
    private const int LeastWidth = 21;

    /// <summary>The most sets of corners that are tried in one look.</summary>
    private const int MostTries = 400;

    /// <summary>Adds the codes of a picture to those that were found.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="found">Where they go.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static void Find(GreyPicture picture, GatheredCodes found, CancellationToken cancellation) =>
        Find(Sizes(picture), found, cancellation);

    /// <summary>The same for a picture that was drawn rather than taken: one look is as good as many.</summary>
    public static void FindDrawn(GreyPicture picture, GatheredCodes found, CancellationToken cancellation) =>
        Find([picture], found, cancellation);

    private static void Find(IEnumerable<GreyPicture> sizes, GatheredCodes found, CancellationToken cancellation)
    {
        foreach (var size in sizes)
        {
            foreach (var isLocal in (ReadOnlySpan<bool>)[true, false])
            {
                cancellation.ThrowIfCancellationRequested();
                if (Look(size, isLocal, found, cancellation) && found.IsWhole)
                    return;
            }
        }
    }

    /// <summary>The picture at the size that reads best for most, then smaller, then larger.</summary>
    private static IEnumerable<GreyPicture> Sizes(GreyPicture picture)
    {
        var larger = new Stack<GreyPicture>();
        var at = picture;
        while (SideOf(at) > CommonSide)
        {
            larger.Push(at);
            at = at.Halved();
        }

        yield return at;
        for (var smaller = at; SideOf(smaller) / 2 >= LeastSide;)
            yield return smaller = smaller.Halved();
        if (larger.Count == 0 && SideOf(picture) < SmallSide)
            yield return picture.Doubled();
        foreach (var one in larger)
            yield return one;
    }

    private static int SideOf(GreyPicture picture) => Math.Max(picture.Width, picture.Height);

    /// <summary>Whether any part of a rig file was seen.</summary>
    private static bool Look(GreyPicture picture, bool isLocal, GatheredCodes found, CancellationToken cancellation)
    {
        if (Math.Min(picture.Width, picture.Height) < LeastWidth)
            return false;
        var source = new RGBLuminanceSource(picture.Greys, picture.Width, picture.Height, RGBLuminanceSource.BitmapFormat.Gray8);
        if ((isLocal ? new HybridBinarizer(source) : new GlobalHistogramBinarizer(source)).BlackMatrix is not { } image)
            return false;
        var sampler = new CodeSampler(image);
        var read = new List<CodeCorners>();
        var (tries, any) = (0, false);
        foreach (var corners in CodeCorners.Of(new FinderPatterns(image).Find(cancellation)))
        {
            if (read.Exists(one => one.Has(corners.TopLeft) || one.Has(corners.TopRight) || one.Has(corners.BottomLeft)))
                continue;
            cancellation.ThrowIfCancellationRequested();
            if (++tries > MostTries)
                break;
            if (sampler.Read(corners) is not { } bytes)
                continue;
            read.Add(corners);
            any |= found.Add(bytes) == CodeKind.Part;
        }

        return any;
    }
}
