using System.Diagnostics;
using Loadmark.Codes.Packing;
using Loadmark.Codes.Scans;
using Loadmark.Codes.Tests;
using SkiaSharp;

namespace Loadmark.Bench;

/// <summary>How many codes are read from pictures as scanners and telephones make them, beside Debian's zbar on the same pictures.</summary>
internal static class CodesBench
{
    private const int Pages = 20;
    private const int Codes = 2;
    private const int Letters = 1900;

    private static readonly (string Name, int DotsPerInch, Func<SKBitmap, Random, SKBitmap> Disturb, int? Quality)[] Conditions =
    [
        ("scan of 75 dots an inch", 75, Plain, null),
        ("scan of 100 dots an inch", 100, Plain, null),
        ("scan of 150 dots an inch", 150, Plain, null),
        ("scan of 300 dots an inch", 300, Plain, null),
        ("turned by any angle", 150, Turned, null),
        ("seen from aside, far edge 10 % shorter", 200, static (page, _) => DisturbedPicture.Tilted(page, 0.1f), null),
        ("seen from aside, far edge 20 % shorter", 200, static (page, _) => DisturbedPicture.Tilted(page, 0.2f), null),
        ("seen from aside, far edge 30 % shorter", 200, static (page, _) => DisturbedPicture.Tilted(page, 0.3f), null),
        ("out of focus by 0.3 modules", 200, static (page, _) => DisturbedPicture.Blurred(page, 0.3), null),
        ("out of focus by 0.4 modules", 200, static (page, _) => DisturbedPicture.Blurred(page, 0.4), null),
        ("out of focus by 0.5 modules", 200, static (page, _) => DisturbedPicture.Blurred(page, 0.5), null),
        ("lower right gets 50 % of the light", 150, static (page, _) => DisturbedPicture.Shaded(page, 0.5), null),
        ("lower right gets 15 % of the light", 150, static (page, _) => DisturbedPicture.Shaded(page, 0.15), null),
        ("noise of 20 of 255", 150, static (page, random) => DisturbedPicture.Noisy(page, 20, random.Next()), null),
        ("noise of 40 of 255", 150, static (page, random) => DisturbedPicture.Noisy(page, 40, random.Next()), null),
        ("noise of 60 of 255", 150, static (page, random) => DisturbedPicture.Noisy(page, 60, random.Next()), null),
        ("JPEG of quality 20", 150, Plain, 20),
        ("JPEG of quality 5", 150, Plain, 5),
        ("photograph: all of these, mildly", 150, Photograph, 40),
        ("photograph: all of these, mildly", 300, Photograph, 40),
    ];

    public static int Run()
    {
        var table = new ResultTable(
            "Codes read back",
            $"{Pages} pages of {Codes} codes, each of another text that cannot be packed; a page is whole where all its codes are read and "
                + $"the text is the one that was packed. zbarimg (Debian) is given the same pictures. Modules of 0.8 mm. {ResultTable.Machine}",
            "condition", "dots an inch", "pages whole", "codes", "codes by zbar", "median ms a page", "median ms by zbar, a process each", "wrong texts");
        var file = Path.GetTempFileName();
        var wrong = 0;
        try
        {
            foreach (var (name, dotsPerInch, disturb, quality) in Conditions)
            {
                var (random, whole, ours, zbars, wrongHere) = (new Random(20261201), 0, 0, 0, 0);
                var (times, zbarTimes) = (new List<double>(), new List<double>());
                for (var page = 0; page < Pages; page++)
                {
                    var text = new string(random.GetItems("0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ+-".ToCharArray(), Letters));
                    var codes = TextCodes.Pack(text);
                    if (codes.Length != Codes)
                        throw new InvalidOperationException($"{codes.Length} codes instead of {Codes}.");
                    using var picture = disturb(DisturbedPicture.Of(codes, dotsPerInch), random);
                    var bytes = quality is { } lossy ? DisturbedPicture.Jpeg(picture, lossy) : DisturbedPicture.Png(picture);
                    var found = new GatheredCodes();
                    var clock = Stopwatch.StartNew();
                    ScanReader.Read(bytes, found);
                    times.Add(clock.Elapsed.TotalMilliseconds);
                    ours += found.CountOf(CodeKind.Part);
                    var texts = found.Texts();
                    whole += texts is [{ Text: { } read }] && read == text ? 1 : 0;
                    wrongHere += texts.Count(one => one.Text is { } other && other != text);
                    File.WriteAllBytes(file, bytes);
                    clock.Restart();
                    var written = Zbar.Read(file);
                    zbars += codes.Count(code => written.AsSpan().IndexOf(code) >= 0);
                    zbarTimes.Add(clock.Elapsed.TotalMilliseconds);
                }

                wrong += wrongHere;
                table.Add(
                    name, $"{dotsPerInch}", $"{whole} of {Pages}", $"{ours} of {Pages * Codes}", $"{zbars} of {Pages * Codes}",
                    $"{PublishedPrograms.Median([.. times]):F0}", $"{PublishedPrograms.Median([.. zbarTimes]):F0}", $"{wrongHere}");
            }
        }
        finally
        {
            File.Delete(file);
        }

        table.Write("codes.md");
        return wrong == 0 ? 0 : 1;
    }

    private static SKBitmap Plain(SKBitmap page, Random random) => page;

    private static SKBitmap Turned(SKBitmap page, Random random) => DisturbedPicture.Turned(page, 360 * random.NextSingle());

    private static SKBitmap Photograph(SKBitmap page, Random random)
    {
        var seen = DisturbedPicture.Tilted(
            DisturbedPicture.Turned(DisturbedPicture.Blurred(page, 0.2), 20 * (random.NextSingle() - 0.5f)), 0.1f * random.NextSingle());
        return DisturbedPicture.Noisy(DisturbedPicture.Shaded(seen, 0.3 + (0.4 * random.NextDouble())), 8, random.Next());
    }
}
