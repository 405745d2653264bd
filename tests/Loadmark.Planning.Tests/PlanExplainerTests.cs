using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Tests;

/// <summary>Explanations: every set named is seen to fail alone, every change is seen to work.</summary>
public sealed class PlanExplainerTests
{
    private static readonly PlanOptions Options = new();

    [Fact]
    public void Nothing_is_explained_where_everything_is_fed() =>
        Assert.Empty(Explain(Rig(["9V DC 100mA"], ["9V DC 50mA"])).Reasons);

    [Fact]
    public void A_load_that_no_outlet_suits_stands_alone()
    {
        var explanation = Explain(Rig(["9V DC 100mA", "9V DC 100mA"], ["9V DC 50mA", "18V DC 40mA"]));
        var reason = Assert.Single(explanation.Reasons);
        Assert.Equal(["L2"], reason.Loads);
        Assert.Contains("18 V d.c., polarity not known, 40 mA. s/1, s/2: it gives 9 V, L2 is made for 18 V.", reason.Because, StringComparison.Ordinal);
        Assert.Contains("one more outlet of 18 V d.c. 50 mA", explanation.Changes.Items.Select(static change => change.Text));
        Assert.Contains("take L2 off", explanation.Changes.Items.Select(static change => change.Text));
    }

    [Fact]
    public void Loads_that_compete_are_named_together_and_the_set_is_minimal()
    {
        var rig = Rig(["9V DC 100mA", "9V DC 500mA"], ["9V DC 300mA", "9V DC 300mA", "9V DC 20mA"]);
        var reason = Assert.Single(Explain(rig).Reasons);
        Assert.Equal(["L1", "L2"], reason.Loads);
        Assert.Contains("one outlet suits any of them (s/2)", reason.Because, StringComparison.Ordinal);

        Assert.NotEmpty(Plan(Without(rig, reason.Loads.Items, keep: true)).Unfed);
        foreach (var load in reason.Loads)
            Assert.Empty(Plan(Without(rig, [load], keep: true)).Unfed);
    }

    [Fact]
    public void A_change_that_does_not_mend_it_is_not_offered()
    {
        var changes = Explain(Rig(["9V DC 100mA"], ["9V DC 80mA", "9V DC 80mA"])).Changes.Items.Select(static change => change.Text).ToList();
        Assert.DoesNotContain(changes, change => change.Contains("chain", StringComparison.Ordinal));
        Assert.Contains("one more outlet of 9 V 100 mA", changes);
    }

    [Fact]
    public void Two_loads_that_fit_one_outlet_need_only_a_chain() =>
        Assert.Equal("one more daisy chain with 2 plugs, so that L1 and L2 share s/1", Explain(Rig(["9V DC 100mA"], ["9V DC 20mA", "9V DC 20mA"])).Changes[0].Text);

    [Fact]
    public void Every_load_left_dark_is_named_and_what_it_lacks_is_told()
    {
        var rig = Rig(["9V DC 100mA", "9V DC 100mA"], ["9V DC 20mA", "9V DC 30mA", "9V DC 40mA", "9V DC 60mA", "9V DC 90mA", "18V DC 20mA"]);
        var plan = Plan(rig);
        var explanation = Explain(rig);
        Assert.Equal(4, plan.Unfed.Count);
        Assert.Equal(
            plan.Unfed.Items.Order(StringComparer.Ordinal),
            explanation.Reasons.Items.SelectMany(static reason => reason.Loads.Items.Concat(reason.AlsoDark.Items)).Distinct()
                .Where(plan.Unfed.Items.Contains).Order(StringComparer.Ordinal));
        Assert.Equal(plan.Unfed.Items, explanation.Dark.Items.Select(static dark => dark.Load));
        Assert.Equal("18 V d.c. 50 mA", explanation.Dark.Items.Single(static dark => dark.Load == "L6").Outlet);
    }

