using Loadmark.Core.Checks;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Tests;

/// <summary>What plans and purchases do where a label does not say what decides.</summary>
public sealed class DoubtTests
{
    private const string Level = "loads on what is not known to suit, or under their voltage";
    private const string Mains = "INPUT 100-240V~ 50/60Hz";

    /// <summary>
    /// A load that is printed "AC/DC" takes either, and a plan must say what the rules say. Seen failing with a planner that compared forms
    /// for itself: "cannot be fed".
    /// </summary>
    [Theory]
    [InlineData("9V AC 500mA")]
    [InlineData("9V DC 500mA centre negative")]
    [InlineData("9V DC 500mA centre positive")]
    public void A_load_for_either_kind_of_current_is_fed_from_either(string outlet)
    {
        var plan = Rigs.Plan($"rig: Either\nsupplies: {{ wall: {{ label: \"{Mains}\", outlets: {{ 1: \"{outlet}\" }} }} }}\nloads: {{ A: {{ label: 9V AC/DC 100mA, kind: analog drive }} }}\n");
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(0, LevelOf(plan));
        Assert.True(plan.Check.Verdict < Severity.Unsure, string.Join('\n', plan.Check.Findings));
    }

    [Fact]
    public void A_supply_of_alternating_current_is_bought_for_a_load_for_either()
    {
        var bought = Buy("rig: Either\nmains: 230 V 50 Hz\nloads: { A: { label: 9V AC/DC 100mA } }\n", $"lump,18,420,{Mains} OUTPUT 9V AC 1A,,,,");
        Assert.Equal(BuyStatus.Optimal, bought.Status);
        Assert.Equal(18, bought.Cheapest!.Price);
    }

    /// <summary>
    /// An a.c. load and d.c. ones are kept apart where their grounds meet and the outlets share a return: one of them stays dark, on one
    /// supply and on two that are alike.
    /// </summary>
    [Theory]
    [InlineData(1, "[A, D, amp]", 1)]
    [InlineData(1, "[D, amp]", 0)]
    [InlineData(1, "[A, amp]", 0)]
    [InlineData(2, "[A, D, amp]", 0)]
    public void Alternating_and_direct_current_are_not_planned_onto_one_return(int supplies, string signal, int unfed)
    {
        var listed = string.Concat(Enumerable.Range(1, supplies).Select(static one =>
            $"  brick {one}: {{ label: \"{Mains}\", isolated: false, outlets: {{ 1: 9V AC 500mA, 2-3: 9V DC 100mA centre negative }} }}\n"));
        var plan = Rigs.Plan(
            $"rig: Both\nsupplies:\n{listed}loads: {{ A: {{ label: 9V AC 100mA, kind: analog drive }}, "
            + $"D: {{ label: 9V DC 50mA centre negative, kind: analog drive }} }}\nsignal: {signal}\n");
        Assert.Equal(unfed, plan.Unfed.Count);
        Assert.DoesNotContain(plan.Check.Findings.Items, static finding => finding.Rule == RuleId.AcShared);
    }

    [Fact]
    public void What_is_known_to_suit_comes_before_what_is_not()
    {
        var plan = Rigs.Plan(
            $"rig: Known\nsupplies:\n  one: {{ label: \"{Mains} OUTPUT 12V DC 500mA\", outlets: {{ 1: \"\" }} }}\n"
            + $"  two: {{ label: \"{Mains} OUTPUT 12V DC 1A centre negative\", outlets: {{ 1: \"\" }} }}\nloads: {{ A: {{ label: 12V DC 300mA centre negative }} }}\n");
        Assert.Equal("two/1", Assert.Single(plan.Rig.Wired!.Value).From.ToString());
        Assert.Equal(0, LevelOf(plan));
    }

    /// <summary>That a load cannot be fed is proven only of what is known: where nothing better is there, it is fed and the rules say what to look at.</summary>
    [Theory]
    [InlineData("12V DC 500mA", "12V DC 300mA centre negative")]
    [InlineData("12V 500mA", "12V DC 300mA centre negative")]
    [InlineData("500mA", "9V DC 300mA centre negative")]
    [InlineData("9V DC 500mA centre negative", "300mA")]
    public void A_load_is_fed_from_what_may_suit_and_the_rules_say_unsure(string outlet, string load)
    {
        var plan = Rigs.Plan($"rig: Doubt\nsupplies: {{ wall: {{ label: \"{Mains}\", outlets: {{ 1: \"{outlet}\" }} }} }}\nloads: {{ A: {{ label: {load}, kind: analog drive }} }}\n");
        Assert.Empty(plan.Unfed);
        Assert.Equal(1, LevelOf(plan));
        Assert.Equal(Severity.Unsure, plan.Check.Verdict);
    }

