using System.Buffers;
using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Loadmark.Storage.History;

/// <summary>
/// Texts as bytes and back, to the letter. The first byte says how the rest is written, so that texts packed by today's program stay
/// readable when a later one packs otherwise.
/// </summary>
internal static class TextPacking
{
    private const byte Plain = 0;
    private const byte Compressed = 1;

    /// <summary>UTF-16, for what UTF-8 cannot carry: half a surrogate pair, as a change in the middle of one leaves.</summary>
    private const byte Halves = 2;

    /// <summary>In bytes. Below it the text is rarely worth compressing.</summary>
    private const int WorthCompressing = 512;

    /// <summary>Of Brotli's 0 to 11: well over ten times faster than the smallest, and not much larger.</summary>
    private const int Quality = 4;

    private const int Window = 22;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static byte[] Pack(string text)
    {
        byte[] bytes;
        try
        {
            bytes = Strict.GetBytes(text);
        }
        catch (EncoderFallbackException)
        {
            return PackHalves(text);
        }

        if (bytes.Length >= WorthCompressing)
        {
            var packed = new byte[1 + BrotliEncoder.GetMaxCompressedLength(bytes.Length)];
            packed[0] = Compressed;
            if (BrotliEncoder.TryCompress(bytes, packed.AsSpan(1), out var length, Quality, Window) && length < bytes.Length)
                return packed[..(1 + length)];
        }

        return [Plain, .. bytes];
    }

    /// <summary>The text that was packed.</summary>
    /// <exception cref="InvalidDataException">The bytes are not a packed text.</exception>
    public static string Unpack(byte[] packed) => packed switch
    {
        [Plain, ..] => Decode(packed.AsSpan(1)),
        [Compressed, ..] => Decompress(packed.AsSpan(1)),
        [Halves, ..] when packed.Length % 2 == 1 => UnpackHalves(packed.AsSpan(1)),
        _ => throw new InvalidDataException("A text in the database is not in a form that this program knows."),
    };

    /// <summary>By hand, because the framework's UTF-16 puts a replacement for half a pair.</summary>
    private static byte[] PackHalves(string text)
    {
        var packed = new byte[1 + (2 * text.Length)];
        packed[0] = Halves;
        for (var at = 0; at < text.Length; at++)
            BinaryPrimitives.WriteUInt16LittleEndian(packed.AsSpan(1 + (2 * at)), text[at]);
        return packed;
    }

    private static string UnpackHalves(ReadOnlySpan<byte> bytes)
    {
        var text = new char[bytes.Length / 2];
        for (var at = 0; at < text.Length; at++)
            text[at] = (char)BinaryPrimitives.ReadUInt16LittleEndian(bytes[(2 * at)..]);
        return new string(text);
    }

    private static string Decode(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException fault)
        {
            throw new InvalidDataException("A text in the database is not UTF-8.", fault);
        }
    }

    private static string Decompress(ReadOnlySpan<byte> bytes)
    {
        var decoder = new BrotliDecoder();
        try
        {
            var text = new ArrayBufferWriter<byte>();
            OperationStatus status;
            do
            {
                status = decoder.Decompress(bytes, text.GetSpan(4096), out var read, out var written);
                text.Advance(written);
                bytes = bytes[read..];
            }
            while (status == OperationStatus.DestinationTooSmall);

            return status == OperationStatus.Done
                ? Decode(text.WrittenSpan)
                : throw new InvalidDataException("A text in the database does not decompress.");
        }
        finally
        {
            decoder.Dispose();
        }
    }
}