    /// <summary>One load is dark because of a thing and others because of another: each has a reason of its own.</summary>
    [Fact]
    public void Dark_loads_with_different_causes_have_different_reasons()
    {
        var explanation = Explain(Rig(["9V DC 100mA", "18V DC 100mA"], ["9V DC 20mA", "9V DC 20mA", "18V DC 20mA", "18V DC 20mA"]));
        Assert.Equal(["L1, L2", "L3, L4"], explanation.Reasons.Items.Select(static reason => reason.Loads.ToString()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Where_no_single_thing_mends_it_several_small_ones_together_are_tried()
    {
        // Two loads are the other way round, and for one there is no voltage.
        var rig = Rig(
            ["9V DC 100mA centre negative", "9V DC 100mA centre negative", "9V DC 100mA centre negative"],
            ["9V DC 80mA centre positive", "9V DC 80mA centre positive", "9V DC 80mA centre negative", "18V DC 80mA centre negative"]);
        var explanation = Explain(rig);
        Assert.Equal("2 more reversing leads and one more outlet of 18 V d.c. 100 mA centre negative", explanation.Changes[0].Text);
        var mended = Plan(explanation.Changes[0].Rig);
        Assert.Empty(mended.Unfed);
        PlanAssert.IsSafe(mended);
    }

    [Fact]
    public void Where_more_than_three_are_needed_none_of_those_offered_is_needless()
    {
        var rig = Rig(
            [.. Enumerable.Repeat("9V DC 100mA centre negative", 3)],
            [.. Enumerable.Repeat("9V DC 90mA centre positive", 3), .. Enumerable.Repeat("18V DC 90mA centre negative", 2)]);
        var change = Explain(rig).Changes[0];
        Assert.Equal("3 more reversing leads and 2 more outlets: 2 × 18 V d.c. 100 mA centre negative", change.Text);
        Assert.Empty(Plan(change.Rig).Unfed);
        Assert.NotEmpty(Plan(change.Rig with { Supplies = [.. change.Rig.Supplies.Items.Select(static supply => supply.Id == "more" ? supply with { Outlets = [supply.Outlets[0]] } : supply)] }).Unfed);
        Assert.NotEmpty(Plan(change.Rig with { Leads = [change.Rig.Leads[0] with { Count = 2 }] }).Unfed);
    }

    [Fact]
    public void Grounds_that_must_not_meet_are_named_as_such()
    {
        var rig = Rig(["9V DC 100mA", "9V DC 100mA"], ["9V DC 20mA", "9V DC 20mA"]);
        rig = rig with
        {
            Supplies = [rig.Supplies[0] with { Isolated = false }],
            Loads = [rig.Loads[0] with { Ground = Core.Gear.GroundSide.Positive }, rig.Loads[1]],
        };
        Assert.Contains("L1, L2 cannot both be fed at once: a load with positive ground", Assert.Single(Explain(rig).Reasons).Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Totals_that_do_not_suffice_are_named_as_such()
    {
        var rig = Rig(["9V DC 100mA", "9V DC 100mA"], ["9V DC 80mA", "9V DC 80mA"]);
        rig = rig with { Supplies = [rig.Supplies[0] with { Total = new SupplyTotal(new Amps(0.15m), null) }] };
        Assert.Contains("what the supplies can give in all", Assert.Single(Explain(rig).Reasons).Because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_supply_for_other_mains_is_named_as_such()
    {
        var rig = Rigs.Read("""
            rig: Abroad
            mains: 230 V 50 Hz
            loads:
              mixer-1: { label: 9V AC 900mA }
            supplies:
              lump: { label: "INPUT: 120V~ 60Hz", outlets: { 1: 9 V AC 1 A } }
            """);
        Assert.Equal("mixer-1 could be fed, but what would feed it is not for the mains here (lump/1).", Assert.Single(Explain(rig).Reasons).Because);
    }

    [Fact]
    public void Starts_that_do_not_fit_are_named_as_such()
    {
        var rig = Rig(["9V DC 200mA", "9V DC 200mA"], ["9V DC 50mA", "9V DC 50mA"]);
        rig = rig with
        {
            Supplies = [rig.Supplies[0] with { Total = new SupplyTotal(new Amps(0.2m), null) }],
            Loads = [.. rig.Loads.Items.Select(static load => load with { Start = new Core.Gear.TimedCurrent(new Amps(0.15m), null) })],
        };
        Assert.Contains("but not start together", Assert.Single(Explain(rig).Reasons).Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Headroom_that_leaves_no_limit_past_it_is_the_largest_that_does()
    {
        // 93 of 100 mA: 7 % stays free.
        var rig = Rig(["9V DC 100mA"], ["9V DC 93mA"]);
        Assert.Equal(["set headroom to 7 %: then no limit is past it"], Explain(rig).Changes.Items.Select(static change => change.Text));
        Assert.Empty(Explain(rig with { Headroom = 0.07m }).Changes);
        Assert.NotEmpty(Explain(rig with { Headroom = 0.08m }).Changes);
    }

    [Fact]
    public void No_headroom_is_offered_where_a_limit_is_met_exactly_only_none() =>
        Assert.Equal(["set headroom to 0 %: then no limit is past it"], Explain(Rig(["9V DC 100mA"], ["9V DC 100mA"])).Changes.Items.Select(static change => change.Text));

    [Fact]
    public void What_is_cancelled_claims_nothing()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var rig = Rig(["9V DC 100mA", "9V DC 500mA"], ["9V DC 300mA", "9V DC 300mA", "9V DC 20mA"]);
        var plan = RigPlanner.Plan(rig, Options, cancelled.Token);
        Assert.NotEmpty(plan.Rig.Wired!.Value);
        Assert.Equal(PlanStatus.Unknown, plan.Status);
        Assert.Empty(PlanExplainer.Explain(plan, Options, cancelled.Token).Changes);
    }

    private static PlanExplanation Explain(Rig rig) => PlanExplainer.Explain(Plan(rig), Options, TestContext.Current.CancellationToken);

    private static PlanResult Plan(Rig rig) => RigPlanner.Plan(rig, Options, TestContext.Current.CancellationToken);

    private static Rig Without(Rig rig, IEnumerable<string> ids, bool keep) =>
        rig with { Loads = [.. rig.Loads.Items.Where(load => ids.Contains(load.Id) == keep)] };

    private static Rig Rig(string[] outlets, string[] loads) => new()
    {
        Name = "r",
        Loads = [.. loads.Select((label, index) => new Load { Id = $"L{index + 1}", Label = NameplateReader.Read(label) })],
        Supplies = [new Supply { Id = "s", Isolated = true, Outlets = [.. outlets.Select((label, index) => new Outlet { Id = $"{index + 1}", Label = NameplateReader.Read(label) })] }],
        Wired = (ValueList<Feed>)[],
    };
}
