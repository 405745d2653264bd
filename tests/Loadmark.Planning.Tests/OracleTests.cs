using Loadmark.Core.Ratings;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>Plans of small random rigs are as good, level by level, as the best of all wirings, which are tried one by one.</summary>
public sealed class OracleTests(ITestOutputHelper output)
{
    private const int Rigs = 2000;
    private const int MostLoads = 7;
    private const int MostOutlets = 5;

    [Fact]
    public void Plans_are_as_good_as_the_best_of_all_wirings()
    {
        var cancellation = TestContext.Current.CancellationToken;
        var runs = Enumerable.Range(1, Rigs).AsParallel().AsOrdered().WithCancellation(cancellation).Select(seed => Try(seed, cancellation)).ToList();

        output.WriteLine(
            $"{Rigs} rigs, {runs.Count(run => run.Loads == MostLoads && run.Outlets == MostOutlets)} of them of {MostLoads} loads and {MostOutlets} outlets, {runs.Sum(run => (long)run.Tried)} wirings judged; "
            + $"{runs.Count(run => run.IsWhole)} in which every load can be fed, {runs.Count(run => run.Varies)} with loads whose draw follows the voltage");
        output.WriteLine("feeds planned: " + string.Join(", ", runs.SelectMany(run => run.Feeds).CountBy(kind => kind).Select(kind => $"{kind.Key} {kind.Value}")));
        Assert.Empty(runs.Select(run => run.Fault).OfType<string>());
        Assert.InRange(runs.Count(run => run.IsWhole), Rigs / 10, Rigs * 9 / 10);
        Assert.InRange(runs.Count(run => run.Varies), 1, Rigs / 2);
        Assert.True(runs.Count(run => run.Loads == MostLoads && run.Outlets == MostOutlets) > Rigs / 50);
    }

    /// <summary>What the oracle leaves out makes no difference: it finds what looking at every wiring finds.</summary>
    [Fact]
    public void Every_wiring_of_smaller_rigs_has_the_same_best()
    {
        const int rigs = 300;
        var (all, few) = (0L, 0L);
        for (var seed = 1; seed <= rigs; seed++)
        {
            var text = new RandomRig(seed, mostLoads: 4).Write();
            var rig = Tests.Rigs.Read(text);
            var every = new BruteForce(rig, leavesOut: false).Run();
            var best = new BruteForce(rig).Run();
            (all, few) = (all + every.Tried, few + best.Tried);
            Assert.True(every.Best!.SequenceEqual(best.Best!), $"seed {seed}: {string.Join(' ', best.Best!)} instead of {string.Join(' ', every.Best!)}\n{text}");
        }

        output.WriteLine($"{rigs} rigs: {all} wirings judged, and {few} where what cannot be better is left out");
        Assert.True(few < all);
    }

    private static Run Try(int seed, CancellationToken cancellation)
    {
        var text = new RandomRig(seed, MostLoads, MostOutlets).Write();
        var rig = Tests.Rigs.Read(text);
        if (seed % 4 == 0 && new BruteForce(rig).AnyFeed(seed * 7) is { } feed)
            rig = rig with { Wired = [feed with { Pinned = true }] };
        HashSet<string>? only = seed % 6 == 0 ? ["S1", "S3"] : null;
        var best = new BruteForce(rig, only).Run();
        var plan = RigPlanner.Plan(rig, new PlanOptions { Only = only }, cancellation);
        var feeds = plan.Rig.Wired!.Value;
        var kinds = feeds.Items.SelectMany(planned => new[] { $"{planned.Joined}", rig.Leads.Items.FirstOrDefault(lead => lead.Id == planned.Lead)?.Type.ToString() ?? "plain" });
        return new Run(
            rig.Loads.Count, WiredRig.Of(rig).Outlets.Count, best.Tried, plan.Unfed.Count == 0,
            WiredRig.Of(rig).Loads.Items.Any(static load => load.Rating.DrawVaries), [.. kinds], FaultOf(plan, best) is { } fault ? $"seed {seed}: {fault}\n{text}" : null);
    }

    private static string? FaultOf(PlanResult plan, BruteForce best)
    {
        var measured = plan.Objective.Items.Select(static level => Math.Round(level.Value, 5)).ToArray();
        if (!measured.SequenceEqual(best.Best!) || !Levels.Of(plan.Rig).SequenceEqual(best.Best!))
            return $"plan:   {string.Join(' ', measured)}\n{string.Join('\n', plan.Rig.Wired!.Value)}\noracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}";
        if (plan.Objective.Items.FirstOrDefault(static level => !level.IsProven) is { } open)
            return $"not proven: {open}";
        if (plan.Status != (plan.Unfed.Count == 0 ? PlanStatus.Optimal : PlanStatus.Infeasible))
            return $"{plan.Status}, {plan.Unfed.Count} not fed";
        PlanAssert.IsSafe(plan);
        return null;
    }

    private sealed record Run(int Loads, int Outlets, int Tried, bool IsWhole, bool Varies, IReadOnlyList<string> Feeds, string? Fault);
}
