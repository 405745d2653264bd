using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using Loadmark.Codes.Packing;
using Loadmark.Codes.Scans;
using SkiaSharp;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Writer;

namespace Loadmark.Codes.Tests;

/// <summary>Codes read back from pictures as scanners and telephones make them.</summary>
public sealed class ScanReaderTests
{
    private static readonly string Text = TextCodesTests.Incompressible(3000);

    [Theory]
    [InlineData(75)]
    [InlineData(96)]
    [InlineData(150)]
    [InlineData(300)]
    [InlineData(600)]
    public void Scans_are_read(int dotsPerInch) => AssertRead(Picture(dotsPerInch));

    [Theory]
    [InlineData(3)]
    [InlineData(45)]
    [InlineData(90)]
    [InlineData(171)]
    [InlineData(263)]
    public void Turned_pages_are_read(float degrees) => AssertRead(DisturbedPicture.Turned(Picture(150), degrees));

    [Theory]
    [InlineData(0.1f)]
    [InlineData(0.2f)]
    public void Pages_seen_from_aside_are_read(float share) => AssertRead(DisturbedPicture.Tilted(Picture(200), share));

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.4)]
    [InlineData(0.45)]
    public void Blurred_pictures_are_read(double modules) => AssertRead(DisturbedPicture.Blurred(Picture(200), modules));

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.15)]
    public void Uneven_light_is_read(double share) => AssertRead(DisturbedPicture.Shaded(Picture(150), share));

    [Theory]
    [InlineData(20)]
    [InlineData(40)]
    public void Noise_is_read(double deviation) => AssertRead(DisturbedPicture.Noisy(Picture(150), deviation, seed: 3));

    [Theory]
    [InlineData(150)]
    [InlineData(300)]
    public void A_poor_photograph_is_read(int dotsPerInch)
    {
        var picture = DisturbedPicture.Tilted(DisturbedPicture.Turned(DisturbedPicture.Blurred(Picture(dotsPerInch), 0.2), 7), 0.05f);
        AssertRead(DisturbedPicture.Jpeg(DisturbedPicture.Noisy(DisturbedPicture.Shaded(picture, 0.4), 8, seed: 5), 40));
    }

    /// <summary>A scanner's PDF: each page is one picture, as the scanner packed it.</summary>
    [Theory]
    [InlineData("JPEG", 100)]
    [InlineData("JPEG", 300)]
    [InlineData("grey JPEG", 150)]
    [InlineData("PNG", 150)]
    [InlineData("page on its side", 150)]
    public void Scanned_PDFs_are_read(string kind, int dotsPerInch)
    {
        using var writer = new PdfDocumentBuilder();
        foreach (var code in TextCodes.Pack(Text))
        {
            using var picture = DisturbedPicture.Of([code], dotsPerInch);
            var page = writer.AddPage(595, 842);
            var place = new PdfRectangle(20, 20, 560, 20 + (540.0 * picture.Height / picture.Width));
            if (kind == "page on its side")
                page.SetRotation(new PageRotationDegrees(90));
            if (kind == "PNG")
                page.AddPng(DisturbedPicture.Png(picture), place);
            else
                page.AddJpeg(DisturbedPicture.Jpeg(kind == "grey JPEG" ? DisturbedPicture.Grey(picture) : picture, 60), place);
        }

        AssertRead(writer.Build());
    }

    /// <summary>One picture for each code, and a code of somebody else's beside it.</summary>
    [Fact]
    public void Several_pictures_make_a_whole()
    {
        var found = new GatheredCodes();
        foreach (var code in TextCodes.Pack(Text))
        {
            Assert.False(found.IsWhole);
            Assert.Null(ScanReader.Read(
                DisturbedPicture.Jpeg(DisturbedPicture.Of([code, "https://example.org"u8.ToArray()], 150), 80),
                found,
                cancellation: TestContext.Current.CancellationToken));
        }

        Assert.Equal(Text, Assert.Single(found.Texts()).Text);
        Assert.Equal(1, found.CountOf(CodeKind.Foreign));
    }

    /// <summary>Files that no sheet is, made when they are looked at: as arguments of a test they would be written out whole.</summary>
    private static readonly Dictionary<string, Func<byte[]>> Files = new(StringComparer.Ordinal)
    {
        ["empty"] = static () => [],
        ["no picture"] = static () => "rig: x"u8.ToArray(),
        ["PNG without an end"] = static () => DisturbedPicture.Png(Picture(96))[..400],
        ["PNG of 60000 x 60000 dots"] = static () => Huge(),
        ["a line across"] = static () => Thin(60_000, 1),
        ["a line down"] = static () => Thin(1, 60_000),
        ["PDF that is none"] = static () => "%PDF-1.7\ngarbage"u8.ToArray(),
        ["PDF whose pages go round in circles"] = static () => "%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Count 9999999/Kids[2 0 R 2 0 R]>>endobj\ntrailer<</Root 1 0 R>>"u8.ToArray(),
        ["PDF of brackets"] = static () => Encoding.ASCII.GetBytes("%PDF-1.4\n1 0 obj" + new string('[', 2_000_000)),
        ["PDF that unpacks to a gigabyte"] = static () => Pdf(Blanks(1024), "/Filter/FlateDecode"),
        ["PDF that unpacks twice"] = static () => Pdf(Zipped(Blanks(1024)), "/Filter[/FlateDecode/FlateDecode]"),
        ["PDF of a million squares"] = static () => Pdf(Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat("1 1 1 1 re f\n", 1_000_000))), ""),
        ["a wall of squares"] = static () => DisturbedPicture.Png(Wall()),
        ["noise"] = static () => DisturbedPicture.Png(DisturbedPicture.Noisy(new SKBitmap(new SKImageInfo(2400, 2400, SKColorType.Rgba8888, SKAlphaType.Opaque)), 255, seed: 1)),
    };

    public static TheoryData<string> Hostile() => [.. Files.Keys];

    /// <summary>Whatever it is, it comes to a sentence or to nothing, within a bounded time.</summary>
    [Theory]
    [MemberData(nameof(Hostile))]
    public void What_is_no_sheet_gives_nothing_in_bounded_time(string what)
    {
        var bytes = Files[what]();
        var found = new GatheredCodes();
        var before = GC.GetTotalAllocatedBytes();
        var time = Stopwatch.StartNew();
        var complaint = ScanReader.Read(bytes, found, cancellation: TestContext.Current.CancellationToken);
        Assert.Empty(found.Texts());
        Assert.True(time.Elapsed < TimeSpan.FromSeconds(50), $"{what}: {time.Elapsed}");
        Assert.True(GC.GetTotalAllocatedBytes() - before < 1_000_000_000, $"{what}: {GC.GetTotalAllocatedBytes() - before} bytes");
        Assert.True(complaint is null || complaint.EndsWith('.'), complaint);
        Assert.Equal(what is "a wall of squares" or "noise" or "PNG without an end" or "a line across" or "a line down", complaint is null);
    }

    [Fact]
    public void What_takes_too_long_is_told_and_what_is_stopped_stops()
    {
        var png = DisturbedPicture.Png(Wall());
        Assert.Contains(
            "too long",
            ScanReader.Read(png, new GatheredCodes(), TimeSpan.FromMilliseconds(1), TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
        Assert.ThrowsAny<OperationCanceledException>(() => ScanReader.Read(png, new GatheredCodes(), cancellation: new CancellationToken(canceled: true)));
    }

    private static SKBitmap Picture(int dotsPerInch) => DisturbedPicture.Of(TextCodes.Pack(Text), dotsPerInch);

    /// <summary>Squares like those at the corners of codes, as many as a picture holds.</summary>
    private static SKBitmap Wall()
    {
        var picture = new SKBitmap(new SKImageInfo(2400, 2400, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(picture);
        canvas.Clear(SKColors.White);
        using var dark = new SKPaint { Color = SKColors.Black };
        using var light = new SKPaint { Color = SKColors.White };
        for (var at = 0; at < 100 * 100; at++)
        {
            var (x, y) = ((at % 100 * 24) + 1, (at / 100 * 24) + 1);
            canvas.DrawRect(SKRect.Create(x, y, 21, 21), dark);
            canvas.DrawRect(SKRect.Create(x + 3, y + 3, 15, 15), light);
            canvas.DrawRect(SKRect.Create(x + 6, y + 6, 9, 9), dark);
        }

        return picture;
    }

    /// <summary>A page that is drawn with a stream, whole, with its cross-reference table.</summary>
    private static byte[] Pdf(byte[] stream, string keys)
    {
        string[] objects =
        [
            "<</Type/Catalog/Pages 2 0 R>>", "<</Type/Pages/Count 1/Kids[3 0 R]>>", "<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Resources<<>>/Contents 4 0 R>>",
            $"<</Length {stream.Length}{keys}>>\nstream\n",
        ];
        var pdf = new List<byte>("%PDF-1.4\n"u8.ToArray());
        var table = "xref\n0 5\n0000000000 65535 f \n";
        for (var index = 0; index < objects.Length; index++)
        {
            table += $"{pdf.Count:0000000000} 00000 n \n";
            pdf.AddRange(Encoding.ASCII.GetBytes($"{index + 1} 0 obj\n{objects[index]}"));
            pdf.AddRange(index == 3 ? [.. stream, .. "\nendstream\nendobj\n"u8] : "\nendobj\n"u8.ToArray());
        }

        pdf.AddRange(Encoding.ASCII.GetBytes($"{table}trailer\n<</Size 5/Root 1 0 R>>\nstartxref\n{pdf.Count}\n%%EOF\n"));
        return [.. pdf];
    }

    private static byte[] Blanks(int mebibytes)
    {
        var blanks = Enumerable.Repeat((byte)' ', 1024 * 1024).ToArray();
        using var packed = new MemoryStream();
        using (var zip = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            for (var count = 0; count < mebibytes; count++)
                zip.Write(blanks);
        }

        return packed.ToArray();
    }

    private static byte[] Zipped(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var zip = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            zip.Write(bytes);
        return packed.ToArray();
    }

    private static byte[] Thin(int width, int height)
    {
        using var line = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        line.Erase(SKColors.White);
        return DisturbedPicture.Png(line);
    }

    /// <summary>A PNG whose head says that it is larger than any.</summary>
    private static byte[] Huge()
    {
        using var small = new SKBitmap(new SKImageInfo(1, 1, SKColorType.Rgba8888, SKAlphaType.Opaque));
        var png = DisturbedPicture.Png(small);
        foreach (var at in (ReadOnlySpan<int>)[16, 20])
            System.Buffers.Binary.BinaryPrimitives.WriteInt32BigEndian(png.AsSpan(at), 60_000);
        System.Buffers.Binary.BinaryPrimitives.WriteUInt32BigEndian(png.AsSpan(29), Crc(png.AsSpan(12, 17)));
        return png;
    }

    /// <summary>The checksum of a PNG's parts: CRC-32 of ISO/IEC 15948, annex D.</summary>
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var one in bytes)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
        }

        return ~crc;
    }

    private static void AssertRead(SKBitmap picture) => AssertRead(DisturbedPicture.Png(picture));

    private static void AssertRead(byte[] file)
    {
        var found = new GatheredCodes();
        Assert.Null(ScanReader.Read(file, found, cancellation: TestContext.Current.CancellationToken));
        Assert.Equal(Text, Assert.Single(found.Texts()).Text);
    }
}
