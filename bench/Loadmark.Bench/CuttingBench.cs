using System.Diagnostics;
using Loadmark.Planning.Cutting;
using Loadmark.Planning.Tests;

namespace Loadmark.Bench;

/// <summary>Times cut lists beside first fit and an empty program: the ten u120 instances of OR-Library, and lists of leads.</summary>
internal static class CuttingBench
{
    private const int Rounds = 3;

    public static int Run()
    {
        var empty = Best(static () =>
        {
            using var process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine("bench", "Empty", "bin", "Release", "net10.0", "Empty.dll")]) { RedirectStandardOutput = true, UseShellExecute = false })!;
            process.WaitForExit();
            return process.ExitCode;
        }).Milliseconds;
        var table = new ResultTable(
            "Cutting leads from reels",
            $"OR-Library u120 (bin packing: 120 items, reels of 150 cm, no cut loss), and lists of leads with a cut of 1.5 mm. Best of {Rounds} rounds in one process after warm-up; an empty .NET program takes {empty:N0} ms as a process. "
            + $"Proven: opened and wasted metres; all: reels and longest offcut too. {ResultTable.Machine}",
            "list", "pieces", "reels: first fit", "decreasing", "planned", "published", "wasted m: first fit", "decreasing", "planned", "at the least", "proven", "first fit ms", "planned ms");
        CuttingPlanner.Plan([new CutPiece("warm", new Metres(1))], [new StockReel("drum", new Metres(3))], new CuttingOptions());
        foreach (var instance in BinPackingInstance.All().Where(static one => one.Sizes.Length == 120))
        {
            Add(
                table, instance.Name, [.. instance.Sizes.Select(static (size, item) => new CutPiece($"{item}", new Metres(size / 100m)))],
                [new StockReel("reel", new Metres(instance.Capacity / 100m))], new CuttingOptions(), $"{instance.Fewest}");
        }

        var options = new CuttingOptions { CutLoss = new Metres(0.0015m) };
        Add(table, "40 leads, 5 cm steps, 25 m drums", Leads(40, 31, 0.05m), [new StockReel("drum", new Metres(25))], options, "");
        Add(table, "40 leads, 5 cm steps, 5 m and 10 m coils, 4 m rest", Leads(40, 31, 0.05m), [new StockReel("rest", new Metres(4), 1), new StockReel("coil", new Metres(5)), new StockReel("ring", new Metres(10))], options, "");
        Add(table, "200 leads, 1 cm steps, 10 m coils", Leads(200, 151, 0.01m), [new StockReel("coil", new Metres(10))], options, "");
        Add(table, "1,000 leads, 7 mm steps, 4 m and 5.5 m coils", Leads(1000, 250, 0.007m), [new StockReel("coil", new Metres(4)), new StockReel("ring", new Metres(5.5m), 100)], options, "");
        table.Write("cutting.md");
        return 0;
    }

    private static CutPiece[] Leads(int count, int lengths, decimal step) =>
        [.. Enumerable.Range(0, count).Select(place => new CutPiece($"lead-{place}", new Metres(0.3m + (place * 7919 % lengths * step))))];

    private static void Add(ResultTable table, string name, CutPiece[] pieces, StockReel[] reels, CuttingOptions options, string published)
    {
        var (naive, naiveTime) = Best(() => FirstFitCutting.InOrder(pieces, reels, options));
        var decreasing = FirstFitCutting.Decreasing(pieces, reels, options);
        var (planned, time) = Best(() => CuttingPlanner.Plan(pieces, reels, options));
        table.Add(
            name, $"{pieces.Length}", $"{naive.Reels.Count}", $"{decreasing.Reels.Count}", $"{planned.Reels.Count}", published,
            $"{naive.Wasted.Value:0.00}", $"{decreasing.Wasted.Value:0.00}", $"{planned.Wasted.Value:0.00}", $"{planned.WastedBound?.Value:0.00}",
            planned.Status == CuttingStatus.Optimal ? "all" : planned.IsWasteProven ? "yes" : "no", $"{naiveTime:0.0}", $"{time:N0}");
        Console.Error.WriteLine($"{name}: {time:N0} ms");
    }

    private static (T Result, double Milliseconds) Best<T>(Func<T> run) => Enumerable.Range(0, Rounds).Select(_ =>
    {
        var clock = Stopwatch.StartNew();
        var result = run();
        return (Result: result, clock.Elapsed.TotalMilliseconds);
    }).MinBy(static one => one.TotalMilliseconds);
}
