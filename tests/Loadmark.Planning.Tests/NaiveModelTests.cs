using Loadmark.Core.Ratings;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;
using Loadmark.Planning.Tests.Oracle.Fleet;
using Loadmark.Planning.Tests.Oracle.Naive;

namespace Loadmark.Planning.Tests;

/// <summary>
/// Plans of rigs that are too large to try every wiring are as good, level by level, as a second and naive model finds;
/// that model in its turn is as good as the best of all wirings of small rigs.
/// </summary>
public sealed class NaiveModelTests(ITestOutputHelper output)
{
    private static readonly int SmallRigs = Rounds.Of(300);

    [Fact]
    public void The_naive_model_is_as_good_as_the_best_of_all_wirings()
    {
        var varying = 0;
        for (var seed = 1; seed <= SmallRigs; seed++)
        {
            var text = new RandomRig(seed).Write();
            var rig = Rigs.Read(text);
            if (seed % 4 == 0 && new BruteForce(rig).AnyFeed(seed * 7) is { } feed)
                rig = rig with { Wired = [feed with { Pinned = true }] };
            varying += WiredRig.Of(rig).Loads.Items.Any(load => load.Rating.DrawVaries) ? 1 : 0;
            HashSet<string>? only = seed % 6 == 0 ? ["S1", "S3"] : null;

            var best = new BruteForce(rig, only).Run();
            var naive = new NaiveModel(rig, only).Solve(TimeSpan.FromMinutes(1));
            if (!naive.Vector!.SequenceEqual(best.Best!) || !naive.Bounds.SequenceEqual(best.Best!))
            {
                Assert.Fail(
                    $"{text}\nnaive:  {string.Join(' ', naive.Vector!)}, bounds {string.Join(' ', naive.Bounds)}\n{string.Join('\n', naive.Rig!.Wired!.Value)}\n"
                    + $"oracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}");
            }
        }

        output.WriteLine($"{SmallRigs} rigs, {varying} with loads whose draw follows the voltage");
        Assert.InRange(varying, 1, SmallRigs / 2);
    }

    /// <summary>
    /// A bound that either side claims must not be above what the other side has: where both have proven a level their
    /// values are equal, and a proven plan is never worse than the naive one. Beyond the first level in which they differ
    /// nothing is comparable. What is not proven in the time is claimed by nobody, so a slow machine fails nothing. Rigs with chains are few
    /// here, since the naive model takes all of its time for each; the measurement <c>planning</c> of bench/ gives 40 of a size four times as much.
    /// </summary>
    [Theory]
    [InlineData(12, 4, true)]
    [InlineData(16, 3, true)]
    [InlineData(20, 1, true)]
    [InlineData(12, 4, false)]
    [InlineData(20, 4, false)]
    [InlineData(30, 3, false)]
    [InlineData(40, 3, false)]
    public void Plans_are_as_good_as_a_naive_model_finds(int loads, int allSeeds, bool hasChains)
    {
        var seeds = Rounds.Of(allSeeds);
        var (equal, planned, proven) = (0, 0, 0);
        for (var seed = 1; seed <= seeds; seed++)
        {
            var rig = Rigs.Read(new FleetRig(seed, loads, isShort: seed % 2 == 0, hasChains).ToString());
            var plan = RigPlanner.Plan(rig, new PlanOptions { TimeLimit = TimeSpan.FromSeconds(2) }, TestContext.Current.CancellationToken);
            PlanAssert.IsSafe(plan);
            var values = Levels.Of(plan.Rig);
            Assert.Equal(values, plan.Objective.Items.Select(level => Math.Round(level.Value, 5)));

            var naive = new NaiveModel(rig).Solve(TimeSpan.FromSeconds(2.5));
            proven += naive.Proven;
            planned += plan.Objective.Items.TakeWhile(level => level.IsProven).Count();
            equal += Compare(seed, plan, values, naive);
        }

        output.WriteLine($"{seeds} rigs of {loads} loads, {(hasChains ? "with" : "without")} chains: of {10 * seeds} levels the plans have proven {planned}, the naive model {proven}, and {equal} are equal and proven by both");
        if (loads == 12)
            Assert.True(equal > 0, "Nothing was compared.");
    }

    private static int Compare(int seed, PlanResult plan, decimal[] values, NaiveAnswer naive)
    {
        for (var level = 0; level < values.Length; level++)
        {
            var name = $"seed {seed}, {plan.Objective[level].Name}";
            if (level < naive.Bounds.Count)
                Assert.True(naive.Bounds[level] <= values[level], $"{name}: the plan has {values[level]}, the naive model proves {naive.Bounds[level]}");
            if (naive.Vector is { } other)
                Assert.True(Math.Round(plan.Objective[level].Bound, 5) <= other[level], $"{name}: the plan claims {plan.Objective[level].Bound}, the naive model has {other[level]}");
            if (naive.Vector is null || values[level] != naive.Vector[level] || level >= naive.Proven || !plan.Objective[level].IsProven)
                return level;
        }

        return values.Length;
    }
}