    [Fact]
    public void An_analog_load_runs_on_less_than_its_voltage_and_that_is_counted()
    {
        const string supply = $"rig: Low\nsupplies: {{ wall: {{ label: \"{Mains} OUTPUT 9V DC 500mA centre negative\", outlets: {{ 1: \"\" }} }} }}\n";
        var analog = Rigs.Plan(supply + "loads: { A: { label: 18V DC 50mA centre negative, kind: analog drive } }\n");
        Assert.Empty(analog.Unfed);
        Assert.Equal(1, LevelOf(analog));
        var digital = Rigs.Plan(supply + "loads: { A: { label: 18V DC 50mA centre negative, kind: digital delay } }\n");
        Assert.Equal(PlanStatus.Infeasible, digital.Status);
    }

    [Fact]
    public void A_load_whose_ground_is_not_known_shares_a_return_with_none()
    {
        const string rig = "rig: Ground\nsupplies: { brick: { isolated: false, outlets: { 1-2: 9 V DC 100 mA centre positive } } }\nloads: { A: { label: 9V DC 20mA centre positive }, B: { label: 9V DC 20mA centre positive";
        Assert.Single(Rigs.Plan(rig + " } }\n").Unfed);
        Assert.Single(Rigs.Plan(rig + ", ground: positive } }\n").Unfed);
        Assert.Empty(Rigs.Plan(rig.Replace("20mA centre positive }", "20mA centre positive, ground: positive }", StringComparison.Ordinal) + ", ground: positive } }\n").Unfed);
    }

    [Theory]
    [InlineData("", 1)]
    [InlineData("signal: [A, B, amp]\n", 1)]
    [InlineData("signal: [A, amp]\n", 0)]
    public void Two_loads_whose_grounds_meet_take_no_current_from_one_winding(string signal, int dark)
    {
        var plan = Rigs.Plan("rig: Winding\nsupplies: { lump: { outlets: { 1-2: 9 V AC 1 A } } }\nloads: { A: { label: 9V AC 20mA }, B: { label: 9V AC 20mA } }\n" + signal);
        Assert.Equal(dark, plan.Unfed.Count);
        PlanAssert.IsSafe(plan);
    }

    [Theory]
    [InlineData("plain,9,90,INPUT 230V~ 50Hz OUTPUT 9V DC 300mA centre negative,,,,", "may stand at 12.6 V")]
    [InlineData($"mute,9,90,{Mains} OUTPUT 9V DC 300mA,,,,", "its polarity is not known")]
    public void Money_is_not_spent_on_what_is_not_known_to_suit(string offer, string because)
    {
        const string rig = "rig: Money\nmains: 230 V 50 Hz\nloads: { A: { label: 9V DC 100mA centre negative } }\n";
        var alone = Buy(rig, offer);
        Assert.Equal(BuyStatus.Infeasible, alone.Status);
        Assert.Contains(because, Assert.Single(alone.LeftOut).Because, StringComparison.Ordinal);
        var both = Buy(rig, offer, $"known,30,90,{Mains} OUTPUT 9V DC 300mA centre negative,,,,");
        Assert.Equal(30, both.Cheapest!.Price);
        Assert.True(both.Cheapest.Plan.Check.Verdict < Severity.Unsure);
    }

    [Fact]
    public void What_is_owned_may_be_doubtful_all_the_same()
    {
        var bought = Buy(
            $"rig: Owned\nmains: 230 V 50 Hz\nsupplies: {{ own: {{ label: \"{Mains} OUTPUT 9V DC 300mA\", outlets: {{ 1: \"\" }} }} }}\nloads: {{ A: {{ label: 9V DC 100mA centre negative }} }}\n",
            $"known,30,90,{Mains} OUTPUT 9V DC 300mA centre negative,,,,");
        Assert.Equal(0, bought.Cheapest!.Price);
        Assert.Equal(Severity.Unsure, bought.Cheapest.Plan.Check.Verdict);
    }

    [Fact]
    public void Reasons_say_what_stands_against_each_outlet_and_what_mends_it()
    {
        var plan = Rigs.Plan(
            "rig: Reasons\nsupplies: { brick: { isolated: true, outlets: { 1-2: 9 V DC 100 mA centre negative, 3: 18 V DC 100 mA centre positive } } }\n"
            + "loads: { A: { label: 9V DC 20mA centre positive } }\n");
        var because = Assert.Single(PlanExplainer.Explain(plan, new PlanOptions(), TestContext.Current.CancellationToken).Reasons).Because;
        Assert.Contains("brick/1, brick/2: it is centre negative, A is centre positive (a reversing lead mends it).", because, StringComparison.Ordinal);
        Assert.Contains("brick/3: it gives 18 V, A is made for 9 V.", because, StringComparison.Ordinal);
    }

    private static decimal LevelOf(PlanResult plan) => plan.Objective.Items.Single(static level => level.Name == Level).Value;

    private static BuyResult Buy(string rig, params string[] offers)
    {
        var reading = PriceListReader.Read("supply,price,mass_g,label,outlets,total,isolated,mains\n" + string.Join('\n', offers) + "\n", "list.csv");
        return SupplyBuyer.Buy(Rigs.Read(rig), [.. reading.Offers!], new BuyOptions(), TestContext.Current.CancellationToken);
    }
}
