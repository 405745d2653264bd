using Loadmark.Core.Ratings;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>Plans of small random rigs are as good, level by level, as the best of all wirings, which are tried one by one.</summary>
public sealed class OracleTests(ITestOutputHelper output)
{
    private const int Rigs = 2000;

    [Fact]
    public void Plans_are_as_good_as_the_best_of_all_wirings()
    {
        var tried = 0L;
        var everyone = 0;
        var varying = 0;
        var kinds = new List<string>();
        for (var seed = 1; seed <= Rigs; seed++)
        {
            var text = new RandomRig(seed).Write();
            var rig = Tests.Rigs.Read(text);
            if (seed % 4 == 0 && new BruteForce(rig).AnyFeed(seed * 7) is { } feed)
                rig = rig with { Wired = [feed with { Pinned = true }] };
            varying += WiredRig.Of(rig).Loads.Items.Any(load => load.Rating.DrawVaries) ? 1 : 0;
            HashSet<string>? only = seed % 6 == 0 ? ["S1", "S3"] : null;
            var best = new BruteForce(rig, only).Run();
            tried += best.Tried;
            var plan = RigPlanner.Plan(rig, new PlanOptions { Only = only }, TestContext.Current.CancellationToken);
            foreach (var planned in plan.Rig.Wired!.Value)
            {
                kinds.Add(planned.Joined.ToString());
                kinds.Add(rig.Leads.Items.FirstOrDefault(lead => lead.Id == planned.Lead)?.Type.ToString() ?? "plain");
            }

            everyone += plan.Unfed.Count == 0 ? 1 : 0;

            var measured = plan.Objective.Items.Select(level => Math.Round(level.Value, 5)).ToArray();
            if (!measured.SequenceEqual(best.Best!) || !Levels.Of(plan.Rig).SequenceEqual(best.Best!))
            {
                Assert.Fail(
                    $"{text}\nplan:   {string.Join(' ', measured)}\n{string.Join('\n', plan.Rig.Wired!.Value)}\noracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}");
            }

            Assert.All(plan.Objective, level => Assert.True(level.IsProven, $"seed {seed}: {level}"));
            Assert.Equal(plan.Unfed.Count == 0 ? PlanStatus.Optimal : PlanStatus.Infeasible, plan.Status);
            PlanAssert.IsSafe(plan);
        }

        output.WriteLine($"{Rigs} rigs, {tried} wirings tried, {everyone} rigs in which every load can be fed, {varying} with loads whose draw follows the voltage");
        output.WriteLine("feeds planned: " + string.Join(", ", kinds.CountBy(kind => kind).Select(kind => $"{kind.Key} {kind.Value}")));
        Assert.InRange(everyone, Rigs / 10, Rigs * 9 / 10);
        Assert.InRange(varying, 1, Rigs / 2);
    }
}
