using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Reference.Rules;

/// <summary>Rules of thumb of the trade, through the checker: common practice, no source.</summary>
[Trait("Source", "common practice, no source")]
public sealed class CommonPracticeTests
{
    [Fact(DisplayName = "A 100 mA load on a 2 A outlet leaves 1.9 A (common practice, no source)")]
    public void Small_load_leaves_the_rest()
    {
        var result = SmallRig.Check("9V⎓ 2A", SmallRig.Load("drive-3", "9V DC centre negative", 100));

        var outlet = Assert.Single(result.Outlets);
        Assert.Equal(new Amps(2), outlet.Limit);
        Assert.Equal(new Amps(0.1m), outlet.Run);
        Assert.Equal(new Amps(1.9m), outlet.Limit - outlet.Run);
        Assert.DoesNotContain(result.Findings, finding => finding.Severity >= Severity.Fails);
    }

    [Fact(DisplayName = "An outlet printed 9 V 45 W gives 5 A (common practice, no source)")]
    public void Watts_give_the_limit()
    {
        var result = SmallRig.Check("9V⎓ 45W", SmallRig.Load("drive-3", "9V DC centre negative", 100));

        Assert.Equal(new Amps(5), Assert.Single(result.Outlets).Limit);
    }

    [Fact(DisplayName = "12 V into a 9 V load is harm (common practice, no source)")]
    public void Too_many_volts_harm()
    {
        var result = SmallRig.Check("12V⎓ 500mA", SmallRig.Load("drive-3", "9V DC centre negative", 100));

        var finding = Assert.Single(SmallRig.Of(result, "over-voltage"));
        Assert.Equal(Severity.Harm, finding.Severity);
        Assert.Contains("drive-3", finding.Subjects);
        Assert.Equal(Severity.Harm, result.Verdict);
    }

    [Fact(DisplayName = "9 V into a 9 V load is no harm (common practice, no source)")]
    public void Equal_volts_do_not_harm() => Assert.Empty(
        SmallRig.Of(SmallRig.Check("9V⎓ 500mA", SmallRig.Load("drive-3", "9V DC centre negative", 100)), "over-voltage"));

    [Theory(DisplayName = "A 1 A adaptor feeds a chain while the sum is at most 1 A (common practice, no source)")]
    [InlineData("0.9 A", 200, false, false)]
    [InlineData("0.901 A", 201, false, true)]
    [InlineData("1.000 A", 300, false, true)]
    [InlineData("1.001 A", 301, true, false)]
    public void Chain_is_fed_up_to_the_limit(string sum, decimal last, bool overloaded, bool thin)
    {
        var result = SmallRig.Check(
            "9V⎓ 1A",
            SmallRig.Load("drive-3", "9V DC centre negative", 165),
            SmallRig.Load("chorus-1", "9V DC centre negative", 280),
            SmallRig.Load("tremolo-2", "9V DC centre negative", 255),
            SmallRig.Load("delay-2", "9V DC centre negative", last));

        Assert.True(QuantityReader.TryRead<Ampere>(sum, out var expected, out var problem), problem);
        Assert.Equal(expected, Assert.Single(result.Outlets).Run);
        Assert.Equal(overloaded, SmallRig.Of(result, "outlet-overload").Count > 0);
        Assert.Equal(thin, SmallRig.Of(result, "thin-headroom").Count > 0);
        Assert.All(SmallRig.Of(result, "outlet-overload"), finding => Assert.Equal(Severity.Fails, finding.Severity));
    }

    [Fact(DisplayName = "An 80 mA load on a 500 mA outlet is safe but ties capacity up (common practice, no source)")]
    public void Small_load_on_a_large_outlet_is_safe_and_idle()
    {
        var result = CheckTwoOutlets("9V⎓ 100mA", feedSmall: false);

        Assert.False(result.IsRefused);
        var finding = Assert.Single(SmallRig.Of(result, "idle-capacity"));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("brick/2", finding.Subjects);
    }

