using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Planning;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Typical;

namespace Loadmark.Bench;

/// <summary>Counts the verdicts of ordinary boards and of the examples, as wired and as planned.</summary>
internal static class VerdictsBench
{
    private const int Boards = 2_000;
    private const int PlannedBoards = 100;

    /// <summary>Writes the table; 1 where an ordinary board is worse than a note.</summary>
    public static int Run()
    {
        var severities = Enum.GetValues<Severity>().OrderDescending().ToList();
        var table = new ResultTable(
            "Verdicts",
            $"Ordinary boards: 5 to 12 pedals with usual labels, each on an outlet of its own of one isolated supply, over straight leads (`TypicalBoard`). The examples are those of `examples/`. {ResultTable.Machine}",
            ["rigs", "count", .. severities.Select(static severity => severity.ToString().ToLowerInvariant())]);
        var boards = Enumerable.Range(1, Boards).Select(static seed => Read(new TypicalBoard(seed).Write())).ToList();
        var verdicts = boards.ConvertAll(static rig => NameplateCheck.Of(rig).Verdict);
        Add("ordinary boards, as wired", verdicts);
        Add("ordinary boards, as planned", boards.Take(PlannedBoards).Select(static rig => RigPlanner.Plan(rig with { Wired = null }, new PlanOptions(), CancellationToken.None).Check.Verdict).ToList());
        var examples = Directory.GetFiles("examples", "*.rig.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();
        var wired = examples.Select(static path => (Path: path, RigFileReader.ReadFileWithText(path).Reading.Rig)).Where(static one => one.Rig is { Wired: not null }).ToList();
        Add("examples that are wired", wired.ConvertAll(static one => NameplateCheck.Of(one.Rig!).Verdict));
        foreach (var (path, rig) in wired)
            Add($"`{Path.GetFileName(path)}`", [NameplateCheck.Of(rig!).Verdict]);
        table.Write("verdicts.md");
        return verdicts.TrueForAll(static verdict => verdict <= Severity.Note) ? 0 : 1;

        void Add(string name, List<Severity> some) =>
            table.Add([name, $"{some.Count}", .. severities.Select(severity => $"{some.Count(verdict => verdict == severity)}")]);
    }

    private static Rig Read(string text)
    {
        var reading = RigFileReader.Read(text, "board");
        return reading.Rig ?? throw new InvalidOperationException(string.Join('\n', reading.Errors) + "\n" + text);
    }
}
