using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>A problem in which what is alike is pooled is an easier one: its bounds are never above what a wiring comes to.</summary>
public sealed class SupplyPoolerTests(ITestOutputHelper output)
{
    [Fact]
    public void Its_bounds_are_not_above_the_best_of_all_wirings()
    {
        var (pooled, met, most) = (0, 0, Rounds.Of(150));
        for (var seed = 1; seed <= 3000 && pooled < most; seed++)
        {
            var rig = Rigs.Read(new RandomRig(seed).Write());
            if (rig.Supplies.Items.Sum(supply => supply.Outlets.Count) > 2 || rig.Loads.Count > 4)
                continue;

            // Every supply twice, so that there is something to pool; and of leads too.
            rig = rig with
            {
                Supplies = [.. rig.Supplies, .. rig.Supplies.Items.Select(supply => supply with { Id = supply.Id + "b" })],
                Leads = [.. rig.Leads.Items.Select(lead => lead with { Count = 2 })],
                Wired = null,
            };
            var problem = new PlanProblemBuilder(rig).Build(null);
            if (problem.AlikeSupplies.Length == 0)
                continue;
            var easier = SupplyPooler.Pool(problem);
            Assert.True(easier.Outlets.Length < problem.Outlets.Length);
            using var solver = new LevelSolver(new WiringModel(easier), [], TimeSpan.FromMinutes(1), TimeProvider.System, null, TestContext.Current.CancellationToken);
            var best = new BruteForce(rig, null).Run();
            var levels = Candidate.Of(rig, best.BestRig!.Wired!.Value, []).Units();
            var ideal = solver.Ideal([]);
            Assert.True(ideal.AsSpan().SequenceCompareTo(levels) <= 0, $"seed {seed}: {string.Join(' ', ideal)} is above {string.Join(' ', levels)}");
            var answer = solver.Solve(null, levels, TimeSpan.FromMinutes(1), (_, rest) => AssertNotAbove(rest, seed), CancellationToken.None);
            Assert.True(answer.Levels.AsSpan().SequenceCompareTo(levels) <= 0);
            Assert.True(answer.IsProven);
            pooled++;

            bool AssertNotAbove(long[] bound, int of)
            {
                Assert.True(bound.AsSpan().SequenceCompareTo(levels) <= 0, $"seed {of}: {string.Join(' ', bound)} is above {string.Join(' ', levels)}");
                return false;
            }
            met += answer.Levels.SequenceEqual(levels) ? 1 : 0;
        }

        output.WriteLine($"{pooled} rigs, in {met} of them the bound is the best");
        Assert.Equal(most, pooled);
        Assert.True(met > most * 2 / 3);
    }
}
