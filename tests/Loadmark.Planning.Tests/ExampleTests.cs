using Loadmark.Planning.Search;

namespace Loadmark.Planning.Tests;

/// <summary>Every example rig plans, and the rules refuse nothing of it.</summary>
public sealed class ExampleTests(ITestOutputHelper output)
{
    public static TheoryData<string> Files() =>
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.rig.yaml").Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Examples_plan_and_pass_the_rules(string file)
    {
        var rig = Rigs.Example(Path.Combine(AppContext.BaseDirectory, "examples", file));
        var plan = RigPlanner.Plan(rig, new PlanOptions(), TestContext.Current.CancellationToken);

        output.WriteLine($"{plan.Status}: {string.Join(", ", plan.Objective.Items.Select(level => $"{level.Name} {level.Value}"))}; not fed: {plan.Unfed}");

        PlanAssert.IsSafe(plan);
        Assert.NotEqual(PlanStatus.Unknown, plan.Status);
        Assert.Equal(plan.Rig.Loads.Count, plan.Rig.Wired!.Value.Items.Sum(feed => feed.To.Count) + plan.Unfed.Count);
    }
}
