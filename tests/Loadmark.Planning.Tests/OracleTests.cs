using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>Plans of small random rigs are as good, level by level, as the best of all wirings, which are tried one by one.</summary>
public sealed class OracleTests(ITestOutputHelper output)
{
    private const int Rigs = 400;

    [Fact]
    public void Plans_are_as_good_as_the_best_of_all_wirings()
    {
        var tried = 0L;
        var everyone = 0;
        for (var seed = 1; seed <= Rigs; seed++)
        {
            var text = new RandomRig(seed).Write();
            var rig = Tests.Rigs.Read(text);
            var best = new BruteForce(rig).Run();
            tried += best.Tried;
            var plan = RigPlanner.Plan(rig, new PlanOptions(), TestContext.Current.CancellationToken);
            everyone += plan.Unfed.Count == 0 ? 1 : 0;

            var planned = plan.Objective.Items.Select(level => Math.Round(level.Value, 5)).ToArray();
            if (!planned.SequenceEqual(best.Best!) || !Levels.Of(plan.Rig).SequenceEqual(best.Best!))
            {
                Assert.Fail(
                    $"{text}\nplan:   {string.Join(' ', planned)}\n{string.Join('\n', plan.Rig.Wired!.Value)}\noracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}");
            }

            Assert.All(plan.Objective, level => Assert.True(level.IsProven, $"seed {seed}: {level}"));
            Assert.Equal(plan.Unfed.Count == 0 ? PlanStatus.Optimal : PlanStatus.Infeasible, plan.Status);
            PlanAssert.IsSafe(plan);
        }

        output.WriteLine($"{Rigs} rigs, {tried} wirings tried, {everyone} rigs in which every load can be fed");
        Assert.InRange(everyone, Rigs / 5, Rigs * 4 / 5);
    }
}
