namespace Loadmark.Bench;

/// <summary>
/// Times whole processes: <c>loadmark check</c> on the pit rig beside an empty console program, both published the same
/// way, run in turn so that a drift of the machine hits both alike; and one call on a thousand rig files.
/// </summary>
internal static class StartupBench
{
    private const int Runs = 31;

    public static int Run()
    {
        var programs = PublishedPrograms.Publish();
        var (loadmark, empty) = (programs.Loadmark, programs.Empty);

        var cases = new (string Name, string Program, string[] Arguments)[]
        {
            ("empty console program", empty, []),
            ("loadmark check pit.rig.yaml", loadmark, ["check", "examples/pit.rig.yaml"]),
            ("loadmark check --json pit.rig.yaml", loadmark, ["check", "--json", "examples/pit.rig.yaml"]),
            ("loadmark check festival.rig.yaml (40 loads)", loadmark, ["check", "examples/festival.rig.yaml"]),
            ("loadmark read", loadmark, ["read", "9V DC 300mA centre negative"]),
        };

        var times = PublishedPrograms.InTurn(Runs, [.. cases.Select(static one => (one.Program, one.Arguments))]);
        var table = new ResultTable(
            "Start-up",
            $"Whole processes, published ReadyToRun, in turn, {Runs} runs each after two to warm up. {ResultTable.Machine}",
            "command", "median ms", "fastest ms", "ratio of medians to empty");
        var reference = PublishedPrograms.Median(times[0]);
        for (var index = 0; index < cases.Length; index++)
            table.Add(cases[index].Name, $"{PublishedPrograms.Median(times[index]):F0}", $"{times[index].Min():F0}", $"{PublishedPrograms.Median(times[index]) / reference:F2}");

        var (many, files) = TimeManyFiles(loadmark);
        table.Add($"loadmark check on {files} rig files", $"{many:F0}", $"{many:F0}", $"{many / reference:F1}");
        table.Write("startup.md");
        return 0;
    }

    private static (double Milliseconds, int Files) TimeManyFiles(string loadmark)
    {
        const int files = 1000;
        var folder = Directory.CreateTempSubdirectory("loadmark-bench-").FullName;
        try
        {
            var sources = Directory.GetFiles("examples", "*.rig.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText).ToArray();
            for (var index = 0; index < files; index++)
                File.WriteAllText(Path.Combine(folder, $"{index:D4}.rig.yaml"), sources[index % sources.Length]);

            string[] arguments = ["check", .. Directory.GetFiles(folder).Order(StringComparer.Ordinal)];
            var times = Enumerable.Range(0, 5).Select(_ => PublishedPrograms.Time(loadmark, arguments)).ToList();
            return (PublishedPrograms.Median(times), files);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