    [Fact(DisplayName = "No capacity is tied up where no smaller outlet would do (common practice, no source)")]
    public void Small_load_is_not_idle_without_a_smaller_outlet()
    {
        Assert.Empty(SmallRig.Of(CheckTwoOutlets("9V⎓ 50mA", feedSmall: false), "idle-capacity"));
        Assert.Empty(SmallRig.Of(CheckTwoOutlets("9V⎓ 100mA", feedSmall: true), "idle-capacity"));
    }

    [Theory(DisplayName = "What is not known and could harm is found out first (common practice, no source)")]
    [InlineData("9V⎓ 500mA", "9V DC centre negative", "reversed-polarity")] // the polarity of a lone adaptor is anyone's guess
    [InlineData("12V⎓ 500mA centre negative", "12V DC", "reversed-polarity")] // and so is that of a load for another voltage than 9 V
    [InlineData("9V⎓ 500mA centre negative", "", "over-voltage")] // a bare label tells nothing
    public void Not_known_is_unsure(string outlet, string label, string rule)
    {
        var result = SmallRig.Check(outlet, SmallRig.Load("drive-3", label, 20));

        Assert.Equal(Severity.Unsure, result.Verdict);
        Assert.Contains(SmallRig.Of(result, rule), static finding => finding.Severity == Severity.Unsure);
    }

    [Fact(DisplayName = "A pedal of 9 V is taken as centre negative, as a note (common practice, no source)")]
    public void Conventions_of_the_trade_are_notes()
    {
        var result = SmallRig.Check("9V⎓ 500mA centre negative", SmallRig.Load("drive-3", "9V DC", 20));

        Assert.Equal(Severity.Note, result.Verdict);
        Assert.Equal(Severity.Note, Assert.Single(SmallRig.Of(result, "figure-assumed")).Severity);
    }

    [Theory(DisplayName = "Analog loads run on half their voltage, with less headroom; digital ones do not (common practice, no source)")]
    [InlineData("analog drive", "8.4V", Severity.Margin)]
    [InlineData("analog drive", "4.5V", Severity.Margin)]
    [InlineData("analog drive", "4.4V", Severity.Fails)]
    [InlineData("digital", "8.4V", Severity.Margin)]
    [InlineData("digital", "8V", Severity.Fails)]
    [InlineData("valve", "8V", Severity.Fails)]
    [InlineData(null, "8V", Severity.Fails)]
    public void Too_little_starves_or_stops(string? kind, string volts, Severity expected)
    {
        var load = SmallRig.Load("drive-3", "9V DC centre negative", 20) with { Kind = kind is null ? null : new LoadKind(kind) };
        var result = SmallRig.Check($"{volts}⎓ 500mA centre negative 5.5x2.1", load);

        Assert.Equal(expected, Assert.Single(result.Findings, static finding => finding.Rule == RuleId.UnderVoltage || finding.Rule == RuleId.VoltageLow).Severity);
        Assert.Equal(expected, result.Verdict);
    }

    [Fact(DisplayName = "Nothing plugged in is open, not good (common practice, no source)")]
    public void Nothing_plugged_in_is_open()
    {
        var result = NameplateCheck.Of(new Rig { Name = "Boxed", Loads = [SmallRig.Load("drive-3", "9V DC centre negative", 20)], Supplies = [SmallRig.Supply(SmallRig.Outlet("1", "9V⎓ 500mA"))] });

        Assert.Equal(Severity.Open, result.Verdict);
        Assert.True(result.IsRefused);
    }

    /// <summary>A load of 80 mA, a small outlet 1 and an outlet 2 of 500 mA; the other outlet stays free.</summary>
    private static CheckResult CheckTwoOutlets(string smallOutlet, bool feedSmall) => NameplateCheck.Of(new Rig
    {
        Name = "Two outlets",
        Loads = [SmallRig.Load("chorus-1", "9V DC centre negative", 80)],
        Supplies = [SmallRig.Supply(SmallRig.Outlet("1", smallOutlet), SmallRig.Outlet("2", "9V⎓ 500mA"))],
        Wired = [SmallRig.Feed(feedSmall ? "1" : "2", "chorus-1")],
    });
}
