using Loadmark.Core.Rigs;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>Plans that change a wiring as little as can be.</summary>
public sealed class FewestMovesTests(ITestOutputHelper output)
{
    private const int Rigs = 500;

    private static readonly PlanOptions Options = new() { FewestMoves = true };

    /// <summary>As good, level by level, as the best of all wirings of small random rigs that are wired already, be it badly.</summary>
    [Fact]
    public void No_wiring_moves_fewer_loads()
    {
        var cancellation = TestContext.Current.CancellationToken;
        var runs = Enumerable.Range(20_001, Rigs).AsParallel().AsOrdered().WithCancellation(cancellation).Select(seed => RunOf(seed, cancellation)).ToList();
        var faults = runs.Select(static run => run.Fault).OfType<string>().ToList();
        output.WriteLine($"{runs.Count} rigs: loads wired {runs.Sum(static run => run.Wired)}, moved {runs.Sum(static run => run.Moved)} with the option and {runs.Sum(static run => run.MovedElse)} without; {runs.Count(static run => run.IsOpen)} not proven; leads kept {runs.Sum(static run => run.LeadsKept)}");
        Assert.True(faults.Count == 0, $"{faults.Count} plans are at fault\n{string.Join("\n\n", faults.Take(4))}");
        Assert.True(runs.Sum(static run => run.Moved) > 20);
        Assert.True(runs.Sum(static run => run.MovedElse) > 1.5 * runs.Sum(static run => run.Moved));
        Assert.True(runs.Sum(static run => run.LeadsKept) > 20);
        Assert.InRange(runs.Count(static run => run.IsOpen), 0, Rigs / 10);
    }

    /// <summary>Which of two outlets that are alike a chain is on matters: two loads that change chains are two moves.</summary>
    [Fact]
    public void Loads_that_change_chains_on_alike_outlets_are_moved()
    {
        var plan = Tests.Rigs.Plan(
            "rig: Two chains\nheadroom: 0 %\nsupplies: { brick: { isolated: true, outlets: { 1-2: 9 V DC 100 mA } } }\n"
            + "loads: { A: 9V 60mA, B: 9V 60mA, C: 9V 40mA, D: 9V 40mA }\n"
            + "leads: { one: { type: daisy chain, plugs: 2 }, two: { type: daisy chain, plugs: 2 } }\n"
            + "wired: [{ from: brick/1, lead: one, to: [A, B] }, { from: brick/2, lead: two, to: [C, D] }]\n",
            Options);
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(new Objective.ObjectiveLevel("wired loads moved", 2, 2), plan.Objective[Levels.Moves]);
    }

    /// <summary>A load to come is fed without moving what is wired, which the plan without the option does.</summary>
    [Fact]
    public void A_load_more_leaves_the_rest_where_it_is()
    {
        const string text = "rig: One more\nsupplies: { brick: { isolated: true, outlets: { 1: 9 V DC 500 mA, 2-3: 9 V DC 100 mA } } }\n"
            + "loads: { A: 9V 20mA, B: 9V 30mA, C: 9V 40mA }\nwired: [{ from: brick/1, to: A }, { from: brick/3, to: B }]\n";
        var plan = Tests.Rigs.Plan(text, Options);
        Assert.Equal(["brick/1 A", "brick/2 C", "brick/3 B"], plan.Rig.Wired!.Value.Items.Select(feed => $"{feed.From} {feed.To}"));
        Assert.Equal(0, plan.Objective[Levels.Moves].Value);
        var anew = Tests.Rigs.Plan(text);
        Assert.DoesNotContain(anew.Objective.Items, static level => level.Name == "wired loads moved");
        Assert.NotEqual(0, MovesOf(Tests.Rigs.Read(text), anew.Rig));
    }

