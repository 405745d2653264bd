using Loadmark.Planning.Search;

namespace Loadmark.Planning.Tests;

/// <summary>
/// Bin packing as wiring: items are loads, bins are alike outlets with a chain each. As many outlets as the optimum has
/// bins feed everything, and one outlet fewer does not. Instances and optima: see Data/binpacking/SOURCE.md.
/// </summary>
public sealed class BinPackingTests(ITestOutputHelper output)
{
    private const int MostPlanned = 10;

    /// <summary>Those that take more than two seconds.</summary>
    private static readonly string[] Hard = ["u120_05", "u120_06", "u120_07", "u120_08", "u120_09"];

    public static TheoryData<string> Small() => [.. BinPackingInstance.All().Where(static one => one.Sizes.Length <= MostPlanned).Select(static one => one.Name)];

    [Theory]
    [MemberData(nameof(Small))]
    public void The_fewest_outlets_are_the_fewest_bins(string name)
    {
        var instance = BinPackingInstance.All().Single(one => one.Name == name);
        var limit = new PlanOptions { TimeLimit = TimeSpan.FromSeconds(60) };
        var enough = Rigs.Plan(instance.RigOf(instance.Fewest), limit);
        var tooFew = Rigs.Plan(instance.RigOf(instance.Fewest - 1), limit);
        output.WriteLine($"{name}: {instance.Fewest} outlets leave {enough.Unfed.Count}, {enough.Status}; {instance.Fewest - 1} leave {tooFew.Unfed.Count}, {tooFew.Status}");

        PlanAssert.IsSafe(enough);
        PlanAssert.IsSafe(tooFew);
        Assert.Empty(enough.Unfed);
        Assert.NotEmpty(tooFew.Unfed);
        Assert.Equal(PlanStatus.Infeasible, tooFew.Status);
    }

    /// <summary>
    /// Of larger instances it is only asked whether everything can be fed. One outlet fewer is too few by its currents alone in
    /// nearly all of them; that is proven at once. The fewest outlets are found in seconds on a machine that has nothing else to
    /// do; a minute is for one that has. Of the hardest it is only asked that no answer is wrong.
    /// </summary>
    [Theory]
    [InlineData(20)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    public void The_fewest_outlets_feed_everything_and_one_fewer_does_not(int items)
    {
        var (asked, found, proven) = (0, 0, 0);
        var instances = BinPackingInstance.All().Where(one => one.Sizes.Length == items).ToList();
        foreach (var instance in instances.Take(Rounds.Of(instances.Count)))
        {
            var isHard = Hard.Contains(instance.Name);
            var enough = CanFeed(instance, instance.Fewest, isHard ? 1 : 60);
            Assert.True(enough ?? isHard, $"{instance.Name}: {instance.Fewest} outlets feed everything, and the planner says {enough?.ToString() ?? "nothing"}.");
            var isTooFewInAll = (instance.Fewest - 1) * instance.Capacity < instance.Sizes.Sum();
            var tooFew = CanFeed(instance, instance.Fewest - 1, isTooFewInAll ? 60 : 2);
            Assert.False(tooFew ?? isTooFewInAll, $"{instance.Name}: {instance.Fewest - 1} outlets cannot feed everything, and the planner says {tooFew?.ToString() ?? "nothing"}.");
            asked++;
            found += enough is true ? 1 : 0;
            proven += tooFew is false ? 1 : 0;
        }

        output.WriteLine($"{asked} instances of {items} items: in {found} the fewest outlets were found to suffice, in {proven} one fewer was proven too few");
        Assert.True(asked > 0);
    }

    private static bool? CanFeed(BinPackingInstance instance, int outlets, int seconds) =>
        RigPlanner.CanFeedAll(Rigs.Read(instance.RigOf(outlets)), new PlanOptions { TimeLimit = TimeSpan.FromSeconds(seconds) }, TestContext.Current.CancellationToken);
}
