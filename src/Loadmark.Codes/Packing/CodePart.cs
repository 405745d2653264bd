using System.Security.Cryptography;

namespace Loadmark.Codes.Packing;

/// <summary>
/// What one code holds: a part of a packed text, and what tells to which text it belongs. As bytes: the word <c>Loadmark</c> in ASCII, the
/// version of this layout (1), which part it is, of how many, the first 8 bytes of the SHA-256 of the text, the part, and a checksum of all
/// before it, the first 4 bytes of its SHA-256.
/// </summary>
/// <param name="Text">The first bytes of the SHA-256 of the whole text, in hexadecimal digits.</param>
/// <param name="Number">Which part it is, from 1.</param>
/// <param name="Count">Of how many, at most <see cref="TextCodes.MostParts"/>.</param>
/// <param name="Packed">The part of the packed text.</param>
internal sealed record CodePart(string Text, int Number, int Count, byte[] Packed)
{
    /// <summary>How many bytes stand around a part.</summary>
    public const int Frame = Head + ChecksumBytes;

    private const byte Layout = 1;
    private const int MarkBytes = 8;
    private const int DigestBytes = 8;
    private const int ChecksumBytes = 4;
    private const int Head = MarkBytes + 3 + DigestBytes;

    private static ReadOnlySpan<byte> Mark => "Loadmark"u8;

    /// <summary>What a text is told from others by.</summary>
    /// <param name="text">The text in UTF-8.</param>
    public static string DigestOf(ReadOnlySpan<byte> text) => Convert.ToHexStringLower(SHA256.HashData(text).AsSpan(0, DigestBytes));

    /// <summary>The bytes of the code.</summary>
    public byte[] Write()
    {
        var bytes = new byte[Frame + Packed.Length];
        Mark.CopyTo(bytes);
        (bytes[MarkBytes], bytes[MarkBytes + 1], bytes[MarkBytes + 2]) = (Layout, (byte)Number, (byte)Count);
        Convert.FromHexString(Text).CopyTo(bytes, MarkBytes + 3);
        Packed.CopyTo(bytes, Head);
        ChecksumOf(bytes.AsSpan(0, Head + Packed.Length)).CopyTo(bytes.AsSpan(Head + Packed.Length));
        return bytes;
    }

    /// <summary>Reads the bytes of a code.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="part">The part; null where it is none, or damaged.</param>
    public static CodeKind Read(ReadOnlySpan<byte> bytes, out CodePart? part)
    {
        part = null;
        if (!bytes.StartsWith(Mark))
            return CodeKind.Foreign;
        if (bytes.Length <= Frame || !ChecksumOf(bytes[..^ChecksumBytes]).SequenceEqual(bytes[^ChecksumBytes..]))
            return CodeKind.Damaged;
        if (bytes[MarkBytes] != Layout)
            return CodeKind.Newer;
        var (number, count) = (bytes[MarkBytes + 1], bytes[MarkBytes + 2]);
        if (number is 0 || number > count || count > TextCodes.MostParts)
            return CodeKind.Damaged;
        var digest = Convert.ToHexStringLower(bytes.Slice(MarkBytes + 3, DigestBytes));
        part = new CodePart(digest, number, count, bytes[Head..^ChecksumBytes].ToArray());
        return CodeKind.Part;
    }

    private static ReadOnlySpan<byte> ChecksumOf(ReadOnlySpan<byte> bytes) => SHA256.HashData(bytes).AsSpan(0, ChecksumBytes);
}
