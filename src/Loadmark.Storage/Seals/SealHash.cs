using System.Buffers;
using System.Buffers.Binary;
using System.IO.Hashing;
using System.Text;

namespace Loadmark.Storage.Seals;

/// <summary>
/// Computes the seal of a row: XXH64 of its table's name and its values in the order of their columns' names. Each value is taken as SQLite
/// keeps it, after a byte that says of what sort it is and, where it has one, its length, so that no two rows come to the same bytes.
/// </summary>
internal sealed class SealHash
{
    private const byte NoValue = 0;
    private const byte Number = 1;
    private const byte Characters = 2;
    private const byte Bytes = 3;

    private readonly ArrayBufferWriter<byte> _bytes = new(256);

    /// <summary>Begins with a row of a table.</summary>
    public void Begin(string table)
    {
        _bytes.ResetWrittenCount();
        AddText(table);
    }

    /// <summary>Adds a value that is null.</summary>
    public void AddNull() => _bytes.Write([NoValue]);

    /// <summary>Adds a whole number.</summary>
    public void Add(long value) => AddLong(Number, value);

    /// <summary>Adds a text.</summary>
    public void AddText(string text)
    {
        AddLong(Characters, Encoding.UTF8.GetByteCount(text));
        Encoding.UTF8.GetBytes(text, _bytes);
    }

    /// <summary>Adds a text that is in UTF-8.</summary>
    public void AddText(ReadOnlySpan<byte> text)
    {
        AddLong(Characters, text.Length);
        _bytes.Write(text);
    }

    /// <summary>Adds bytes.</summary>
    public void AddBytes(ReadOnlySpan<byte> bytes)
    {
        AddLong(Bytes, bytes.Length);
        _bytes.Write(bytes);
    }

    /// <summary>The seal of what was added.</summary>
    public long End() => unchecked((long)XxHash64.HashToUInt64(_bytes.WrittenSpan));

    private void AddLong(byte sort, long value)
    {
        var bytes = _bytes.GetSpan(1 + sizeof(long));
        bytes[0] = sort;
        BinaryPrimitives.WriteInt64LittleEndian(bytes[1..], value);
        _bytes.Advance(1 + sizeof(long));
    }
}
