using System.Buffers.Binary;

namespace Loadmark.Storage.Sqlite;

/// <summary>
/// What the memory that programs share beside a database said of its log when the last of them ended without closing it (sqlite.org,
/// WAL-mode File Format, 2.1). SQLite writes it after the log is on the disk, so the log has at least as many frames.
/// </summary>
internal static class LogIndex
{
    private const int HeaderSize = 48;
    private const int SummedSize = 40;
    private const int StartedAt = 12;
    private const int FramesAt = 16;
    private const int SaltAt = 32;
    private const int InDatabaseAt = 2 * HeaderSize;

    /// <summary>The frames that the log has to have; null where there is no saying, or all of them are in the database already.</summary>
    public static LogFrames? Promised(Stream shared)
    {
        var bytes = new byte[InDatabaseAt + sizeof(uint)];
        if (shared.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false) < bytes.Length)
            return null;
        var header = bytes.AsSpan(0, HeaderSize);
        var sum = LogFrames.Sum((0, 0), header[..SummedSize], isBig: !BitConverter.IsLittleEndian);
        if (header[StartedAt] == 0
            || !header.SequenceEqual(bytes.AsSpan(HeaderSize, HeaderSize))
            || sum != (BitConverter.ToUInt32(header[SummedSize..]), BitConverter.ToUInt32(header[(SummedSize + 4)..])))
            return null;
        var frames = BitConverter.ToUInt32(header[FramesAt..]);
        return frames > BitConverter.ToUInt32(bytes.AsSpan(InDatabaseAt))
            ? new LogFrames(BinaryPrimitives.ReadUInt64BigEndian(header[SaltAt..]), frames)
            : null;
    }
}
