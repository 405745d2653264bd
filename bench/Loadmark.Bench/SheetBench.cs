namespace Loadmark.Bench;

/// <summary>Times the writing of sheets as whole processes beside an empty program, and says how large they are.</summary>
internal static class SheetBench
{
    private const int Runs = 15;

    public static int Run()
    {
        var programs = PublishedPrograms.Publish();
        var folder = Directory.CreateTempSubdirectory("loadmark-bench-").FullName;
        try
        {
            var cases = new List<(string Name, string Program, string[] Arguments, string? File)>
            {
                ("empty console program", programs.Empty, [], null),
                ("loadmark check pit.rig.yaml", programs.Loadmark, ["check", "examples/pit.rig.yaml"], null),
                ("loadmark accept pit.rig.yaml", programs.Loadmark, ["accept", "examples/pit.rig.yaml"], null),
                (
                    "loadmark accept pit.rig.yaml --readings pit.readings.csv",
                    programs.Loadmark,
                    ["accept", "examples/pit.rig.yaml", "--readings", "examples/pit.readings.csv"],
                    null),
            };
            foreach (var (rig, kind) in ((string, string)[])[("pit", "pdf"), ("festival", "pdf"), ("pit", "svg"), ("pit", "png"), ("festival", "png")])
            {
                var file = Path.Combine(folder, $"{rig}.{kind}");
                cases.Add(($"loadmark sheet {rig}.rig.yaml --out {rig}.{kind}", programs.Loadmark, ["sheet", $"examples/{rig}.rig.yaml", "--out", file, "--force"], file));
            }

            // What restores a rig is one of the sheets that the runs before have written.
            cases.Add(("loadmark restore-sheet pit.pdf", programs.Loadmark, ["restore-sheet", Path.Combine(folder, "pit.pdf")], null));
            cases.Add(("loadmark restore-sheet festival.pdf", programs.Loadmark, ["restore-sheet", Path.Combine(folder, "festival.pdf")], null));
            var times = PublishedPrograms.InTurn(Runs, [.. cases.Select(static one => (one.Program, one.Arguments))]);
            var table = new ResultTable(
                "Sheets",
                $"Whole processes, published ReadyToRun, in turn, {Runs} runs each after two to warm up; the festival rig has forty loads. {ResultTable.Machine}",
                "command", "median ms", "fastest ms", "ratio of medians to empty", "kB");
            for (var index = 0; index < cases.Count; index++)
                table.Add(
                    cases[index].Name,
                    $"{PublishedPrograms.Median(times[index]):F0}",
                    $"{times[index].Min():F0}",
                    $"{PublishedPrograms.Median(times[index]) / PublishedPrograms.Median(times[0]):F2}",
                    cases[index].File is { } written ? $"{new FileInfo(written).Length / 1000.0:F0}" : "");
            table.Write("sheet.md");
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
