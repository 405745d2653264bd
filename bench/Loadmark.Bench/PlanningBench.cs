using System.Diagnostics;
using Loadmark.Files;
using Loadmark.Planning;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;
using Loadmark.Planning.Tests.Oracle.Fleet;
using Loadmark.Planning.Tests.Oracle.Naive;

namespace Loadmark.Bench;

/// <summary>Plans seeded fleet rigs of growing size; every second one is short of something.</summary>
internal static class PlanningBench
{
    private const int MostForNaive = 60;
    private const int LargeForNaive = 200;
    private const int LargeSeedsForNaive = 2;
    private const int MostForFirstFit = 100;

    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(10);

    /// <summary>Plans the rigs and writes the table.</summary>
    /// <param name="options">What to run.</param>
    public static int Run(PlanningBenchOptions options)
    {
        WarmUp();
        var table = new ResultTable(
            "Planning",
            $"Seeded rigs of a fleet, every second one short of something. Time limit {Limit.TotalSeconds:0} s a rig, after warm-up. The naive model is a plain matrix "
            + $"of yes-or-no, tests/Loadmark.Planning.Tests/Oracle/Naive, with the same solver and limit, on rigs of up to {MostForNaive} loads and on {LargeSeedsForNaive} of {LargeForNaive}; first fit takes the largest draw first, up to {MostForFirstFit}. {ResultTable.Machine}",
            "loads", "rigs", "fed wholly", "fed wholly or proven impossible", "all levels proven", "median ms", "95 % ms", "first level not proven",
            "naive: all proven", "naive median ms", "naive 95 % ms", "plan better / equal / worse than naive", "first fit leaves loads dark that have a plan", "first fit worse");
        foreach (var size in options.Sizes)
        {
            var runs = new List<PlanningRun>();
            for (var seed = 1; seed <= options.SeedsFor(size); seed++)
                runs.Add(PlanOne(seed, size, options.Alone));
            var open = runs.Select(run => run.Open).OfType<string>().CountBy(name => name).OrderByDescending(pair => pair.Value)
                .Select(pair => $"{pair.Key} {pair.Value}");
            var naive = runs.FindAll(run => run.Naive is not null);
            var hasFirstFit = size <= MostForFirstFit && !options.Alone;
            table.Add(
                $"{size}", $"{runs.Count}", $"{runs.Count(run => run.IsWhole)}", $"{runs.Count(run => run.Plan.Objective[0].IsProven)}", $"{runs.Count(run => run.Open is null)}",
                $"{Quantile(runs, 0.5, run => run.Milliseconds):0}", $"{Quantile(runs, 0.95, run => run.Milliseconds):0}", string.Join(", ", open),
                naive.Count > 0 ? $"{naive.Count(run => run.Naive!.Proven == run.Plan.Objective.Count)} of {naive.Count}" : "-",
                naive.Count > 0 ? $"{Quantile(naive, 0.5, run => run.NaiveMilliseconds):0}" : "-",
                naive.Count > 0 ? $"{Quantile(naive, 0.95, run => run.NaiveMilliseconds):0}" : "-",
                naive.Count > 0 ? $"{naive.Count(run => run.AgainstNaive < 0)} / {naive.Count(run => run.AgainstNaive == 0)} / {naive.Count(run => run.AgainstNaive > 0)}" : "-",
                hasFirstFit ? $"{runs.Count(run => run.IsWhole && run.FirstFit![0] > 0)} of {runs.Count(run => run.IsWhole)}" : "-",
                hasFirstFit ? $"{runs.Count(run => run.FirstFitWorseIn is not null)}" : "-");
            table.Write(options.Alone ? null : "planning.md");
        }

        return 0;
    }

    /// <summary>The rig of a seed and a size: the odd seeds are whole, the even ones short.</summary>
    private static PlanningRun PlanOne(int seed, int size, bool alone)
    {
        var rig = RigFileReader.Read(new FleetRig(seed, size, seed % 2 == 0).ToString(), "fleet").Rig!;
        var clock = Stopwatch.StartNew();
        var plan = RigPlanner.Plan(rig, new PlanOptions { TimeLimit = Limit });
        var planned = clock.Elapsed.TotalMilliseconds;
        clock.Restart();
        var isForNaive = !alone && (size <= MostForNaive || (size == LargeForNaive && seed <= LargeSeedsForNaive));
        var naive = isForNaive ? new NaiveModel(rig).Solve(Limit) : null;
        var solved = clock.Elapsed.TotalMilliseconds;
        var run = new PlanningRun(plan, planned, naive, solved, size <= MostForFirstFit && !alone ? Levels.Of(FirstFit.Wire(rig)) : null);
        Console.Error.WriteLine($"{size,4} loads, seed {seed,2}: {run.Milliseconds,6:0} ms, {plan.Status}, {plan.Unfed.Count} not fed{(run.Open is { } open ? $", not proven: {open}" : "")}");
        return run;
    }

    private static void WarmUp()
    {
        // Code that runs often is compiled a second time, and better, only after it has run for a while.
        for (var seed = 1; seed <= 120; seed++)
            RigPlanner.Plan(RigFileReader.Read(new FleetRig(100 + seed, 20, isShort: seed % 2 == 0).ToString(), "fleet").Rig!, new PlanOptions { TimeLimit = TimeSpan.FromSeconds(2) });
    }

    private static double Quantile(List<PlanningRun> runs, double share, Func<PlanningRun, double> time) =>
        runs.Select(time).Order().ElementAt(Math.Min(runs.Count - 1, (int)Math.Ceiling(share * runs.Count) - 1));
}
