using ZXing;
using ZXing.Common;
using ZXing.QrCode.Internal;

namespace Loadmark.Codes.Pictures;

/// <summary>
/// Takes the modules of a code out of a picture, given its corners, and decodes them. The library takes the number of modules from how
/// large
/// one is between two corners; of a code of 93 modules a fiftieth too much is one size of code, so the sizes beside it are tried too.
/// </summary>
internal sealed class CodeSampler(BitMatrix image) : Detector(image)
{
    private const int LeastModules = 21;
    private const int MostModules = 177;

    /// <summary>Codes of neighbouring versions differ by so many modules (ISO/IEC 18004).</summary>
    private const int Step = 4;

    /// <summary>How many sizes of code are tried, the likeliest first.</summary>
    private const int MostSizes = 5;

    /// <summary>
    /// From the edge of a code to the middle of a corner's square, and to that of the square towards the fourth corner; modules.
    /// </summary>
    private const float ToCorner = 3.5f;
    private const float ToAlignment = 6.5f;

    /// <summary>How far the fourth square is sought from where it would be if the code were seen straight on; modules.</summary>
    private static readonly float[] Allowances = [4, 8, 16];

    private readonly Decoder _decoder = new();

    /// <summary>What a code holds; null where there is none between these corners, or one that cannot be read.</summary>
    public byte[]? Read(CodeCorners corners)
    {
        var module = calculateModuleSize(corners.TopLeft, corners.TopRight, corners.BottomLeft);
        if (!(module >= 1))
            return null;
        var side = (ResultPoint.distance(corners.TopLeft, corners.TopRight)
            + ResultPoint.distance(corners.TopLeft, corners.BottomLeft)) / 2;
        foreach (var modules in Sizes((side / module) + (2 * ToCorner)))
        {
            if (Read(corners, modules, module) is { } bytes)
                return bytes;
        }

        return null;
    }

    private static IEnumerable<int> Sizes(float estimate)
    {
        var nearest = LeastModules + (Step * (int)Math.Round((estimate - LeastModules) / Step));
        return Enumerable.Range(-MostSizes / 2, MostSizes)
            .Select(step => nearest + (step * Step))
            .Where(static modules => modules is >= LeastModules and <= MostModules)
            .OrderBy(modules => Math.Abs(modules - estimate));
    }

    private byte[]? Read(CodeCorners corners, int modules, float module)
    {
        foreach (var (x, y, fourth) in Fourths(corners, modules, module))
        {
            var far = modules - ToCorner;
            var transform = PerspectiveTransform.quadrilateralToQuadrilateral(
                ToCorner, ToCorner, far, ToCorner, fourth, fourth, ToCorner, far,
                corners.TopLeft.X, corners.TopLeft.Y, corners.TopRight.X, corners.TopRight.Y,
                x, y, corners.BottomLeft.X, corners.BottomLeft.Y);
            if (Read(modules, transform) is { } bytes)
                return bytes;
        }

        return null;
    }

    private byte[]? Read(int modules, PerspectiveTransform transform)
    {
        try
        {
            return GridSampler.Instance.sampleGrid(Image, modules, modules, transform) is { } sampled
                && _decoder.decode(sampled, null) is { } decoded
                ? BytesOf(decoded)
                : null;
        }
        catch (Exception fault)
            when (fault is ArgumentException or IndexOutOfRangeException or InvalidOperationException or System.FormatException
                or ArithmeticException)
        {
            // What is no code is met here in every shape, and the library was made for codes.
            return null;
        }
    }

    /// <summary>
    /// A fourth point of the code in the picture and where it is in modules, across as down: the square towards the fourth corner, which
    /// codes larger than the smallest have, as it is found near and farther away, since what is near may only look like it; at last the
    /// fourth corner as it would be if the code were seen straight on.
    /// </summary>
    private IEnumerable<(float X, float Y, float Modules)> Fourths(CodeCorners corners, int modules, float module)
    {
        var (topLeft, topRight, bottomLeft) = (corners.TopLeft, corners.TopRight, corners.BottomLeft);
        var (cornerX, cornerY) = (topRight.X - topLeft.X + bottomLeft.X, topRight.Y - topLeft.Y + bottomLeft.Y);
        if (modules > LeastModules)
        {
            var share = (modules - ToAlignment - ToCorner) / (modules - (2 * ToCorner));
            var (x, y) = ((int)(topLeft.X + (share * (cornerX - topLeft.X))), (int)(topLeft.Y + (share * (cornerY - topLeft.Y))));
            AlignmentPattern? before = null;
            foreach (var allowance in Allowances)
            {
                if (findAlignmentInRegion(module, x, y, allowance) is not { } found || found.Equals(before))
                    continue;
                yield return (found.X, found.Y, modules - ToAlignment);
                before = found;
            }
        }

        yield return (cornerX, cornerY, modules - ToCorner);
    }

    /// <summary>The bytes of a code in byte mode; of one in another mode, its text stands for them.</summary>
    private static byte[] BytesOf(DecoderResult decoded) =>
        decoded.ByteSegments is { Count: > 0 } segments
            ? [.. segments.SelectMany(static segment => segment)]
            : System.Text.Encoding.UTF8.GetBytes(decoded.Text ?? "");
}
