namespace Loadmark.Fuzz;

/// <summary>What fuzzers counted, a line a harness.</summary>
internal static class FuzzingTable
{
    private static readonly string File = Path.Combine("bench", "results", "fuzzing.md");

    private static readonly string[] Head =
    [
        "# Fuzzing by coverage",
        "",
        "Each door of the program by itself, its assemblies instrumented by SharpFuzz and driven by AFL++ (`bench/fuzz HARNESS SECONDS`). Coverage: the places of the map of edges that were reached, of 65,536; found: inputs that reached something new. A fault is an exception that nobody catches, an answer of 5xx, or something that a harness says must hold and does not; a hang is an input that takes over five seconds.",
        "",
        "| harness | hours | inputs tried | a second | begun with | found | coverage | faults | hangs |",
        "| --- | --- | --- | --- | --- | --- | --- | --- | --- |",
    ];

    /// <summary>Puts the figures of one harness into the table, in place of those that it had.</summary>
    /// <param name="name">The harness.</param>
    /// <param name="stats">The lines of the fuzzer's own file of statistics.</param>
    public static void Renew(string name, string[] stats)
    {
        var figures = stats.Select(static line => line.Split(':', 2)).Where(static parts => parts.Length == 2)
            .ToDictionary(static parts => parts[0].Trim(), static parts => parts[1].Trim(), StringComparer.Ordinal);
        var seconds = long.Parse(figures["run_time"]);
        var line = $"| {name} | {seconds / 3600.0:0.00} | {long.Parse(figures["execs_done"]):N0} | {figures["execs_per_sec"]} | {long.Parse(figures["corpus_count"]) - long.Parse(figures["corpus_found"])} | {figures["corpus_found"]} | {figures["edges_found"]} ({figures["bitmap_cvg"]}) | {figures["saved_crashes"]} | {figures["saved_hangs"]} |";
        var rows = System.IO.File.Exists(File) ? System.IO.File.ReadAllLines(File).Skip(Head.Length).ToList() : [];
        rows.RemoveAll(row => row.StartsWith($"| {name} |", StringComparison.Ordinal));
        rows.Add(line);
        System.IO.File.WriteAllText(File, string.Join('\n', [.. Head, .. rows.Order(StringComparer.Ordinal), ""]));
        Console.WriteLine(line);
    }
}
