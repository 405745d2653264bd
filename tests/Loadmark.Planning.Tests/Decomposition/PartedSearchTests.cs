using System.Diagnostics;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;
using Loadmark.Planning.Decomposition;
using Loadmark.Planning.Tests.Oracle;
using Loadmark.Planning.Tests.Oracle.Fleet;

namespace Loadmark.Planning.Tests.Decomposition;

/// <summary>Rigs that fall into parts are planned part by part, and the whole is as good and as much proven as in one piece.</summary>
public sealed class PartedSearchTests(ITestOutputHelper output)
{
    private const int Rigs = 400;

    [Fact]
    public void Parts_together_are_as_good_as_the_best_of_all_wirings()
    {
        var cancellation = TestContext.Current.CancellationToken;
        var runs = Enumerable.Range(1, Rigs).AsParallel().AsOrdered().WithCancellation(cancellation).Select(seed => Try(seed, cancellation)).ToList();

        output.WriteLine($"{Rigs} rigs, parts: " + string.Join(", ", runs.CountBy(static run => run.Parts).OrderBy(static pair => pair.Key).Select(static pair => $"{pair.Key} in {pair.Value}")));
        output.WriteLine($"{runs.Count(static run => run.IsWhole)} in which every load can be fed, {runs.Count(static run => run is { Parts: > 1, HasLeads: true })} with leads and several parts, {runs.Count(static run => run is { Parts: > 1, HasPinned: true })} with a pinned feed and several parts");
        var faults = runs.Select(static run => run.Fault).OfType<string>().ToList();
        Assert.True(faults.Count == 0, string.Join("\n\n", faults.Take(5)));
        Assert.InRange(runs.Count(static run => run.Parts > 1), Rigs / 4, Rigs - 1);
        Assert.True(runs.Count(static run => run is { Parts: > 1, HasLeads: true }) > Rigs / 20);
        Assert.True(runs.Count(static run => run is { Parts: > 1, HasPinned: true }) > Rigs / 40);
    }

    /// <summary>Rigs of parts too large for the oracle: every level that both prove is equal, and no bound is above what the other has.</summary>
    [Fact]
    public void Parts_together_are_as_good_as_the_rig_in_one_piece()
    {
        var (split, equal) = (0, 0);
        for (var seed = 1; seed <= 12; seed++)
        {
            var rig = PartedRig.Of([.. Enumerable.Range(0, 3).Select(part => Tests.Rigs.Read(new FleetRig((seed * 3) + part, 6, part == 1, hasChains: seed % 2 == 0).ToString()))], byPolarity: false);
            split += new RigSplitter(new PlanProblemBuilder(rig).Build(null)).Split().Length > 1 ? 1 : 0;
            var options = new PlanOptions { TimeLimit = TimeSpan.FromSeconds(10) };
            var plan = new PartedSearch(rig, options, TimeProvider.System, TestContext.Current.CancellationToken).Best();
            var whole = InOnePiece(rig, options).Best();
            equal += Compare(seed, plan, whole);
        }

        output.WriteLine($"{split} of 12 rigs of 18 loads split; {equal} levels equal and proven by both");
        Assert.True(split >= 6);
        Assert.True(equal > 0);
    }

    /// <summary>A rig of many parts is proven though no search in one piece gets through it; what that does in the same time is told, not held against it.</summary>
    [Fact]
    public void A_large_rig_of_easy_parts_is_proven()
    {
        // Chains enough for all, so that nobody vies for them.
        var chains = Enumerable.Range(2, 4).Select(static plugs => new Lead { Id = $"chain of {plugs}", Type = LeadType.DaisyChain, Plugs = plugs, Count = 99 }).ToList();
        var parts = Enumerable.Range(1, 6).Select(part => Tests.Rigs.Read(new FleetRig(part, 14, isShort: false).ToString()) with { Leads = part == 1 ? [.. chains] : [] }).ToList();
        var rig = PartedRig.Of(parts, byPolarity: false);
        var clock = Stopwatch.StartNew();
        var plan = RigPlanner.Plan(rig, new PlanOptions { TimeLimit = TimeSpan.FromMinutes(2) }, TestContext.Current.CancellationToken);
        var taken = clock.Elapsed;
        clock.Restart();
        var whole = InOnePiece(rig, new PlanOptions { TimeLimit = TimeSpan.FromSeconds(5) }).Best();
        output.WriteLine($"{rig.Loads.Count} loads: in parts {taken.TotalSeconds:0.00} s, in one piece {clock.Elapsed.TotalSeconds:0.00} s, {(whole.IsProven ? "proven" : "not proven")}");
        output.WriteLine(string.Join(' ', plan.Objective.Items.Select(static level => level.Value)) + " / " + string.Join(' ', whole.Levels));
        Assert.All(plan.Objective.Items, static level => Assert.True(level.IsProven, $"{level}"));
        Assert.True(Levels.Compare(Levels.Of(plan.Rig), [.. Told(whole)]) <= 0);
        PlanAssert.IsSafe(plan);
    }

