using System.Buffers;
using System.Text.Unicode;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Texts;

/// <summary>Decodes the bytes of a rig file: UTF-8, with or without a byte order mark, nothing else.</summary>
internal static class RigBytes
{
    /// <summary>The text without its byte order mark; null, with an error, when the bytes are no UTF-8 text.</summary>
    public static string? Decode(ReadOnlySpan<byte> bytes, ErrorList errors)
    {
        if (OtherEncoding(bytes) is { } encoding)
        {
            errors.Add(Spot.Start, $"the file is written in {encoding}: save it as UTF-8", encoding, "UTF-8");
            return null;
        }

        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];
        var characters = new char[bytes.Length];
        var status = Utf8.ToUtf16(bytes, characters, out var read, out var written, replaceInvalidSequences: false);
        var text = characters.AsSpan(0, written);
        if (status == OperationStatus.Done)
            return text.ToString();

        var spot = Spot.At(text, written);
        if (ControlCharacters.FirstIn(text) >= 0)
            errors.Add(spot, "this is not a text file", null, "a text in UTF-8");
        else
            errors.Add(
                spot,
                $"the byte {bytes[read]:X2} here is not UTF-8; the file may be in an older encoding: save it as UTF-8",
                $"{bytes[read]:X2}",
                "UTF-8");
        return null;
    }

    /// <summary>The encoding that a byte order mark, or every second byte being nothing, gives away; null for none.</summary>
    private static string? OtherEncoding(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0]) || bytes.StartsWith((ReadOnlySpan<byte>)[0, 0, 0xFE, 0xFF]))
            return "UTF-32";
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return "UTF-16";
        if (bytes.Length < 4)
            return null;

        // Text that is mostly ASCII has a zero in every second byte as UTF-16, and no zero at all as UTF-8.
        var start = bytes[..4];
        return (start[0] != 0, start[1] != 0, start[2] != 0, start[3] != 0) switch
        {
            (true, false, true, false) or (false, true, false, true) => "UTF-16",
            (true, false, false, false) or (false, false, false, true) => "UTF-32",
            _ => null,
        };
    }
}
