using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>A small load on a large outlet is safe but ties capacity up (common practice, no source).</summary>
public sealed class IdleCapacityTests
{
    private static Core.Checks.CheckResult Check(
        decimal draw, decimal spare, Func<Outlet, Outlet>? change = null, Func<Supply, Supply>? supply = null, decimal start = 0) =>
        New().Load("drive-3", Plate.Dc(9, draw), start > 0 ? Starts(start) : null).Supply("brick", supply)
            .Outlet("1", Plate.Dc(9, 500)).Outlet("2", Plate.Dc(9, spare), change).Feed("brick/1", "drive-3").Check();

    [Fact]
    public void An_80_mA_load_on_a_500_mA_outlet_ties_capacity_up()
    {
        var finding = Expect.Breaks(Check(80, 100), "idle-capacity", "80 mA ≤ 90 % × 100 mA = 90 mA; 100 mA < 500 mA");
        Assert.Equal("drive-3 draws 80 mA from brick/1, which can give 500 mA; brick/2 is free and enough.", finding.Message);
        Assert.Equal("Move to brick/2, and brick/1 is free for something larger.", finding.Remedy);
    }

    [Theory]
    [InlineData(90, 100, true)] // exactly at the headroom mark
    [InlineData(91, 100, false)]
    [InlineData(80, 500, false)] // frees nothing
    [InlineData(80, 499, true)]
    public void Only_a_smaller_outlet_with_headroom_will_do(int draw, int spare, bool isIdle)
    {
        if (isIdle)
            Expect.Breaks(Check(draw, spare), "idle-capacity");
        else
            Expect.Good(Check(draw, spare));
    }

    [Fact]
    public void Moving_must_not_cost_anything()
    {
        Expect.Good(Check(80, 100, start: 101));
        Expect.Breaks(Check(80, 100, start: 100), "idle-capacity");
        Expect.Good(Check(80, 100, outlet => outlet with { Polarity = Polarity.CentrePositive }));
        Expect.Good(Check(80, 100, outlet => outlet with { Plug = Plug.WidePin }));
        Expect.Good(Check(80, 100, outlet => outlet with { Label = Plate.Dc(12, 100) }));
        Expect.Good(Check(80, 100, outlet => outlet with { Label = Plate.Ac(9, 100) }));
        Expect.Good(Check(80, 100, outlet => outlet with { NoLoad = new Volts(12) }));
        Expect.Good(Check(80, 100, InBank("left"), supply => supply with { Banks = [new Bank("left", new SupplyTotal(new Amps(0.05m), null))] }));
    }

    [Fact]
    public void A_move_onto_a_shared_return_costs_quiet()
    {
        RigBuilder Rig() => New().Load("drive-3", Plate.Dc(9, 80)).Load("chorus-1", Plate.Dc(9, 80)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 500)).Outlet("2", Plate.Dc(9, 100), InBank("left")).Outlet("3", Plate.Dc(9, 100), InBank("left")).Feed("brick/1", "drive-3");
        Expect.Keeps(Rig().Feed("brick/2", "chorus-1").Check(), "idle-capacity");
        Expect.Breaks(Rig().Check(), "idle-capacity");
    }

    [Fact]
    public void A_used_outlet_or_one_of_another_supply_is_no_way_out()
    {
        Expect.Good(Two(Plate.Dc(9, 500), Plate.Dc(9, 100)).Load("A", Plate.Dc(9, 80)).Load("B", Plate.Dc(9, 12)).Feed("brick/1", "A").Feed("brick/2", "B").Check());
        Expect.Good(New().Load("A", Plate.Dc(9, 80)).Supply("one").Outlet("1", Plate.Dc(9, 500)).Supply("two").Outlet("1", Plate.Dc(9, 100)).Feed("one/1", "A").Check());
    }

    [Fact]
    public void Each_free_outlet_is_offered_once_to_the_largest()
    {
        var result = New().Load("A", Plate.Dc(9, 80)).Load("B", Plate.Dc(9, 80)).Supply("brick").Outlet("1", Plate.Dc(9, 300)).Outlet("2", Plate.Dc(9, 500)).Outlet("3", Plate.Dc(9, 100))
            .Feed("brick/1", "A").Feed("brick/2", "B").Check();
        Assert.Equal(["brick/2", "brick/3", "B"], Expect.Breaks(result, "idle-capacity").Subjects);
    }

    [Fact]
    public void A_mode_of_the_smaller_outlet_counts()
    {
        var result = New().Load("A", Plate.Dc(12, 80)).Supply("brick").Outlet("1", Plate.Dc(12, 500)).Outlet("2", Plate.Modes((9, 300), (12, 200))).Feed("brick/1", "A").Check();
        Expect.Breaks(result, "idle-capacity", "80 mA ≤ 90 % × 200 mA = 180 mA; 200 mA < 500 mA");
    }

    [Fact]
    public void Without_the_figures_there_is_no_advice() =>
        Expect.Keeps(Two(Plate.Dc(9, 500), Plate.Dc(9, 100)).Load("A", Plate.Dc(9), load => load with { Kind = null }).Feed("brick/1", "A").Check(), "idle-capacity");
}
