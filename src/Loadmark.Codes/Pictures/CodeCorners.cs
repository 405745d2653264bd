using ZXing.QrCode.Internal;

namespace Loadmark.Codes.Pictures;

/// <summary>Three squares that may be the corners of one code.</summary>
/// <param name="TopLeft">The one at the right angle.</param>
/// <param name="TopRight">The one that is met first, going clockwise from it.</param>
/// <param name="BottomLeft">The other one.</param>
/// <param name="Misfit">How far they are from the corners of a square: 0 for not at all.</param>
internal sealed record CodeCorners(FinderPattern TopLeft, FinderPattern TopRight, FinderPattern BottomLeft, double Misfit)
{
    /// <summary>Modules between the middles of two corners: 14 in the smallest code, with room for what is tilted.</summary>
    private const double LeastModules = 10;

    /// <summary>As many as 170 in the largest code, with room for what is tilted.</summary>
    private const double MostModules = 240;
    private const double MostSizeRatio = 1.7;
    private const double MostSideRatio = 1.7;
    private const double MostCosine = 0.5;

    /// <summary>Every three of the squares that may be the corners of one code, the likeliest first.</summary>
    public static IEnumerable<CodeCorners> Of(IReadOnlyList<FinderPattern> patterns)
    {
        var found = new List<CodeCorners>();
        foreach (var corner in patterns)
        {
            for (var one = 0; one < patterns.Count; one++)
            {
                for (var other = one + 1; other < patterns.Count; other++)
                {
                    if (patterns[one] != corner && patterns[other] != corner && Of(corner, patterns[one], patterns[other]) is { } corners)
                        found.Add(corners);
                }
            }
        }

        return found.OrderBy(static corners => corners.Misfit);
    }

    /// <summary>Whether a square is one of these.</summary>
    public bool Has(FinderPattern pattern) => pattern == TopLeft || pattern == TopRight || pattern == BottomLeft;

    private static CodeCorners? Of(FinderPattern corner, FinderPattern one, FinderPattern other)
    {
        var (smallest, largest) = (
            Math.Min(corner.EstimatedModuleSize, Math.Min(one.EstimatedModuleSize, other.EstimatedModuleSize)),
            Math.Max(corner.EstimatedModuleSize, Math.Max(one.EstimatedModuleSize, other.EstimatedModuleSize)));
        if (largest > smallest * MostSizeRatio)
            return null;
        double ax = one.X - corner.X, ay = one.Y - corner.Y, bx = other.X - corner.X, by = other.Y - corner.Y;
        var (a, b) = (Math.Sqrt((ax * ax) + (ay * ay)), Math.Sqrt((bx * bx) + (by * by)));
        var (shorter, longer) = (Math.Min(a, b), Math.Max(a, b));
        if (shorter < LeastModules * smallest || longer > MostModules * largest || longer > shorter * MostSideRatio)
            return null;
        var cosine = Math.Abs(((ax * bx) + (ay * by)) / (a * b));
        if (cosine > MostCosine)
            return null;

        // Corners of neighbours make right angles too, but larger ones: of those that fit as well, the smaller is likelier to be one code.
        var misfit = (longer / shorter) - 1 + cosine + (largest / smallest) - 1 + (longer / largest / 500);
        var isClockwise = (ax * by) - (ay * bx) > 0;
        return new CodeCorners(corner, isClockwise ? one : other, isClockwise ? other : one, misfit);
    }
}
