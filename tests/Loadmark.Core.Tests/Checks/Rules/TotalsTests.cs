using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Limits of banks and supplies, in amps and in watts (P = V·I, OpenStax University Physics vol. 2, section 9.5).</summary>
public sealed class TotalsTests
{
    private static readonly string[] Totals = ["bank-overload", "supply-overload", "thin-headroom"];

    private static SupplyTotal InAmps(decimal amps) => new(new Amps(amps), null);

    private static SupplyTotal InWatts(decimal watts) => new(null, new Watts(watts));

    private static RigBuilder Brick(SupplyTotal? total, SupplyTotal? left = null) => New()
        .Supply("brick", supply => supply with { Total = total, Banks = left is null ? [] : [new Bank("left", left)] })
        .Outlet("1", Plate.Dc(9, 1000), InBank("left")).Outlet("2", Plate.Dc(12, 1000), InBank("left")).Outlet("3", Plate.Dc(18, 1000), InBank("right"))
        .Load("A", Plate.Dc(9, 200)).Load("B", Plate.Dc(12, 300)).Load("C", Plate.Dc(18, 400)).Feed("brick/1", "A").Feed("brick/2", "B").Feed("brick/3", "C");

    [Theory]
    [InlineData("0.5", null)] // 200 mA + 300 mA, exactly the limit
    [InlineData("0.499", "A 200 mA + B 300 mA = 500 mA > 499 mA")]
    public void A_bank_counts_its_own_outlets_only(string amps, string? working)
    {
        var result = Brick(null, InAmps(decimal.Parse(amps))).Check(rig => rig with { Headroom = 0 });
        if (working is null)
        {
            Expect.Good(result);
            return;
        }

        var finding = Expect.Breaks(result, "bank-overload", working);
        Assert.Equal("bank left of brick carries 500 mA and can give 499 mA.", finding.Message);
        Assert.Equal(["brick", "A", "B"], finding.Subjects);
        Assert.Equal("Move A (200 mA) to an outlet outside the bank.", finding.Remedy);
    }

    [Theory]
    [InlineData("12.6", null)] // 9 V × 200 mA + 12 V × 300 mA + 18 V × 400 mA = 12.6 W
    [InlineData("12.5", "A 1.8 W + B 3.6 W + C 7.2 W = 12.6 W > 12.5 W")]
    public void A_supply_that_prints_watts_counts_each_draw_with_its_outlets_voltage(string watts, string? working)
    {
        var result = Brick(InWatts(decimal.Parse(watts))).Check(rig => rig with { Headroom = 0 });
        if (working is null)
            Expect.Good(result);
        else
            Assert.Equal("Move A (1.8 W) to another supply.", Expect.Breaks(result, "supply-overload", working).Remedy);
    }

    [Theory]
    [InlineData("0.9", null)]
    [InlineData("0.89", "A 200 mA + B 300 mA + C 400 mA = 900 mA > 890 mA")]
    public void A_supply_that_prints_amps_counts_amps(string amps, string? working)
    {
        var result = Brick(InAmps(decimal.Parse(amps))).Check(rig => rig with { Headroom = 0 });
        if (working is null)
            Expect.Good(result);
        else
            Expect.Breaks(result, "supply-overload", working);
    }

    [Fact]
    public void Both_totals_count_where_both_are_printed()
    {
        var result = Brick(new SupplyTotal(new Amps(0.8m), new Watts(10))).Check();
        Assert.Equal(2, result.Findings.Count(finding => finding.Rule == "supply-overload"));
    }

    [Fact]
    public void Headroom_is_asked_of_totals_too()
    {
        Expect.Breaks(Brick(InWatts(13)).Check(), "thin-headroom", "A 1.8 W + B 3.6 W + C 7.2 W = 12.6 W > 90 % × 13 W = 11.7 W");
        Expect.Keeps(Brick(InWatts(14)).Check(), Totals); // 90 % of 14 W is exactly 12.6 W
        Expect.Good(Brick(InWatts(14)).Check());
    }

    [Fact]
    public void Rounding_of_a_quotient_is_no_overload()
    {
        // 6 W ÷ 9 V has no end; multiplied by 9 V again it must still be 6 W.
        var result = New().Load("preamp-1", Plate.Dc(9, watts: 6)).Supply("brick", supply => supply with { Total = InWatts(6) }).Outlet("1", Plate.Dc(9, 1000))
            .Feed("brick/1", "preamp-1").Check(rig => rig with { Headroom = 0 });
        Expect.Keeps(result, Totals);
    }

