using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

public sealed class StartOverloadTests
{
    private static RigBuilder Delay(decimal start, decimal? seconds, TimedCurrent? surge) =>
        New().Digital("delay-2", Plate.Dc(9, 210), Starts(start, seconds)).Supply("brick").Outlet("1", Plate.Dc(9, 500), outlet => outlet with { Surge = surge })
            .Feed("brick/1", "delay-2");

    private static TimedCurrent Surge(decimal amps, decimal? seconds = null) =>
        new(new Amps(amps), seconds is { } lasts ? new Seconds(lasts) : null);

    [Theory]
    [InlineData(500, false)] // exactly the limit
    [InlineData(501, true)]
    public void A_start_over_the_limit_breaks_it(int start, bool isBroken)
    {
        var result = Delay(start, 1.5m, surge: null).Check();
        if (!isBroken)
            Expect.Good(result);
        else
            Assert.Equal("brick/1 must give 501 mA while its load starts and can give 500 mA.", Expect.Breaks(result, "start-overload", "delay-2 501 mA > 500 mA").Message);
    }

    [Fact]
    public void A_surge_that_is_large_and_long_enough_bears_it()
    {
        Expect.Good(Delay(800, 1.5m, Surge(0.8m, 1.5m)).Check());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_surge_of_unknown_length_is_a_margin(bool startIsTimed)
    {
        var result = Delay(800, startIsTimed ? 1.5m : null, Surge(0.8m)).Check();
        var finding = Expect.Says(result, "start-overload", Severity.Margin, "brick/1 bears 800 mA for a moment; how long is not given, and its load asks for 800 mA while starting.");
        Assert.Equal("500 mA < delay-2 800 mA ≤ 800 mA", finding.Working);
        Assert.Empty(result.Untold);
    }

    [Fact]
    public void A_surge_that_is_too_small_is_named()
    {
        var finding = Expect.Breaks(Delay(900, 1.5m, Surge(0.8m, 2)).Check(), "start-overload", "delay-2 900 mA > 800 mA");
        Assert.EndsWith("can give 500 mA, 800 mA for a moment.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_surge_that_ends_before_the_start_does_not_help()
    {
        var finding = Expect.Breaks(Delay(800, 1.5m, Surge(1, 0.5m)).Check(), "start-overload", "delay-2 800 mA > 500 mA");
        Assert.EndsWith("; the 1 A it bears for 500 ms ends before delay-2 has started, which takes 1.5 s.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_start_of_unknown_length_against_a_surge_of_known_length_is_told()
    {
        var result = Delay(800, seconds: null, Surge(1, 0.5m)).Check();
        Expect.Says(result, "start-overload", Severity.Margin, "How long delay-2 takes to start is not given; brick/1 bears 1 A for 500 ms.");
    }

    [Fact]
    public void A_digital_load_without_a_start_figure_is_told_an_analog_one_is_not()
    {
        var digital = New().Digital("delay-2", Plate.Dc(9, 210)).Supply("brick").Outlet("1", Plate.Dc(9, 500)).Feed("brick/1", "delay-2").Check();
        Assert.Empty(digital.Findings);
        Assert.Equal(["delay-2"], Expect.CannotTell(digital, "start-overload", "The starting draw of delay-2 is not given").Subjects);
        Expect.Good(One(Plate.Dc(9, 500), Plate.Dc(9, 210)).Check());
    }

    [Fact]
    public void A_running_overload_is_not_told_again_as_a_start()
    {
        var result = One(Plate.Dc(9, 100), Plate.Dc(9, 120)).Check();
        Expect.Breaks(result, "outlet-overload");
        Expect.Keeps(result, "start-overload");
    }

    [Fact]
    public void A_big_digital_load_overwhelms_a_chain_at_start_only()
    {
        var result = New().Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 45)).Digital("delay-2", Plate.Dc(9, 300), Starts(900, 2))
            .Supply("wall").Outlet("1", Plate.Dc(9, 500)).Chain("wall/1", "drive-3", "chorus-1", "delay-2").Check();
        Expect.Keeps(result, "outlet-overload", "thin-headroom");
        var finding = Expect.Breaks(result, "start-overload", "drive-3 12 mA + chorus-1 45 mA + delay-2 900 mA = 957 mA > 500 mA");
        Assert.Equal("wall/1 must give 957 mA while its loads start and can give 500 mA.", finding.Message);
        Assert.Equal("Move delay-2 (900 mA) to another outlet.", finding.Remedy);
    }

    [Fact]
    public void The_same_sum_is_judged_against_a_bank_and_a_supply()
    {
        var result = New().Digital("delay-1", Plate.Dc(9, 200), Starts(400)).Digital("delay-2", Plate.Dc(9, 200), Starts(400))
            .Supply("brick", supply => supply with { Total = new SupplyTotal(null, new Watts(6)), Banks = [new Bank("left", new SupplyTotal(new Amps(0.7m), null))] })
            .Outlet("1", Plate.Dc(9, 500), InBank("left")).Outlet("2", Plate.Dc(9, 500), InBank("left"))
            .Feed("brick/1", "delay-1").Feed("brick/2", "delay-2").Check();
        var starts = result.Findings.Where(finding => finding.Rule == "start-overload").ToList();
        Assert.Equal(["delay-1 400 mA + delay-2 400 mA = 800 mA > 700 mA", "delay-1 3.6 W + delay-2 3.6 W = 7.2 W > 6 W"], starts.Select(finding => finding.Working));
        Assert.Equal("Move delay-1 (400 mA) to an outlet outside the bank.", starts[0].Remedy);
        Assert.Equal("Move delay-1 (3.6 W) to another supply.", starts[1].Remedy);
    }

    [Fact]
    public void Surges_of_outlets_in_parallel_add_and_the_shortest_counts()
    {
        Outlet Bears(Outlet outlet, decimal seconds) => outlet with { Surge = Surge(0.4m, seconds) };
        RigBuilder Rig(decimal seconds) => New().Digital("delay-2", Plate.Dc(9, 150), Starts(700, seconds)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 100), outlet => Bears(outlet, 1)).Outlet("2", Plate.Dc(9, 100), outlet => Bears(outlet, 3)).Parallel("brick/1 brick/2", "delay-2");
        Expect.Keeps(Rig(1).Check(), "start-overload");
        Expect.Breaks(Rig(2).Check(), "start-overload", "delay-2 700 mA > 200 mA");
    }
}
