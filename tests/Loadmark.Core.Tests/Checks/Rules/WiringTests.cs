using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Loads fed by nothing or twice, outlets used twice, leads too short of plugs: common practice, no source.</summary>
public sealed class WiringTests
{
    private static RigBuilder Rig() => Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("A", Plate.Dc(9, 12)).Load("B", Plate.Dc(9, 12));

    [Fact]
    public void Nothing_plugged_in_is_open_and_neither_good_nor_fails()
    {
        foreach (var result in new[] { Rig().Check(rig => rig with { Wired = null }), Rig().Check() })
        {
            Expect.Keeps(result, "unfed");
            Assert.Equal(Severity.Open, result.Verdict);
            Assert.True(result.IsRefused);
        }
    }

    [Fact]
    public void What_is_worse_than_nothing_plugged_in_is_the_verdict()
    {
        var result = Rig().Supply("wall", supply => supply with { Mains = Plate.Mains(120, 120) }).Outlet("1", Plate.Dc(9, 100)).Check();
        Assert.Equal(Severity.Harm, result.Verdict);
    }

    [Fact]
    public void Unfed_loads_are_one_finding()
    {
        Assert.Equal("A and C are fed by nothing.", Expect.Breaks(Rig().Load("C", Plate.Dc(9, 10)).Feed("brick/1", "B").Check(), "unfed").Message);
        Assert.Equal("B is fed by nothing.", Expect.Breaks(Rig().Feed("brick/1", "A").Check(), "unfed").Message);
    }

    [Fact]
    public void A_rig_without_loads_is_open() => Expect.Open(New().Supply("brick").Outlet("1", Plate.Dc(9, 100)).Check());

    [Fact]
    public void A_load_on_two_feeds_is_fed_twice()
    {
        var finding = Expect.Breaks(Rig().Feed("brick/1", "A").Feed("brick/2", "A").Check(), "fed-twice", "2 feeds > 1 jack");
        Assert.Equal("A is on 2 feeds: brick/1 and brick/2. It has one jack.", finding.Message);
    }

    [Fact]
    public void A_load_named_twice_on_one_chain_is_fed_twice()
    {
        var finding = Expect.Breaks(Rig().Chain("brick/1", "A", "A").Feed("brick/2", "B").Check(), "fed-twice", "2 plugs > 1 jack");
        Assert.Equal("A is named 2 times on the feed from brick/1. It has one jack.", finding.Message);
    }

    [Fact]
    public void Outlets_that_are_joined_feed_a_load_once() =>
        Expect.Keeps(Rig().Parallel("brick/1 brick/2", "A").Check(), "fed-twice", "outlet-used-twice");

    [Fact]
    public void An_outlet_in_two_feeds_is_used_twice_even_when_one_of_them_joins_it()
    {
        var result = Rig().Parallel("brick/1 brick/2", "A").Feed("brick/2", "B").Check();
        var finding = Expect.Breaks(result, "outlet-used-twice", "2 leads > 1 socket");
        Assert.Equal("brick/2 is named 2 times in the wiring, for A and B. One lead goes into it.", finding.Message);
    }

    [Theory]
    [InlineData(LeadType.DaisyChain, 2, null)]
    [InlineData(LeadType.DaisyChain, 1, "2 loads > 1 plug")]
    [InlineData(LeadType.Straight, null, "2 loads > 1 plug")]
    [InlineData(LeadType.Reversing, 2, null)]
    public void A_lead_feeds_as_many_loads_as_it_has_plugs(LeadType type, int? plugs, string? working)
    {
        var result = Rig().Lead("lead", type, plugs).FeedOver("lead", "brick/1", "A", "B").Check();
        if (working is null)
            Expect.Keeps(result, "lead-short-of-plugs");
        else
            Assert.Equal(["lead", "brick/1", "A", "B"], Expect.Breaks(result, "lead-short-of-plugs", working).Subjects);
    }

    [Fact]
    public void A_plain_lead_feeds_one_load()
    {
        var finding = Expect.Breaks(Rig().Feed("brick/1", "A", "B").Check(), "lead-short-of-plugs", "2 loads > 1 plug");
        Assert.Equal("brick/1 feeds A and B over a plain lead, which has 1 plug for loads.", finding.Message);
        Assert.Equal("Use a daisy chain with 2 plugs or more.", finding.Remedy);
    }

    [Fact]
    public void A_chain_that_does_not_say_how_long_it_is_is_told()
    {
        var result = Rig().Lead("chain", LeadType.DaisyChain).FeedOver("chain", "brick/1", "A", "B").Check();
        Expect.Says(result, "lead-short-of-plugs", Severity.Margin, "it is enough only if it has 2 or more");
    }

    [Theory]
    [InlineData(null, true)] // one where the count is not given
    [InlineData(1, true)]
    [InlineData(2, false)]
    public void A_lead_is_in_as_many_feeds_as_there_are_of_it(int? count, bool isShort)
    {
        var result = Rig().Lead("chain", LeadType.DaisyChain, 5, count).FeedOver("chain", "brick/1", "A").FeedOver("chain", "brick/2", "B").Check();
        if (!isShort)
            Expect.Good(result);
        else
            Assert.Equal(["chain", "A", "B"], Expect.Breaks(result, "lead-short-of-plugs", "2 > 1").Subjects);
    }

    [Theory]
    [InlineData(LeadType.Series, Joint.Series, true)]
    [InlineData(LeadType.Parallel, Joint.Parallel, true)]
    [InlineData(LeadType.Parallel, Joint.Series, false)]
    [InlineData(LeadType.Series, Joint.Parallel, false)]
    [InlineData(LeadType.Straight, Joint.Series, false)]
    [InlineData(LeadType.DaisyChain, Joint.Parallel, false)]
    public void Outlets_are_joined_by_the_lead_for_it(LeadType type, Joint joint, bool fits)
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("A", Plate.Range(9, 18, 12)).Lead("lead", type, 1).Feed("brick/1 brick/2", "lead", at: null, joint, "A").Check();
        if (fits)
            Expect.Good(result);
        else
            Assert.StartsWith("Use a ", Expect.Breaks(result, "lead-short-of-plugs", $"{(type == LeadType.DaisyChain ? "daisy chain" : $"{type.ToString().ToLowerInvariant()} lead")} ≠ a {joint.ToString().ToLowerInvariant()} lead").Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_series_lead_has_an_end_too_many_for_one_outlet() =>
        Expect.Breaks(Rig().Lead("lead", LeadType.Series).FeedOver("lead", "brick/1", "A").Check(), "lead-short-of-plugs", "series lead ≠ a lead with one end for the supply");

    [Fact]
    public void Joined_outlets_without_a_named_lead_are_told() =>
        Expect.Says(
            Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("A", Plate.Dc(18, 12)).Feed("brick/1 brick/2", lead: null, at: null, Joint.Series, "A").Check(),
            "lead-short-of-plugs",
            Severity.Margin,
            "The lead that joins brick/1 + brick/2 is not named");
}