    [Fact]
    public void Loads_in_parallel_count_once_in_all_and_by_limits_on_each()
    {
        RigBuilder Rig(decimal total) => New().Load("preamp-2", Plate.Dc(9, 300)).Supply("brick", supply => supply with { Total = InAmps(total) })
            .Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 500)).Parallel("brick/1 brick/2", "preamp-2");
        Expect.Keeps(Rig(0.35m).Check(), Totals);
        Expect.Breaks(Rig(0.29m).Check(), "supply-overload", "preamp-2 300 mA > 290 mA");
        Assert.Equal([0.05m, 0.25m], Rig(1).Check().Outlets.Select(outlet => Math.Round(outlet.Run!.Value.Value, 12)));
    }

    [Fact]
    public void Across_two_supplies_each_carries_the_share_of_its_outlet()
    {
        var result = New().Load("preamp-2", Plate.Dc(9, 300)).Supply("one", supply => supply with { Total = InAmps(0.06m) }).Outlet("1", Plate.Dc(9, 100))
            .Supply("two", supply => supply with { Total = InAmps(0.2m) }).Outlet("1", Plate.Dc(9, 500)).Parallel("one/1 two/1", "preamp-2").Check();
        Expect.Breaks(result, "supply-overload", "preamp-2 250 mA > 200 mA");
    }

    [Fact]
    public void Loads_in_series_draw_on_each_outlet_of_their_supply()
    {
        var result = New().Load("preamp-2", Plate.Dc(18, 100)).Supply("brick", supply => supply with { Total = InWatts(1.7m) })
            .Outlet("1", Plate.Dc(9, 200)).Outlet("2", Plate.Dc(9, 200)).Series("brick/1 brick/2", "preamp-2").Check();
        Expect.Breaks(result, "supply-overload", "preamp-2 1.8 W > 1.7 W");
    }

    [Fact]
    public void What_is_not_known_is_told_for_every_limit_it_bears_on()
    {
        var draw = Brick(InWatts(20), InAmps(2)).Load("X-01", Plate.Dc(9), load => load with { Kind = null }).Lead("chain", LeadType.DaisyChain, 2)
            .Outlet("4", Plate.Dc(9, 1000), InBank("left")).Feed("brick/4", "X-01").Check();
        Expect.CannotTell(draw, "bank-overload", "What X-01 asks of bank left of brick is not known: without it it carries 500 mA of 2 A.");
        Expect.CannotTell(draw, "supply-overload", "What X-01 asks of brick in all is not known");

        var volts = One(Plate.AmpsOnly(500), Plate.Dc(9, 100)).Check(rig => rig with { Supplies = [rig.Supplies[0] with { Total = InWatts(5) }] });
        Expect.CannotTell(volts, "supply-overload", "What drive-3 asks of brick in all is not known");
    }

    [Fact]
    public void The_supplys_label_is_the_total_of_several_outlets_and_the_limit_of_one()
    {
        var several = New().Load("A", Plate.Dc(9, 3000)).Load("B", Plate.Dc(9, 3000)).Supply("wall", supply => supply with { Label = Plate.Dc(9, watts: 45) })
            .Outlet("1", Plate.Empty).Outlet("2", Plate.Empty).Feed("wall/1", "A").Feed("wall/2", "B").Check();
        Expect.Breaks(several, "supply-overload", "A 27 W + B 27 W = 54 W > 45 W");

        // 9 V at 5 A is 45 W.
        var one = New().Load("A", Plate.Dc(9, 3000)).Supply("wall", supply => supply with { Label = Plate.Dc(9, watts: 45) })
            .Outlet("1", Plate.Empty).Feed("wall/1", "A").Check();
        Assert.Equal(5m, one.Outlets[0].Limit!.Value.Value);
        Expect.Breaks(one, "figure-derived", "45 W ÷ 9 V = 5 A");
    }

    [Fact]
    public void A_supply_that_feeds_nothing_is_not_judged() => Expect.Open(New().Supply("brick", supply => supply with { Total = InAmps(0) }).Outlet("1", Plate.Dc(9, 100)).Check());
}
