using System.Diagnostics;
using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Files;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Workshop.Library;

namespace Loadmark.Bench;

/// <summary>Times a library of 20,000 pieces of gear and 5,000 rigs: searching, and finding the rigs that a change means something to.</summary>
internal static class LibraryBench
{
    private const int Searches = 100;

    private static readonly string[] Queries = ["PD-00731", "pd 731", "pd-0", "reverb", "long reverb", "rev", "revreb", "lnog revreb", "chorsu amebr", "pd-o0731", "9v 100ma", "nothinglikeit"];

    /// <summary>Measures a library of so many loads, and so many rigs.</summary>
    public static int Run(int pieces, int rigs)
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-bench-").FullName;
        try
        {
            RunAsync(folder, pieces, rigs).GetAwaiter().GetResult();
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task RunAsync(string folder, int pieces, int rigs)
    {
        var table = new ResultTable(
            "The gear library",
            $"Release, seed 1: {pieces} loads and {rigs} rigs of eight loads each, on the disk of the temporary folder. \"Scan\" compares the query's words with every word of every piece by the same edit "
            + $"distance, in the same run; the last column is how many pieces each of the two finds (searching gives at most 50). {ResultTable.Machine}",
            "what", "times", "median", "95th percentile", "longest", "compared");
        using var store = new Store(folder, TimeProvider.System, RigMentions.Of);
        await store.OpenAsync();
        using var cache = new LibraryCache(store);
        var random = new Random(1);
        var gear = SeededGear.Table(random, pieces);

        var preview = ImportPreview.Of(await cache.NowAsync(), GearFileReader.Read(gear, "gear.csv"));
        Add(table, $"import {pieces} new pieces", [await TimeAsync(() => new LibraryEditor(store).TakeAsync(preview, static _ => true, "bench"))]);
        GearSnapshot now = null!;
        Add(table, "read the library for the first time", [await TimeAsync(async () => now = await cache.NowAsync())]);
        Add(table, "first search, which makes the index", [Time(() => now.Search("reverb", 50))]);
        foreach (var query in Queries)
        {
            var found = now.Search(query, 50).Length;
            var clock = Stopwatch.StartNew();
            var scanned = SeededGear.Scan(now.Gear, query);
            Add(table, $"search \"{query}\"", [.. Enumerable.Range(0, Searches).Select(_ => Time(() => now.Search(query, 50)))], $"scan {clock.Elapsed.TotalMilliseconds:0} ms; {found} and {scanned}");
        }

        var changed = now.Find(GearKind.Load, "PD-00001")!;
        await new LibraryEditor(store).ChangeAsync(changed.Stored, changed.Piece!, ["changed"], "bench");
        Add(table, "read the library after one change", [await TimeAsync(async () => now = await cache.NowAsync())]);

        var texts = SeededGear.Rigs(random, now, rigs);
        Add(table, "keep a rig, its uses of gear with it", await KeepAllAsync(store, texts));
        foreach (var (tag, users) in SeededGear.Shared)
            await AffectedAsync(table, store, cache, tag, users);

        List<Core.Rigs.Rig> some = [.. texts.Take(200).Select(text => RigFileReader.Read(text, "", now).Rig!)];
        Add(table, "judge one rig by its nameplates", [.. some.Select(rig => Time(() => Core.Checks.NameplateCheck.Of(rig)))]);
        Add(table, "judge one rig by its nameplates and its circuit", [.. some.Select(rig => Time(() => Workshop.Sessions.RigSession.Judge(rig)))]);
        var whole = Stopwatch.StartNew();
        foreach (var text in texts)
            RigFileReader.Read(text, "", now);
        table.Add($"reference: read all {rigs} rigs, as without the list of who has what", "1", Milliseconds(whole.Elapsed.TotalMilliseconds), "", "", "one core");
        table.Write("library.md");
    }

    private static async Task<List<double>> KeepAllAsync(Store store, List<string> texts)
    {
        var times = new List<double>(texts.Count);
        for (var number = 0; number < texts.Count; number++)
            times.Add(await TimeAsync(() => store.Rigs.AddAsync($"rig {number}", texts[number])));
        return times;
    }

    private static async Task AffectedAsync(ResultTable table, Store store, LibraryCache cache, string tag, int rigs)
    {
        var editor = new LibraryEditor(store);
        var (first, all, found, processor) = (new List<double>(), new List<double>(), 0, new List<double>());
        for (var run = 0; run < 5; run++)
        {
            var gear = (await cache.NowAsync()).Find(GearKind.Load, tag)!;
            await editor.ChangeAsync(gear.Stored, GearPiece.Of(gear.Piece!.Load! with { Run = new Amps(0.2m + (0.01m * run)) }), gear.Stored.Content.Words, "bench");
            gear = (await cache.NowAsync()).Find(GearKind.Load, tag)!;
            var (clock, spent) = (Stopwatch.StartNew(), Process.GetCurrentProcess().TotalProcessorTime);
            found = 0;
            await foreach (var _ in new AffectedRigs(store, cache).FindAsync(gear))
            {
                if (++found == 1)
                    first.Add(clock.Elapsed.TotalMilliseconds);
            }

            all.Add(clock.Elapsed.TotalMilliseconds);
            processor.Add((Process.GetCurrentProcess().TotalProcessorTime - spent).TotalMilliseconds);
        }

        Add(table, $"affected rigs of a piece in {rigs}, with both verdicts: the first", first);
        Add(table, $"the same: all {found}", all, $"{found} found of {rigs} that have it; processor time {processor.Order().ElementAt(2):0} ms over all cores");
    }

    private static void Add(ResultTable table, string what, IReadOnlyCollection<double> times, string compared = "")
    {
        double[] sorted = [.. times.Order()];
        table.Add(what, $"{sorted.Length}", Milliseconds(sorted[sorted.Length / 2]), Milliseconds(sorted[(int)(sorted.Length * 0.95)]), Milliseconds(sorted[^1]), compared);
    }

    private static string Milliseconds(double time) => time.ToString("0.00 'ms'", CultureInfo.InvariantCulture);

    private static double Time(Action run)
    {
        var clock = Stopwatch.StartNew();
        run();
        return clock.Elapsed.TotalMilliseconds;
    }

    private static async Task<double> TimeAsync(Func<Task> run)
    {
        var clock = Stopwatch.StartNew();
        await run();
        return clock.Elapsed.TotalMilliseconds;
    }
}
