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
        var (oneFed, twoFed) = (Fed(rigs / 5, 1), Fed(rigs / 10, 2));
        var faults = runs.Concat(oneFed).Concat(twoFed).Select(static run => run.Fault).OfType<string>().ToList();
        var table = new ResultTable(
            "Plans against all wirings",
            $"{rigs:N0} seeded rigs of up to {MostLoads} loads and {MostOutlets} outlets, with every kind of label and lead that the readers know; of each the plan is held against every wiring there is, "
            + $"judged by the rules alone: {runs.Sum(static run => (long)run.Tried):N0} wirings. At fault is a plan with another level than the best wiring, one that is not proven, and one that calls impossible what is not; "
            + "so is a wrong answer to whether every load can be fed. On top come rigs with one or two supplies that are fed by others, of up to 4 loads: there a plan may leave "
            + $"open whether it is the best, and then its bounds must hold; {oneFed.Concat(twoFed).Count(static run => !run.IsProven)} of them do so. {ResultTable.Machine}",
            "rigs", "count", "fed wholly", "proven that not all can be fed", "fed from what may not suit", "at fault");
        Add("all", runs);
        foreach (var trait in runs.SelectMany(static run => run.Traits).CountBy(static trait => trait).OrderByDescending(static trait => trait.Value))
            Add($"with {trait.Key}", runs.FindAll(run => run.Traits.Contains(trait.Key)));
        foreach (var kind in runs.SelectMany(static run => run.Feeds.Distinct()).CountBy(static kind => kind).OrderByDescending(static kind => kind.Value).Where(static kind => kind.Key is not ("None" or "plain")))
            Add($"planned with a feed: {kind.Key}", runs.FindAll(run => run.Feeds.Contains(kind.Key)));
        foreach (var (name, some) in new[] { ("one supply that is fed by others", oneFed), ("two such supplies", twoFed) })
        {
            Add($"on top, with {name}", some);
            Add("of these, planned to be fed", some.FindAll(static run => run.Hubs > 0));
        }

        table.Write("oracle.md");
        foreach (var fault in faults.Take(MostFaultsTold))
            Console.Error.WriteLine(fault);
        return faults.Count == 0 ? 0 : 1;

        static List<OracleRun> Fed(int rigs, int hubs) =>
            [.. Enumerable.Range(FirstSeed, rigs).AsParallel().AsOrdered().Select(seed => OracleRun.Of(seed, 4, 5 - hubs, CancellationToken.None, hubs))];

        void Add(string name, List<OracleRun> some) => table.Add(
            name,
            $"{some.Count}",
            $"{some.Count(static run => run.IsWhole)}",
            $"{some.Count(static run => !run.IsWhole)}",
            $"{some.Count(static run => run.Plan.Objective[3].Value > 0)}",
            $"{some.Count(static run => run.Fault is not null)}");
    }
}
