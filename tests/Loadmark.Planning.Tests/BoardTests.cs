using Loadmark.Core.Rigs;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>Boards of one rig that keep to themselves.</summary>
public sealed class BoardTests(ITestOutputHelper output)
{
    private const string Two =
        "rig: Two boards\nsupplies:\n  bass-brick: { board: bass, isolated: true, outlets: { 1-2: 9 V DC 100 mA } }\n  voice-brick: { board: Voice, isolated: true, outlets: { 1: 9 V DC 500 mA } }\n";

    /// <summary>As good, level by level, as the best of all wirings of small random rigs that keep to the boards.</summary>
    [Fact]
    public void Plans_that_keep_to_boards_are_as_good_as_the_best_of_all_wirings_that_do()
    {
        var rigs = Rounds.Of(400);
        var cancellation = TestContext.Current.CancellationToken;
        var runs = Enumerable.Range(30_001, rigs).AsParallel().AsOrdered().WithCancellation(cancellation).Select(seed =>
        {
            var rig = OnBoards(Tests.Rigs.Read(new RandomRig(seed, hubs: seed % 5 == 0 ? 1 : 0).Write()), seed);
            var best = new BruteForce(rig).Run();
            var plan = RigPlanner.Plan(rig, new PlanOptions(), cancellation);
            var across = RigPlanner.Plan(rig, new PlanOptions { AcrossBoards = true }, cancellation);
            var free = RigPlanner.Plan(OnBoards(rig, null), new PlanOptions(), cancellation);
            var measured = plan.Objective.Items.Select(static level => Math.Round(level.Value, 5)).ToArray();
            var isProven = plan.Objective.Items.All(static level => level.IsProven);
            var fault = isProven && !measured.SequenceEqual(best.Best!) ? $"{string.Join(' ', measured)}\n{string.Join('\n', plan.Rig.Wired!.Value)}\noracle: {string.Join(' ', best.Best!)}\n{string.Join('\n', best.BestRig!.Wired!.Value)}"
                : !isProven && seed % 5 > 0 ? "is not proven"
                : plan.Rig.Wired!.Value.Items.Any(feed => IsAcross(rig, feed)) ? "crosses boards"
                : !across.Objective.Items.Select(static level => level.Value).SequenceEqual(free.Objective.Items.Select(static level => level.Value)) ? "is not free across boards"
                : null;
            return (Fault: fault is null ? null : $"seed {seed}: {fault}\n{new RandomRig(seed).Write()}", IsHeld: across.Objective[0].Value < plan.Objective[0].Value);
        }).ToList();
        var faults = runs.Select(static run => run.Fault).OfType<string>().ToList();
        output.WriteLine($"{rigs} rigs, of which {runs.Count(static run => run.IsHeld)} would feed more across boards");
        Assert.True(faults.Count == 0, $"{faults.Count} plans are at fault\n{string.Join("\n\n", faults.Take(4))}");
        Assert.True(runs.Count(static run => run.IsHeld) > 30);
    }

    [Fact]
    public void A_load_that_only_another_board_could_feed_stays_dark_and_is_told_why()
    {
        var rig = Tests.Rigs.Read(Two + "loads: { A: { label: 9V 50mA, board: bass }, B: { label: 9V 300mA, board: bass }, C: { label: 9V 20mA, board: voice } }\n");
        var plan = RigPlanner.Plan(rig, new PlanOptions(), TestContext.Current.CancellationToken);
        Assert.Equal("B", plan.Unfed.ToString());
        Assert.Contains("voice-brick/1 C", plan.Rig.Wired!.Value.Items.Select(static feed => $"{feed.From} {feed.To}"));
        var because = Assert.Single(PlanExplainer.Explain(plan, new PlanOptions(), TestContext.Current.CancellationToken).Reasons).Because;
        Assert.StartsWith("No outlet of the board bass, or of none, gives B what it needs", because, StringComparison.Ordinal);
        Assert.Contains("voice-brick/1: it is of the board Voice.", because, StringComparison.Ordinal);

        var across = RigPlanner.Plan(rig with { Loads = [rig.Loads[0], rig.Loads[1]] }, new PlanOptions { AcrossBoards = true }, TestContext.Current.CancellationToken);
        Assert.Empty(across.Unfed);
    }

    [Fact]
    public void Loads_that_another_board_has_room_for_are_told_so()
    {
        var rig = Tests.Rigs.Read(Two + "loads: { A: { label: 9V 50mA, board: bass }, B: { label: 9V 50mA, board: bass }, C: { label: 9V 50mA, board: bass } }\n");
        var plan = RigPlanner.Plan(rig, new PlanOptions(), TestContext.Current.CancellationToken);
        var because = Assert.Single(PlanExplainer.Explain(plan, new PlanOptions(), TestContext.Current.CancellationToken).Reasons).Because;
        Assert.Equal("A, B, C could all be fed if boards helped each other, which they do only where that is allowed.", because);
    }

    [Fact]
    public void What_is_of_no_board_goes_with_any()
    {
        var plan = Tests.Rigs.Plan(Two + "  wall: { isolated: true, outlets: { 1: 9 V DC 100 mA } }\nloads: { A: { label: 9V 300mA }, B: { label: 9V 50mA, board: voice } }\n");
        Assert.Empty(plan.Unfed);
        Assert.Equal(["voice-brick/1 A", "wall/1 B"], plan.Rig.Wired!.Value.Items.Select(static feed => $"{feed.From} {feed.To}"));
    }

    private static Rig OnBoards(Rig rig, int? seed)
    {
        var chance = new Random(seed ?? 0);
        return rig with
        {
            Loads = [.. rig.Loads.Items.Select(load => load with { Board = Pick() })],
            Supplies = [.. rig.Supplies.Items.Select(supply => supply with { Board = Pick() })],
        };

        string? Pick() => seed is null ? null : chance.Next(5) switch { < 2 => "one", < 4 => "two", _ => null };
    }

    private static bool IsAcross(Rig rig, Feed feed) => feed.From.Items.Any(outlet => feed.To.Items.Any(id =>
        rig.Supplies.Items.First(supply => supply.Id == outlet.Supply).Board is { } own && rig.EveryLoad.First(load => load.Id == id).Board is { } other && own != other));
}
