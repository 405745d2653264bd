using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Sums of running draws against the limits of outlets (Kirchhoff's current law) and the headroom asked for.</summary>
public sealed class OverloadTests
{
    [Theory]
    [InlineData(1000, 400, 600, 0, null)] // a 1 A adaptor feeds a chain while the sum is at most 1 A (common practice, no source)
    [InlineData(1000, 400, 601, 0, "outlet-overload")]
    [InlineData(1000, 300, 600, 10, null)] // exactly 90 %
    [InlineData(1000, 301, 600, 10, "thin-headroom")]
    [InlineData(1000, 400, 600, 10, "thin-headroom")] // exactly at the limit: works, but nothing stays free
    [InlineData(1000, 500, 600, 10, "outlet-overload")]
    public void A_chain_is_fine_up_to_its_mark(int limit, int one, int other, int headroom, string? rule)
    {
        var result = New().Load("drive-3", Plate.Dc(9, one)).Load("chorus-1", Plate.Dc(9, other)).Supply("wall").Outlet("1", Plate.Dc(9, limit))
            .Chain("wall/1", "drive-3", "chorus-1").Check(rig => rig with { Headroom = headroom / 100m });
        if (rule is null)
            Expect.Good(result);
        else
            Assert.Equal(rule, Assert.Single(result.Findings).Rule);
    }

    [Fact]
    public void Decimal_sums_are_exact()
    {
        // 0.15 + 0.12 + 0.23 is 0.5 in decimal, and more than 0.5 in binary floating point.
        var result = New().Load("A", Plate.Dc(9, 150)).Load("B", Plate.Dc(9, 120)).Load("C", Plate.Dc(9, 230)).Supply("wall").Outlet("1", Plate.Dc(9, 500))
            .Chain("wall/1", "A", "B", "C").Check(rig => rig with { Headroom = 0 });
        Expect.Good(result);
    }

    [Fact]
    public void Measured_running_draw_counts_before_the_printed_one()
    {
        var result = One(Plate.Dc(9, 250), Plate.Dc(9, 300), load => load with { Run = new Amps(0.21m) }).Check();
        Expect.Good(result);
        Assert.Equal(0.21m, result.Outlets[0].Run!.Value.Value);
    }

    [Fact]
    public void The_remedy_moves_the_smallest_load_that_suffices()
    {
        var result = New().Load("A", Plate.Dc(9, 300)).Load("B", Plate.Dc(9, 60)).Load("C", Plate.Dc(9, 200)).Supply("wall").Outlet("1", Plate.Dc(9, 500))
            .Chain("wall/1", "A", "B", "C").Check();
        var finding = Expect.Breaks(result, "outlet-overload", "A 300 mA + B 60 mA + C 200 mA = 560 mA > 500 mA");
        Assert.Equal("wall/1 carries 560 mA and can give 500 mA.", finding.Message);
        Assert.Equal("Move B (60 mA) to another outlet.", finding.Remedy);
        Assert.Equal(["wall/1", "A", "B", "C"], finding.Subjects);

        var much = New().Load("A", Plate.Dc(9, 300)).Load("B", Plate.Dc(9, 300)).Supply("wall").Outlet("1", Plate.Dc(9, 200)).Chain("wall/1", "A", "B").Check();
        Assert.Equal("Move loads of at least 400 mA in all to another outlet.", Expect.Breaks(much, "outlet-overload").Remedy);
    }

    [Fact]
    public void A_single_load_needs_an_outlet_that_leaves_the_headroom_too()
    {
        // 95 mA ÷ 0.9 = 105.6 mA
        Assert.Equal("Move drive-3 to another outlet that gives 106 mA or more.", Expect.Breaks(One(Plate.Dc(9, 100), Plate.Dc(9, 95)).Check(), "thin-headroom").Remedy);
        Assert.Equal("Move drive-3 to another outlet that gives 120 mA or more.", Expect.Breaks(One(Plate.Dc(9, 100), Plate.Dc(9, 120)).Check(), "outlet-overload").Remedy);
    }

    [Fact]
    public void Headroom_of_none_is_headroom_given()
    {
        var result = One(Plate.Dc(9, 100), Plate.Dc(9, 100)).Check(rig => rig with { Headroom = 0 });
        Expect.Good(result);
        Assert.False(result.HeadroomIsDefault);
        Assert.True(One(Plate.Dc(9, 100), Plate.Dc(9, 10)).Check().HeadroomIsDefault);
    }

    [Fact]
    public void A_limit_that_is_not_printed_is_told_with_the_sum()
    {
        var result = One(Plate.Dc(9), Plate.Dc(9, 120)).Check();
        Expect.Keeps(result, "outlet-overload", "thin-headroom");
        Expect.CannotTell(result, "outlet-overload", "The limit of brick/1 is not known; it carries drive-3 120 mA");
        Assert.Null(result.Outlets[0].Limit);
    }

    [Fact]
    public void A_draw_that_nothing_tells_is_told_with_what_is_left_for_it()
    {
        static Load NoKind(Load load) => load with { Kind = null };
        var result = New().Load("drive-3", Plate.Dc(9, 60)).Load("X-01", Plate.Dc(9), NoKind).Load("X-02", Plate.Dc(9), NoKind)
            .Supply("wall").Outlet("1", Plate.Dc(9, 200)).Chain("wall/1", "drive-3", "X-01", "X-02").Check();

        Expect.Keeps(result, "outlet-overload");
        Expect.CannotTell(result, "outlet-overload", "What X-01 and X-02 ask of wall/1 is not known: without them it carries 60 mA of 200 mA.");
        var finding = Expect.Breaks(result, "figure-assumed", "200 mA − 60 mA known = 140 mA");
        Assert.Equal("Nothing tells what X-01 and X-02 draw; wall/1 is enough only if that is no more than 140 mA in all.", finding.Message);
        Assert.Null(result.Outlets[0].Run);
    }

    [Fact]
    public void A_sum_that_is_over_without_the_unknown_draw_is_over()
    {
        var result = New().Load("drive-3", Plate.Dc(9, 300)).Load("X-01", Plate.Dc(9), load => load with { Kind = null })
            .Supply("wall").Outlet("1", Plate.Dc(9, 200)).Chain("wall/1", "drive-3", "X-01").Check();
        Expect.Breaks(result, "outlet-overload", "drive-3 300 mA + X-01 ? = 300 mA and more > 200 mA");
        Assert.Equal("Nothing tells what X-01 draws; wall/1 is over its limit without it.", Expect.Breaks(result, "figure-assumed").Message);
    }

    [Fact]
    public void A_class_stands_in_for_a_missing_draw_with_its_high_end()
    {
        var result = New().Digital("delay-2", Plate.Dc(9), Starts(300)).Supply("brick").Outlet("1", Plate.Dc(9, 250)).Feed("brick/1", "delay-2").Check();
        Expect.Breaks(result, "outlet-overload", "delay-2 300 mA (assumed) > 250 mA");
        Assert.Equal("The draw of delay-2 is not known: taken as 300 mA.", Expect.Breaks(result, "figure-assumed", "digital: 100 mA to 300 mA, taken as 300 mA").Message);
    }

    [Fact]
    public void In_series_the_smaller_limit_counts_and_in_parallel_limits_add()
    {
        // Series: one current through all; parallel: currents add (OpenStax University Physics vol. 2, section 10.3).
        RigBuilder Rig(decimal volts, decimal draw) => Two(Plate.Dc(9, 100), Plate.Dc(9, 200)).Load("preamp-2", Plate.Dc(volts, draw));
        Expect.Good(Rig(18, 90).Series("brick/1 brick/2", "preamp-2").Check());
        Expect.Breaks(Rig(18, 110).Series("brick/1 brick/2", "preamp-2").Check(), "outlet-overload", "preamp-2 110 mA > 100 mA");
        Expect.Good(Rig(9, 100).Parallel("brick/1 brick/2", "preamp-2").Check());
        Assert.Equal("100 mA < 101 mA ≤ 100 mA + 200 mA = 300 mA", Expect.Says(Rig(9, 101).Parallel("brick/1 brick/2", "preamp-2").Check(), "outlet-overload", Severity.Margin, "do not share equally").Working);
        Expect.Keeps(Rig(9, 270).Parallel("brick/1 brick/2", "preamp-2").Check(), "thin-headroom");
        Expect.Breaks(Rig(9, 271).Parallel("brick/1 brick/2", "preamp-2").Check(), "thin-headroom", "preamp-2 271 mA > 90 % × 300 mA = 270 mA");
        var over = Expect.Breaks(Rig(9, 301).Parallel("brick/1 brick/2", "preamp-2").Check(), "outlet-overload", "preamp-2 301 mA > 300 mA");
        Assert.Equal(["brick/1", "brick/2", "preamp-2"], over.Subjects);
    }

    [Fact]
    public void In_parallel_an_unknown_limit_leaves_the_sum_unknown() =>
        Expect.CannotTell(
            Two(Plate.Dc(9, 100), Plate.Dc(9)).Load("preamp-2", Plate.Dc(9, 50)).Parallel("brick/1 brick/2", "preamp-2").Check(),
            "outlet-overload",
            "The limit of brick/1 + brick/2 in parallel is not known");

    [Fact]
    public void Loads_of_all_feeds_of_an_outlet_count_together()
    {
        var result = New().Load("A", Plate.Dc(9, 80)).Load("B", Plate.Dc(9, 80)).Supply("brick").Outlet("1", Plate.Dc(9, 100))
            .Feed("brick/1", "A").Feed("brick/1", "B").Check();
        Expect.Breaks(result, "outlet-overload", "A 80 mA + B 80 mA = 160 mA > 100 mA");
    }

    [Fact]
    public void A_long_sum_shows_its_largest_terms()
    {
        var rig = New().Supply("wall").Outlet("1", Plate.Dc(9, 100));
        var ids = Enumerable.Range(1, 10).Select(number => $"L-{number}").ToArray();
        for (var place = 0; place < ids.Length; place++)
            rig.Load(ids[place], Plate.Dc(9, place + 20));
        Assert.EndsWith(" + 2 more loads = 245 mA > 100 mA", Expect.Breaks(rig.Chain("wall/1", ids).Check(), "outlet-overload").Working, StringComparison.Ordinal);
    }
}
