using System.Buffers.Binary;

namespace Loadmark.Storage.Copies;

/// <summary>
/// The pages of a database that describe its tables (sqlite.org, Database File Format, 1.6 and 2.6). Where they are damaged, those of a new
/// database stand in: one that the same program made has its tables at the same places. Where it has not, no row has a seal that is right,
/// and nothing comes of it.
/// </summary>
internal static class SchemaPages
{
    private const int PageSize = 4096;
    private const int HeaderSize = 100;
    private const int Interior = 5;
    private const int InteriorHeaderSize = 12;
    private const int CountAt = 28;

    /// <summary>What is said of the length may be damaged too.</summary>
    private const int MostTimes = 100;

    private const long MostPages = 10_000;

    /// <summary>Writes the description of a new database over that of a copy of a damaged one.</summary>
    /// <param name="made">The new one, closed.</param>
    /// <param name="damaged">The copy.</param>
    public static void Graft(string made, string damaged)
    {
        var from = File.ReadAllBytes(made);
        using var to = new FileStream(damaged, FileMode.Open, FileAccess.Write);
        BinaryPrimitives.WriteUInt32BigEndian(from.AsSpan(CountAt), (uint)(to.Length / PageSize));
        foreach (var page in PagesOf(from))
        {
            to.Position = (page - 1) * (long)PageSize;
            to.Write(from, (int)((page - 1) * PageSize), PageSize);
        }
    }

    /// <summary>
    /// Gives a copy of a file that ends too early the length that it says it has, with nothing in the pages that are missing: SQLite reads
    /// none of a shorter one.
    /// </summary>
    public static void Lengthen(string damaged)
    {
        using var file = new FileStream(damaged, FileMode.Open, FileAccess.ReadWrite);
        var header = new byte[HeaderSize];
        if (file.ReadAtLeast(header, HeaderSize, throwOnEndOfStream: false) < HeaderSize)
            return;
        var length = BinaryPrimitives.ReadUInt32BigEndian(header.AsSpan(CountAt)) * (long)PageSize;
        if (length > file.Length && length <= Math.Max(file.Length * MostTimes, PageSize * MostPages))
            file.SetLength(length);
    }

    /// <summary>The first page, and those below it.</summary>
    private static IEnumerable<uint> PagesOf(byte[] database)
    {
        yield return 1;
        if (database[HeaderSize] != Interior)
            yield break;
        yield return BinaryPrimitives.ReadUInt32BigEndian(database.AsSpan(HeaderSize + 8));
        var cells = BinaryPrimitives.ReadUInt16BigEndian(database.AsSpan(HeaderSize + 3));
        for (var cell = 0; cell < cells; cell++)
        {
            var at = BinaryPrimitives.ReadUInt16BigEndian(database.AsSpan(HeaderSize + InteriorHeaderSize + (2 * cell)));
            yield return BinaryPrimitives.ReadUInt32BigEndian(database.AsSpan(at));
        }
    }
}
