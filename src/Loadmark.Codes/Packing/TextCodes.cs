using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;

namespace Loadmark.Codes.Packing;

/// <summary>Packs a text into what codes hold, and unpacks it: UTF-8, Brotli (RFC 7932), parts of nearly equal size.</summary>
public static class TextCodes
{
    /// <summary>
    /// The most bytes of a code: what version 19 holds, of 93 modules (checked with the encoder). More makes modules so many that they
    /// are not read reliably from a photograph.
    /// </summary>
    public const int MostCodeBytes = 792;

    /// <summary>The most codes that a text is parted into.</summary>
    public const int MostParts = 16;

    /// <summary>The most bytes of packed text that codes hold together.</summary>
    public const int MostPackedBytes = MostParts * (MostCodeBytes - CodePart.Frame);

    /// <summary>The largest text, in bytes of UTF-8: 1 MiB, as a rig file.</summary>
    public const int MostTextBytes = 1024 * 1024;

    private const int Quality = 11;
    private const int Window = 22;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The bytes of each code of a text, in order. Equal texts make equal codes.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Empty where the text is too large for <see cref="MostParts"/> codes, or is none that UTF-8 can write.</returns>
    public static ImmutableArray<byte[]> Pack(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        byte[] bytes;
        try
        {
            bytes = Strict.GetBytes(text);
        }
        catch (EncoderFallbackException)
        {
            return [];
        }

        var packed = new byte[MostPackedBytes];
        if (bytes.Length > MostTextBytes || !BrotliEncoder.TryCompress(bytes, packed, out var length, Quality, Window))
            return [];
        var digest = CodePart.DigestOf(bytes);
        var count = Math.Max(1, (length + MostCodeBytes - CodePart.Frame - 1) / (MostCodeBytes - CodePart.Frame));
        return
        [
            .. Enumerable.Range(0, count).Select(index => new CodePart(
                digest, index + 1, count, packed[(length * index / count)..(length * (index + 1) / count)]).Write()),
        ];
    }

    /// <summary>The text that parts hold.</summary>
    /// <param name="parts">All parts of one text, in order.</param>
    /// <returns>The text; null where it is not the one that was packed.</returns>
    internal static string? Unpack(IReadOnlyList<CodePart> parts)
    {
        var packed = parts.SelectMany(static part => part.Packed).ToArray();
        var bytes = new byte[MostTextBytes];
        if (!BrotliDecoder.TryDecompress(packed, bytes, out var length)
            || CodePart.DigestOf(bytes.AsSpan(0, length)) != parts[0].Text)
            return null;
        try
        {
            return Strict.GetString(bytes, 0, length);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
