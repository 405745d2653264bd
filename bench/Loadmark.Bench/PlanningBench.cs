using System.Diagnostics;
using Loadmark.Files;
using Loadmark.Planning;
using Loadmark.Planning.Tests.Oracle.Fleet;

namespace Loadmark.Bench;

/// <summary>Plans seeded fleet rigs of growing size; every second one is short of something.</summary>
internal static class PlanningBench
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(10);

    /// <summary>Plans the rigs and writes the table.</summary>
    /// <param name="options">What to run.</param>
    public static int Run(PlanningBenchOptions options)
    {
        WarmUp();
        var table = new ResultTable(
            "Planning",
            $"Seeded rigs of a fleet, every second one short of something. Time limit {Limit.TotalSeconds:0} s a rig, after warm-up. {ResultTable.Machine}",
            "loads", "rigs", "fed wholly", "all levels proven", "median ms", "95 % ms", "first level not proven");
        foreach (var size in options.Sizes)
        {
            var runs = new List<PlanningRun>();
            for (var seed = 1; seed <= options.SeedsFor(size); seed++)
                runs.Add(PlanOne(seed, size));
            var open = runs.Select(run => run.Open).OfType<string>().CountBy(name => name).OrderByDescending(pair => pair.Value)
                .Select(pair => $"{pair.Key} {pair.Value}");
            table.Add(
                $"{size}", $"{runs.Count}", $"{runs.Count(run => run.Plan.Unfed.Count == 0)}", $"{runs.Count(run => run.Open is null)}",
                $"{Quantile(runs, 0.5):0}", $"{Quantile(runs, 0.95):0}", string.Join(", ", open));
        }

        table.Write("planning.md");
        return 0;
    }

    /// <summary>The rig of a seed and a size: the odd seeds are whole, the even ones short.</summary>
    private static PlanningRun PlanOne(int seed, int size)
    {
        var rig = RigFileReader.Read(new FleetRig(seed, size, seed % 2 == 0).ToString(), "fleet").Rig!;
        var clock = Stopwatch.StartNew();
        var plan = RigPlanner.Plan(rig, new PlanOptions { TimeLimit = Limit });
        var run = new PlanningRun(plan, clock.Elapsed.TotalMilliseconds);
        Console.Error.WriteLine($"{size,4} loads, seed {seed,2}: {run.Milliseconds,6:0} ms, {plan.Status}, {plan.Unfed.Count} not fed{(run.Open is { } open ? $", not proven: {open}" : "")}");
        return run;
    }

    private static void WarmUp()
    {
        for (var seed = 1; seed <= 4; seed++)
            RigPlanner.Plan(RigFileReader.Read(new FleetRig(100 + seed, 8, isShort: false).ToString(), "fleet").Rig!, new PlanOptions { TimeLimit = TimeSpan.FromSeconds(2) });
    }

    private static double Quantile(List<PlanningRun> runs, double share) =>
        runs.Select(run => run.Milliseconds).Order().ElementAt(Math.Min(runs.Count - 1, (int)Math.Ceiling(share * runs.Count) - 1));
}
