using System.IO.Compression;
using UglyToad.PdfPig.Filters;
using UglyToad.PdfPig.Tokens;

namespace Loadmark.Codes.Scans;

/// <summary>
/// The filters that streams of a PDF are unpacked by, with an end to what they unpack to: a file of a few kilobytes can be made to unpack
/// to more than any memory holds.
/// </summary>
internal sealed class BoundedFilters : IFilterProvider
{
    /// <summary>The most bytes of what a page is drawn with; each twelve of them may be a face.</summary>
    public const int MostDrawn = 6 * 1024 * 1024;

    /// <summary>The most bytes of a font, which may have the signs of all scripts.</summary>
    private const int MostFont = 64 * 1024 * 1024;

    /// <summary>The most bytes of a picture: three a dot.</summary>
    private const int MostPicture = (int)(3 * PictureFile.MostDots) + (1024 * 1024);

    /// <summary>The most bytes that all streams of a file unpack to.</summary>
    private const long MostInAll = 1024L * 1024 * 1024;

    /// <summary>What a filter without an end of its own makes of a byte at the most, LZW of the longest codes.</summary>
    private const int MostPerByte = 4096;

    private readonly IFilterProvider _filters = DefaultFilterProvider.Instance;
    private long _unpacked;

    public IReadOnlyList<IFilter> GetFilters(DictionaryToken dictionary) => Bounded(_filters.GetFilters(dictionary));

    public IReadOnlyList<IFilter> GetNamedFilters(IReadOnlyList<NameToken> names) => Bounded(_filters.GetNamedFilters(names));

    public IReadOnlyList<IFilter> GetAllFilters() => Bounded(_filters.GetAllFilters());

    /// <summary>The most bytes that a stream may unpack to, by what it is.</summary>
    public static int MostOf(DictionaryToken dictionary) =>
        dictionary.TryGet(NameToken.Subtype, out var kind) && kind is NameToken { Data: "Image" } ? MostPicture
        : dictionary.TryGet(NameToken.Create("Length1"), out _) ? MostFont
        : MostDrawn;

    private IReadOnlyList<IFilter> Bounded(IReadOnlyList<IFilter> filters) =>
        [.. filters.Select(filter => (IFilter)new Bound(filter, this))];

    private void Count(long bytes, int most)
    {
        _unpacked += bytes;
        if (bytes > most || _unpacked > MostInAll)
            throw new InvalidDataException("A stream unpacks to more than a page of paper needs.");
    }

    private sealed class Bound(IFilter filter, BoundedFilters all) : IFilter
    {
        public bool IsSupported => filter.IsSupported;

        public Memory<byte> Decode(Memory<byte> input, DictionaryToken dictionary, IFilterProvider provider, int index)
        {
            var most = MostOf(dictionary);
            if (filter is FlateFilter)
                all.Count(Inflated(input, most), most);
            else if (filter is LzwFilter or RunLengthFilter && (long)input.Length * (filter is LzwFilter ? MostPerByte : 64) > MostPicture)
                throw new InvalidDataException("A stream may unpack to more than a page of paper needs.");
            return filter.Decode(input, dictionary, provider, index);
        }

        /// <summary>How many bytes a stream inflates to; no more than one too many are looked at, and none are kept.</summary>
        private static long Inflated(Memory<byte> input, int most)
        {
            using var packed = new MemoryStream(input.ToArray(), writable: false);
            using var zip = new ZLibStream(packed, CompressionMode.Decompress);
            var (bytes, count) = (new byte[81920], 0L);
            try
            {
                for (int read; count <= most && (read = zip.Read(bytes)) > 0;)
                    count += read;
            }
            catch (InvalidDataException)
            {
                // The filter itself makes of it what it can.
            }

            return count;
        }
    }
}
