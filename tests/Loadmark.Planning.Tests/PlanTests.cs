using Loadmark.Core.Rigs;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Tests;

/// <summary>What a plan must do in one small case each.</summary>
public sealed class PlanTests
{
    private const string Common = "rig: Small\nsupplies:\n  brick: { isolated: true, outlets: ";

    [Fact]
    public void Small_loads_go_on_small_outlets()
    {
        var plan = Rigs.Plan($"{Common} {{ 1: 9 V DC 500 mA, 2: 9 V DC 100 mA }} }}\nloads: {{ A: {{ label: 9 V 20 mA }} }}\n");
        Assert.Equal("brick/2", Assert.Single(plan.Rig.Wired!.Value).From.ToString());
        Assert.Equal(0.1m, Level(plan, "capacity tied up in amps"));
        Assert.Equal(PlanStatus.Optimal, plan.Status);
    }

    [Fact]
    public void A_rig_in_which_no_outlet_suits_any_load_is_proven_dark()
    {
        var rig = Rigs.Read($"{Common} {{ 1: 18 V DC 500 mA }} }}\nloads: {{ A: {{ label: 9 V 20 mA }}, B: {{ label: 9 V AC 20 mA }} }}\n");
        Assert.False(RigPlanner.CanFeedAll(rig, new PlanOptions(), TestContext.Current.CancellationToken));
        Assert.Equal(PlanStatus.Infeasible, RigPlanner.Plan(rig, new PlanOptions(), TestContext.Current.CancellationToken).Status);
        Assert.False(RigPlanner.CanFeedAll(rig with { Supplies = [] }, new PlanOptions(), TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_pinned_feed_stays_and_other_wiring_is_ignored()
    {
        var plan = Rigs.Plan(
            $"{Common} {{ 1: 9 V DC 500 mA, 2: 9 V DC 100 mA }} }}\nloads: {{ A: {{ label: 9 V 20 mA }}, B: {{ label: 9 V 30 mA }} }}\n"
            + "wired:\n  - { from: brick/1, to: A, pinned: true }\n  - { from: brick/2, to: A }\n");
        Assert.Equal(["brick/1 A True", "brick/2 B False"], plan.Rig.Wired!.Value.Items.Select(feed => $"{feed.From} {feed.To} {feed.Pinned}"));
    }

    [Fact]
    public void A_pinned_feed_stays_even_where_the_rules_refuse_it()
    {
        var plan = Rigs.Plan(
            $"{Common} {{ 1: 18 V DC 500 mA, 2: 9 V DC 100 mA }} }}\nloads: {{ A: {{ label: 9 V 20 mA }}, B: {{ label: 9 V 30 mA }} }}\n"
            + "wired: [{ from: brick/1, to: A, pinned: true }]\n");
        Assert.Equal(["brick/1 A", "brick/2 B"], plan.Rig.Wired!.Value.Items.Select(feed => $"{feed.From} {feed.To}"));
        Assert.True(plan.Check.IsRefused);
    }

    [Fact]
    public void A_pinned_feed_takes_its_share_of_the_total_and_its_lead()
    {
        var plan = Rigs.Plan(
            "rig: Small\nsupplies:\n  brick: { isolated: true, total: 200 mA, outlets: { 1-3: 9 V DC 200 mA } }\n"
            + "loads: { A: { label: 9 V 150 mA }, B: { label: 9 V 60 mA }, C: { label: \"9 V DC 20 mA centre positive\" }, D: { label: \"9 V DC 20 mA centre positive\" } }\n"
            + "leads: { flip: { type: reversing } }\n"
            + "wired: [{ from: brick/1, to: A, pinned: true }, { from: brick/2, lead: flip, to: C, pinned: true }]\n");
        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.Equal("B, D", plan.Unfed.ToString());
    }

    [Fact]
    public void Only_the_named_supplies_are_used_and_the_most_important_loads_come_first()
    {
        const string text = "rig: Fallback\nsupplies:\n  brick: { isolated: true, outlets: { 1-3: 9 V DC 200 mA } }\n  wall: { outlets: { 1: 9 V DC 200 mA } }\n"
            + "loads: { A: { label: 9 V 20 mA, priority: 3 }, B: { label: 9 V 20 mA, priority: 1 }, C: { label: 9 V 20 mA } }\n";
        Assert.Equal(PlanStatus.Optimal, Rigs.Plan(text).Status);

        var plan = Rigs.Plan(text, new PlanOptions { Only = new HashSet<string> { "wall" } });
        Assert.Equal("wall/1", Assert.Single(plan.Rig.Wired!.Value).From.ToString());
        Assert.Equal("A, C", plan.Unfed.ToString());
        Assert.Equal(PlanStatus.Infeasible, plan.Status);
    }

    [Fact]
    public void More_loads_count_before_their_importance()
    {
        var plan = Rigs.Plan(
            "rig: Small\nsupplies:\n  brick: { isolated: true, total: 100 mA, outlets: { 1-3: 9 V DC 100 mA } }\n"
            + "loads: { A: { label: 9 V 90 mA, priority: 1 }, B: { label: 9 V 50 mA, priority: 3 }, C: { label: 9 V 50 mA, priority: 3 } }\n");
        Assert.Equal("A", plan.Unfed.ToString());
    }

    [Fact]
    public void A_reversing_lead_is_used_where_the_polarity_wants_it_and_no_more_often_than_there_are()
    {
        var plan = Rigs.Plan(
            $"{Common} {{ 1-3: {{ label: 9 V DC 100 mA, polarity: centre negative }} }} }}\n"
            + "loads: { A: { label: \"9 V DC 20 mA centre positive\" }, B: { label: \"9 V DC 20 mA centre positive\" }, C: { label: \"9 V DC 20 mA centre negative\" } }\nleads: { flip: { type: reversing } }\n");
        Assert.Equal("B", plan.Unfed.ToString());
        Assert.Equal(["A flip", "C "], plan.Rig.Wired!.Value.Items.Select(feed => $"{feed.To} {feed.Lead}"));
    }

    [Theory]
    [InlineData("true", true)]
    [InlineData("false", false)]
    public void Series_pairs_take_outlets_with_returns_of_their_own(string isolated, bool feeds)
    {
        var plan = Rigs.Plan(
            $"rig: Small\nsupplies:\n  brick: {{ isolated: {isolated}, outlets: {{ 1-2: 9 V DC 100 mA }} }}\n"
            + "loads: { A: { label: 18 V 80 mA } }\nleads: { in line: { type: series } }\n");
        Assert.Equal(feeds ? PlanStatus.Optimal : PlanStatus.Infeasible, plan.Status);
        if (feeds)
            Assert.Equal(Joint.Series, Assert.Single(plan.Rig.Wired!.Value).Joined);
    }

    [Theory]
    [InlineData("9 V DC 100 mA", true)]
    [InlineData("9 V DC 90 mA", false)]
    public void Parallel_pairs_add_their_limits(string outlet, bool feeds)
    {
        var plan = Rigs.Plan($"{Common} {{ 1-2: {outlet} }} }}\nloads: {{ A: {{ label: 9 V 190 mA }} }}\nleads: {{ both: {{ type: parallel }} }}\n");
        Assert.Equal(feeds ? PlanStatus.Optimal : PlanStatus.Infeasible, plan.Status);
        if (feeds)
            Assert.Equal(Joint.Parallel, Assert.Single(plan.Rig.Wired!.Value).Joined);
    }

    [Theory]
    [InlineData("total: 2 W", 2)]
    [InlineData("total: 250 mA", 2)]
    [InlineData("total: 2.7 W", 3)]
    public void Totals_hold_in_amps_and_in_watts(string total, int fed)
    {
        var plan = Rigs.Plan($"rig: Small\nsupplies:\n  brick: {{ isolated: true, {total}, outlets: {{ 1-3: 9 V DC 100 mA }} }}\nloads: {{ A: {{ label: 9 V 100 mA }}, B: {{ label: 9 V 100 mA }}, C: {{ label: 9 V 100 mA }} }}\n");
        Assert.Equal(fed, plan.Rig.Wired!.Value.Count);
        PlanAssert.IsSafe(plan);
    }

    [Fact]
    public void Printed_watts_fill_a_limit_in_watts_exactly()
    {
        // 6 W ÷ 9 V has no end as a decimal fraction; the two loads are exactly what the outlet gives.
        var plan = Rigs.Plan("rig: Small\nheadroom: 0 %\nsupplies: { wall: { outlets: { 1: 9 V DC 6 W } } }\nloads: { A: { label: 9 V 3.5 W }, B: { label: 9 V 2.5 W } }\nleads: { chain: { type: daisy chain, plugs: 2 } }\n");
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(0, Level(plan, "limits past their headroom"));
    }

    [Fact]
    public void Headroom_counts_before_noise()
    {
        var plan = Rigs.Plan(
            "rig: Small\nsupplies:\n  brick: { isolated: true, outlets: { 1: 9 V DC 100 mA } }\n  wall: { isolated: false, outlets: { 1-2: 9 V DC 500 mA } }\n"
            + "loads: { A: { kind: digital, label: 9 V 95 mA }, B: { kind: digital, label: 9 V 95 mA } }\n");
        Assert.Equal(0, Level(plan, "limits past their headroom"));
        Assert.Equal(1, Level(plan, "noise findings"));
    }

    [Fact]
    public void A_load_that_wants_a_return_of_its_own_gets_the_isolated_outlet()
    {
        var plan = Rigs.Plan(
            "rig: Small\nsupplies:\n  wall: { isolated: false, outlets: { 1-2: 9 V DC 100 mA } }\n  brick: { isolated: true, outlets: { 1: 9 V DC 500 mA } }\n"
            + "loads: { A: { kind: analog drive, label: 9 V 20 mA, isolate: true }, B: { kind: analog drive, label: 9 V 20 mA }, C: { kind: analog drive, label: 9 V 20 mA } }\n");
        Assert.Equal(["wall/1 B", "wall/2 C", "brick/1 A"], plan.Rig.Wired!.Value.Items.Select(feed => $"{feed.From} {feed.To}"));
        Assert.Equal(0, Level(plan, "noise findings"));
    }

    [Fact]
    public void A_load_of_unknown_draw_is_fed_alone()
    {
        var plan = Rigs.Plan("rig: Small\nsupplies: { wall: { outlets: { 1: 9 V DC 500 mA } } }\nloads: { A: { label: 9 V }, B: { label: 9 V 20 mA }, C: { label: 9 V 20 mA } }\nleads: { chain: { type: daisy chain } }\n");
        Assert.Equal("A", plan.Unfed.ToString());
    }

    [Fact]
    public void A_supply_for_other_mains_feeds_nothing()
    {
        var plan = Rigs.Plan("rig: Abroad\nmains: 230 V 50 Hz\nsupplies: { lump: { label: \"INPUT 120V~ 60Hz OUTPUT 9V DC 1A\", outlets: { 1: \"\" } } }\nloads: { A: { label: 9 V 20 mA } }\n");
        Assert.Empty(plan.Rig.Wired!.Value);
        Assert.Equal(PlanStatus.Infeasible, plan.Status);
    }

    [Fact]
    public void The_same_rig_gives_the_same_plan()
    {
        var rig = Rigs.Example(Path.Combine(AppContext.BaseDirectory, "examples", "festival.rig.yaml"));
        var first = RigPlanner.Plan(rig, new PlanOptions { TimeLimit = TimeSpan.FromMinutes(1) }, TestContext.Current.CancellationToken);
        var second = RigPlanner.Plan(rig, new PlanOptions { TimeLimit = TimeSpan.FromMinutes(1) }, TestContext.Current.CancellationToken);
        Assert.Equal(first.Rig.Wired, second.Rig.Wired);
        Assert.Equal(first.Objective, second.Objective);
    }

    [Fact]
    public void A_search_cancelled_before_it_began_proves_nothing()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var plan = RigPlanner.Plan(Rigs.Read("rig: Small\nloads: { A: { label: 9 V 20 mA } }\nsupplies: { wall: { outlets: { 1: 9 V DC 1 A } } }\n"), new PlanOptions(), cancelled.Token);
        Assert.Equal(PlanStatus.Feasible, plan.Status);
        PlanAssert.IsSafe(plan);
        Assert.All(plan.Objective, level => Assert.True(level.Bound <= level.Value));
    }

    private static decimal Level(PlanResult plan, string name) => plan.Objective.Items.Single(level => level.Name == name).Value;
}
