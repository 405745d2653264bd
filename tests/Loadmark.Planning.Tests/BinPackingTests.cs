namespace Loadmark.Planning.Tests;

/// <summary>
/// Bin packing as wiring: items are loads, bins are alike outlets with a chain each. As many outlets as the optimum has
/// bins feed everything, and one outlet fewer does not. Instances and optima: see Data/binpacking/SOURCE.md.
/// </summary>
public sealed class BinPackingTests(ITestOutputHelper output)
{
    private const int MostPlanned = 10;

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
    /// Of larger instances it is only asked whether everything can be fed, for a short time each. A wrong answer fails; no answer is
    /// listed as such. One outlet fewer is too few by its currents alone in nearly all of them, and so it is always proven there.
    /// </summary>
    /// <param name="items">How many items the instances have.</param>
    /// <param name="seconds">How long each question may take.</param>
    /// <param name="mostOpen">How many instances may be left without an answer for the fewest outlets.</param>
    [Theory]
    [InlineData(20, 3, 3)]
    [InlineData(30, 1, 10)]
    [InlineData(60, 1, 6)]
    [InlineData(120, 1, 10)]
    public void Larger_ones_are_never_answered_wrongly(int items, int seconds, int mostOpen)
    {
        var instances = BinPackingInstance.All().Where(one => one.Sizes.Length == items).ToList();
        var (open, openBelow) = (new List<string>(), new List<string>());
        foreach (var instance in instances)
        {
            var sum = instance.Sizes.Sum();
            var enough = CanFeed(instance, instance.Fewest, seconds);
            var tooFew = CanFeed(instance, instance.Fewest - 1, seconds);
            Assert.True(enough is not false, $"{instance.Name}: {instance.Fewest} outlets feed everything, and the planner says that they do not.");
            Assert.True(tooFew is not true, $"{instance.Name}: {instance.Fewest - 1} outlets cannot feed everything, and the planner says that they do.");
            if (enough is null)
                open.Add($"{instance.Name} ({instance.Fewest})");
            if (tooFew is null)
                openBelow.Add($"{instance.Name} ({instance.Fewest - 1}{((instance.Fewest - 1) * instance.Capacity < sum ? ", although its items are larger in all" : "")})");
        }

        output.WriteLine($"{instances.Count} instances of {items} items, {seconds} s a question");
        output.WriteLine($"not found in the time that the fewest outlets suffice: {(open.Count == 0 ? "none" : string.Join(", ", open))}");
        output.WriteLine($"not proven in the time that one fewer does not: {(openBelow.Count == 0 ? "none" : string.Join(", ", openBelow))}");
        Assert.NotEmpty(instances);
        Assert.True(open.Count <= mostOpen, string.Join(", ", open));
        Assert.DoesNotContain(openBelow, static one => one.Contains("larger in all", StringComparison.Ordinal));
    }

    private static bool? CanFeed(BinPackingInstance instance, int outlets, int seconds) =>
        RigPlanner.CanFeedAll(Rigs.Read(instance.RigOf(outlets)), new PlanOptions { TimeLimit = TimeSpan.FromSeconds(seconds) }, TestContext.Current.CancellationToken);
}