    /// <summary>Harm, what fails and what is not known are mended even where that takes a move; noise is not.</summary>
    [Theory]
    [InlineData("9 V DC 100 mA centre positive", "1-2: 9 V DC 100 mA centre negative", "", 1)]
    [InlineData("", "1-2: 9 V DC 100 mA centre negative", ", isolate: true", 0)]
    public void A_load_is_moved_for_its_safety_and_not_for_quiet(string first, string rest, string load, int moves)
    {
        var plan = Tests.Rigs.Plan(
            $"rig: Wrong\nsupplies: {{ wall: {{ outlets: {{ {(first.Length > 0 ? $"9: {first}, " : "")}{rest} }} }}, own: {{ isolated: true, outlets: {{ 1: 9 V DC 100 mA centre negative }} }} }}\n"
            + $"loads: {{ A: {{ label: 9V 20mA centre negative{load} }}, B: {{ label: 9V 20mA centre negative, kind: digital }} }}\n"
            + $"wired: [{{ from: wall/{(first.Length > 0 ? 9 : 1)}, to: A }}, {{ from: wall/2, to: B }}]\n",
            Options);
        Assert.Empty(plan.Unfed);
        Assert.Equal(moves, plan.Objective[Levels.Moves].Value);
        PlanAssert.IsSafe(plan);
    }

    private static Run RunOf(int seed, CancellationToken cancellation)
    {
        var rig = Tests.Rigs.Read(new RandomRig(seed).Write());
        rig = rig with { Wired = [.. WiringOf(rig, seed)] };
        var best = new BruteForce(rig, fewestMoves: true).Run();
        var plan = RigPlanner.Plan(rig, Options, cancellation);
        var (moves, others) = (MovesOf(rig, plan.Rig), MovesOf(rig, RigPlanner.Plan(rig, new PlanOptions(), cancellation).Rig));
        var isOpen = !plan.Objective.Items.All(static level => level.IsProven);
        var measured = plan.Objective.Items.Select(static level => Math.Round(level.Value, 5)).ToArray();
        var fault = !isOpen && !measured.SequenceEqual(best.Best!) ? "is not the best"
            : !Levels.WithMoves(Levels.Of(plan.Rig), rig, plan.Rig).SequenceEqual(measured) ? "is not measured right"
            : plan.Objective[Levels.Moves].Value != moves ? $"tells {moves} moves"
            : plan.Check.Findings.Items.Any(BruteForce.Refuses) ? "is refused"
            : isOpen && Enumerable.Range(0, measured.Length).TakeWhile(level => level == 0 || plan.Objective[level - 1].IsProven).Any(level => plan.Objective[level].Bound > best.Best![level]) ? "claims too much"
            : null;
        return new Run(
            rig.Loads.Items.Count(load => Levels.IsWired(rig, load.Id)),
            moves,
            others,
            isOpen,
            plan.Rig.Wired!.Value.Items.Count(feed => !feed.Pinned && feed.Lead is not null && rig.Wired!.Value.Items.Any(before => before.Lead == feed.Lead && before.From == feed.From)),
            fault is null ? null : $"seed {seed} {fault}: {string.Join(' ', measured)}\n{string.Join('\n', plan.Rig.Wired!.Value)}\noracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}\nnow:\n{string.Join('\n', rig.Wired!.Value)}\n{new RandomRig(seed).Write()}");
    }

    /// <summary>Feeds that the rules allow one by one, be it not together; some are pinned, and at times an outlet is in two.</summary>
    private static IEnumerable<Feed> WiringOf(Rig rig, int seed)
    {
        var chance = new Random(seed);
        var bare = new BruteForce(rig with { Wired = (ValueList<Feed>)[] });
        var feeds = new List<Feed>();
        for (var tries = chance.Next(3, 9); tries > 0; tries--)
        {
            if (bare.AnyFeed(chance.Next(100_000)) is not { } feed)
                break;
            var isClash = feeds.Exists(other => other.To.Items.Intersect(feed.To.Items).Any() || other.From.Items.Intersect(feed.From.Items).Any());
            if (isClash && chance.Next(12) > 0)
                continue;
            if (isClash || chance.Next(8) > 0)
                feeds.Add(feed);
            else if (feeds.TrueForAll(static other => !other.Pinned))
                feeds.Add(feed with { Pinned = true });
        }

        return feeds.OrderBy(static feed => feed.Pinned);
    }

    private static int MovesOf(Rig before, Rig after) =>
        LoadMove.Between(before, after).Items.Count(move => move.Before.Count > 0 && !move.Before.Items.Any(static feed => feed.Pinned));

    private sealed record Run(int Wired, int Moved, int MovedElse, bool IsOpen, int LeadsKept, string? Fault);
}
