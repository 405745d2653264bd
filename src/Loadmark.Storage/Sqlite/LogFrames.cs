using System.Buffers.Binary;

namespace Loadmark.Storage.Sqlite;

/// <summary>The frames of a write-ahead log that count (sqlite.org, Database File Format, 4).</summary>
/// <param name="Salt">What the frames of this log are marked with, as it stands in the file.</param>
/// <param name="Frames">How many frames there are up to the last whole transaction.</param>
internal readonly record struct LogFrames(ulong Salt, uint Frames)
{
    private const int HeaderSize = 32;
    private const int FrameHeaderSize = 24;
    private const int SaltAt = 16;
    private const uint Magic = 0x377f0682;
    private const int SmallestPage = 512;
    private const int LargestPage = 65536;

    /// <summary>
    /// More beginnings than there are within the seconds after which the memory is on the disk; another database's mark is far off.
    /// </summary>
    private const uint MostBeginnings = 1_000;

    /// <summary>Reads a log as SQLite does when it recovers one: up to the first frame that is not whole.</summary>
    public static LogFrames Of(Stream log)
    {
        var header = new byte[HeaderSize];
        if (log.ReadAtLeast(header, HeaderSize, throwOnEndOfStream: false) < HeaderSize)
            return default;
        var magic = BinaryPrimitives.ReadUInt32BigEndian(header);
        var pageSize = BinaryPrimitives.ReadUInt32BigEndian(header.AsSpan(8));
        var isBig = (magic & 1) == 1;
        var sum = Sum((0, 0), header.AsSpan(0, 24), isBig);
        if ((magic & ~1u) != Magic || pageSize is < SmallestPage or > LargestPage || sum != Stated(header.AsSpan(24)))
            return default;

        var salt = BinaryPrimitives.ReadUInt64BigEndian(header.AsSpan(SaltAt));
        var frame = new byte[FrameHeaderSize + pageSize];
        var (at, whole) = (0u, 0u);
        while (log.ReadAtLeast(frame, frame.Length, throwOnEndOfStream: false) == frame.Length)
        {
            sum = Sum(Sum(sum, frame.AsSpan(0, 8), isBig), frame.AsSpan(FrameHeaderSize), isBig);
            if (BinaryPrimitives.ReadUInt64BigEndian(frame.AsSpan(8)) != salt || sum != Stated(frame.AsSpan(SaltAt)))
                break;
            at++;
            if (BinaryPrimitives.ReadUInt32BigEndian(frame.AsSpan(4)) != 0)
                whole = at;
        }

        return new LogFrames(salt, whole);
    }

    /// <summary>
    /// Whether this log was begun anew after another, which is done only once all of the other's frames are in the database: the first half
    /// of the mark goes up by one then (sqlite.org, WAL-mode File Format, 4.1). After a power cut the memory beside the database may be as
    /// it was some seconds before.
    /// </summary>
    /// <param name="other">The other.</param>
    public bool IsLaterThan(LogFrames other) =>
        Salt != 0 && unchecked((uint)(Salt >> 32) - (uint)(other.Salt >> 32)) is >= 1 and <= MostBeginnings;

    /// <summary>SQLite's running checksum over pairs of 32-bit words.</summary>
    public static (uint First, uint Second) Sum((uint First, uint Second) sum, ReadOnlySpan<byte> bytes, bool isBig)
    {
        for (var at = 0; at < bytes.Length; at += 8)
        {
            sum.First = unchecked(sum.First + Word(bytes[at..]) + sum.Second);
            sum.Second = unchecked(sum.Second + Word(bytes[(at + 4)..]) + sum.First);
        }

        return sum;

        uint Word(ReadOnlySpan<byte> word) =>
            isBig ? BinaryPrimitives.ReadUInt32BigEndian(word) : BinaryPrimitives.ReadUInt32LittleEndian(word);
    }

    private static (uint First, uint Second) Stated(ReadOnlySpan<byte> bytes) =>
        (BinaryPrimitives.ReadUInt32BigEndian(bytes), BinaryPrimitives.ReadUInt32BigEndian(bytes[4..]));
}
