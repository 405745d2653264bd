using System.Globalization;
using Loadmark.Codes.Packing;
using Loadmark.Codes.Pictures;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace Loadmark.Codes.Scans;

/// <summary>
/// Finds codes in PDF: in the pictures of its pages, as a scanner makes them, and in what is drawn on them, as a sheet is. Every page is
/// looked at, since another rig's codes may be on the next.
/// </summary>
internal static class PdfFile
{
    /// <summary>The most pages that are looked at.</summary>
    public const int MostPages = 60;

    /// <summary>The most pictures of a page that are looked at.</summary>
    private const int MostPictures = 20;

    private const string Unreadable = "the PDF is damaged or protected, and cannot be read. Save the page with the codes as a picture.";

    private static ReadOnlySpan<byte> Beginning => "%PDF-"u8;

    /// <summary>Whether a file says that it is PDF; it may do so a little after its beginning.</summary>
    public static bool Is(ReadOnlySpan<byte> bytes) => bytes[..Math.Min(bytes.Length, 1024)].IndexOf(Beginning) >= 0;

    /// <summary>Adds the codes of a file to those that were found.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="found">Where they go.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>What keeps the file from being read; null where nothing does.</returns>
    public static string? Find(byte[] bytes, GatheredCodes found, CancellationToken cancellation)
    {
        var (complaint, before) = (default(string), found.CountOf(CodeKind.Part));
        using var pdf = PdfDocument.Open(
            bytes, new ParsingOptions { UseLenientParsing = true, SkipMissingFonts = true, FilterProvider = new BoundedFilters() });
        if (pdf.NumberOfPages > MostPages)
            return string.Create(
                CultureInfo.InvariantCulture,
                $"the PDF has {pdf.NumberOfPages} pages. At most {MostPages} are looked at: take out the page with the codes.");
        if (DrawsTooMuch(pdf))
            return "the PDF draws more than a page of paper needs. Save the page with the codes as a picture.";
        for (var number = 1; number <= pdf.NumberOfPages; number++)
        {
            cancellation.ThrowIfCancellationRequested();
            complaint ??= Find(pdf.GetPage(number), found, cancellation);
        }

        // A picture of a page that is not read matters only where it may be the one with the codes.
        return found.CountOf(CodeKind.Part) > before ? null : pdf.NumberOfPages == 0 ? Unreadable : complaint;
    }

    /// <summary>What is wrong with a file that the library cannot read.</summary>
    public static string Damaged => Unreadable;

    /// <summary>Whether a page is drawn with more than is looked at, in a stream that is not packed: the filters do not see it.</summary>
    private static bool DrawsTooMuch(PdfDocument pdf) =>
        pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys
            .Select(pdf.Structure.GetObject)
            .Any(static one => one?.Data is StreamToken stream && stream.Data.Length > BoundedFilters.MostOf(stream.StreamDictionary));

    private static string? Find(Page page, GatheredCodes found, CancellationToken cancellation)
    {
        string? complaint = null;
        if (PdfDrawing.Of(page) is { } drawn)
            PictureCodes.FindDrawn(drawn, found, cancellation);
        foreach (var image in page.GetImages().Take(MostPictures))
        {
            cancellation.ThrowIfCancellationRequested();
            var trouble = PictureFile.Complaint(image.WidthInSamples, image.HeightInSamples);
            if (trouble is null && FileOf(image) is { } file && (trouble = PictureFile.Read(file, out var picture)) is null)
                PictureCodes.Find(picture!, found, cancellation);
            else
                complaint ??= trouble
                    ?? "a picture in the PDF is packed in a way that is not read here. Save the page with the codes as a picture.";
        }

        return complaint;
    }

    /// <summary>The picture as a file: a photograph as the JPEG that it is, others made PNG; null where it is packed otherwise.</summary>
    private static byte[]? FileOf(IPdfImage image) =>
        image.RawBytes is [0xFF, 0xD8, ..] ? image.RawBytes.ToArray() : image.TryGetPng(out var png) ? png : null;
}