    [Fact]
    public void Whether_all_can_be_fed_is_asked_of_every_part()
    {
        const string loads = "rig: Two\nloads:\n  A: { label: 9 V DC 100 mA }\n  B: { label: 18 V DC 100 mA }\n";
        const string two = "supplies:\n  S1: { outlets: { 1: 9 V DC 100 mA } }\n  S2: { outlets: { 1: 18 V DC 100 mA } }\n";
        const string small = "supplies:\n  S1: { outlets: { 1: 9 V DC 100 mA } }\n  S2: { outlets: { 1: 18 V DC 50 mA } }\n";
        const string third = "  C: { label: 9 V DC 100 mA }\n";
        Assert.True(CanFeedAll(loads + two));
        Assert.False(CanFeedAll(loads + small));
        Assert.False(CanFeedAll(loads + third + two));
        Assert.False(CanFeedAll(loads + "  C: { label: 12 V AC 100 mA }\n" + two));

        static bool? CanFeedAll(string text) => RigPlanner.CanFeedAll(Tests.Rigs.Read(text), new PlanOptions(), TestContext.Current.CancellationToken);
    }

    [Fact]
    public void Of_a_plan_that_is_stopped_no_more_is_claimed_than_is_proven()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var rig = PartedRig.Of([.. Enumerable.Range(1, 3).Select(static part => Tests.Rigs.Read(new FleetRig(part, 12, isShort: false, hasChains: false).ToString()) with { Leads = [] })], byPolarity: false);
        Assert.True(new RigSplitter(new PlanProblemBuilder(rig).Build(null)).Split().Length > 1);
        var stopped = RigPlanner.Plan(rig, new PlanOptions(), cancelled.Token);
        var best = RigPlanner.Plan(rig, new PlanOptions(), TestContext.Current.CancellationToken);
        PlanAssert.IsSafe(stopped);
        Assert.True(stopped.Status is PlanStatus.Feasible or PlanStatus.Unknown, $"{stopped.Status}");
        Assert.True(stopped.Objective[0].Bound <= best.Objective[0].Value);
        Assert.Contains(stopped.Objective.Items, static level => !level.IsProven);
    }

    private static int Compare(int seed, Candidate plan, Candidate whole)
    {
        var equal = 0;
        for (; equal < plan.Gaps.Length; equal++)
        {
            var (one, other) = (plan.Units()[equal], whole.Units()[equal]);
            var level = $"seed {seed}, {(Level)equal}";
            Assert.True(plan.Gaps[equal] is not { } gap || one - gap <= other, $"{level}: the parts prove more than {other}");
            Assert.True(whole.Gaps[equal] is not { } left || other - left <= one, $"{level}: the parts have {one}, less than is proven");
            if (plan.Gaps[equal] != 0 || whole.Gaps[equal] != 0)
                break;
            Assert.True(one == other, $"{level}: {one} in parts, {other} in one piece");
        }

        return equal;
    }

    private static Run Try(int seed, CancellationToken cancellation)
    {
        var count = seed % 3 == 0 ? 3 : 2;
        var rig = PartedRig.Of([.. Enumerable.Range(0, count).Select(part => Tests.Rigs.Read(new RandomRig((seed * 5) + part, count == 3 ? 2 : 3, 2).Write()))], byPolarity: seed % 4 == 1);
        if (seed % 5 == 0 && new BruteForce(rig).AnyFeed(seed * 7) is { } feed)
            rig = rig with { Wired = [feed with { Pinned = true }] };
        var parts = new RigSplitter(new PlanProblemBuilder(rig).Build(null)).Split().Length;
        var best = new BruteForce(rig).Run();
        var plan = RigPlanner.Plan(rig, new PlanOptions(), cancellation);
        var whole = InOnePiece(rig, new PlanOptions()).Best();
        return new Run(parts, plan.Unfed.Count == 0, rig.Leads.Count > 0, rig.Wired is not null, FaultOf(plan, whole, best) is { } fault ? $"seed {seed}, {parts} parts: {fault}" : null);
    }

    private static string? FaultOf(PlanResult plan, Candidate whole, BruteForce best)
    {
        var measured = plan.Objective.Items.Select(static level => Math.Round(level.Value, 5)).ToArray();
        if (!measured.SequenceEqual(best.Best!) || !Levels.Of(plan.Rig).SequenceEqual(best.Best!))
            return $"plan:   {string.Join(' ', measured)}\n{string.Join('\n', plan.Rig.Wired!.Value)}\noracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}";
        if (plan.Objective.Items.FirstOrDefault(static level => !level.IsProven) is { } open)
            return $"not proven: {open}";
        if (!whole.IsProven || !Told(whole).SequenceEqual(measured))
            return $"in one piece {string.Join(' ', whole.Levels)}, in parts {string.Join(' ', measured)}";
        if (plan.Status != (plan.Unfed.Count == 0 ? PlanStatus.Optimal : PlanStatus.Infeasible))
            return $"{plan.Status}, {plan.Unfed.Count} not fed";
        PlanAssert.IsSafe(plan);
        return null;
    }

    /// <summary>The levels that a plan tells where nothing is to stay plugged in.</summary>
    private static IEnumerable<decimal> Told(Candidate candidate) =>
        Enum.GetValues<Level>().Where(static level => level != Level.Moves).Select(level => Math.Round(candidate.Levels[(int)level], 5));

    private static PlanSearch InOnePiece(Rig rig, PlanOptions options) =>
        new(rig, new PlanProblemBuilder(rig).Build(options.Only), options, TimeProvider.System, TestContext.Current.CancellationToken);

    private sealed record Run(int Parts, bool IsWhole, bool HasLeads, bool HasPinned, string? Fault);
}
