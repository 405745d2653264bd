using ZXing.Common;
using ZXing.QrCode.Internal;

namespace Loadmark.Codes.Pictures;

/// <summary>Takes the modules of a code out of a picture, given its corners, and decodes them.</summary>
internal sealed class CodeSampler(BitMatrix image) : Detector(image)
{
    private readonly Decoder _decoder = new();

    /// <summary>What a code holds; null where there is none between these corners, or one that cannot be read.</summary>
    public byte[]? Read(CodeCorners corners)
    {
        try
        {
            return processFinderPatternInfo(new FinderPatternInfo([corners.BottomLeft, corners.TopLeft, corners.TopRight])) is { } sampled
                && _decoder.decode(sampled.Bits, null) is { } decoded
                ? BytesOf(decoded)
                : null;
        }
        catch (Exception fault)
            when (fault is ArgumentException or IndexOutOfRangeException or InvalidOperationException or FormatException
                or ArithmeticException)
        {
            // What is no code is met here in every shape, and the library was made for codes.
            return null;
        }
    }

    /// <summary>The bytes of a code in byte mode; of one in another mode, its text stands for them.</summary>
    private static byte[] BytesOf(DecoderResult decoded) =>
        decoded.ByteSegments is { Count: > 0 } segments
            ? [.. segments.SelectMany(static segment => segment)]
            : System.Text.Encoding.UTF8.GetBytes(decoded.Text ?? "");
}
