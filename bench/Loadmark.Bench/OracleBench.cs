using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Bench;

/// <summary>Holds plans of thousands of small random rigs against the best of all their wirings, judged by the rules alone.</summary>
internal static class OracleBench
{
    private const int MostLoads = 5;
    private const int MostOutlets = 4;
    private const int MostFaultsTold = 5;

    /// <summary>Seeds beyond those that the tests take.</summary>
    private const int FirstSeed = 20_001;

    /// <summary>Plans so many rigs; 1 where a plan is at fault.</summary>
    public static int Run(int rigs)
    {
        var runs = Enumerable.Range(FirstSeed, rigs).AsParallel().AsOrdered().Select(static seed => OracleRun.Of(seed, MostLoads, MostOutlets, CancellationToken.None)).ToList();
        var faults = runs.Select(static run => run.Fault).OfType<string>().ToList();
        var table = new ResultTable(
            "Plans against all wirings",
            $"{rigs:N0} seeded rigs of up to {MostLoads} loads and {MostOutlets} outlets, with every kind of label and lead that the readers know; of each the plan is held against every wiring there is, "
            + $"judged by the rules alone: {runs.Sum(static run => (long)run.Tried):N0} wirings. At fault is a plan with another level than the best wiring, one that is not proven, and one that calls impossible what is not; "
            + $"so is a wrong answer to whether every load can be fed. {ResultTable.Machine}",
            "rigs", "count", "fed wholly", "proven that not all can be fed", "fed from what may not suit", "at fault");
        Add("all", runs);
        foreach (var trait in runs.SelectMany(static run => run.Traits).CountBy(static trait => trait).OrderByDescending(static trait => trait.Value))
            Add($"with {trait.Key}", runs.FindAll(run => run.Traits.Contains(trait.Key)));
        foreach (var kind in runs.SelectMany(static run => run.Feeds.Distinct()).CountBy(static kind => kind).OrderByDescending(static kind => kind.Value).Where(static kind => kind.Key is not ("None" or "plain")))
            Add($"planned with a feed: {kind.Key}", runs.FindAll(run => run.Feeds.Contains(kind.Key)));
        table.Write("oracle.md");
        foreach (var fault in faults.Take(MostFaultsTold))
            Console.Error.WriteLine(fault);
        return faults.Count == 0 ? 0 : 1;

        void Add(string name, List<OracleRun> some) => table.Add(
            name,
            $"{some.Count}",
            $"{some.Count(static run => run.IsWhole)}",
            $"{some.Count(static run => !run.IsWhole)}",
            $"{some.Count(static run => run.Plan.Objective[3].Value > 0)}",
            $"{some.Count(static run => run.Fault is not null)}");
    }
}
