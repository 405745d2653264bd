using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>That an unregulated adaptor stands up to √2 over its printed voltage is common practice, no source.</summary>
public sealed class UnregulatedTests
{
    private static Core.Checks.CheckResult Adaptor(bool? regulated, Func<Outlet, Outlet>? outlet = null, Nameplate? mains = null) =>
        New().Load("OD-03", Plate.Dc(9, 12))
            .Supply("wall", supply => supply with { Regulated = regulated, Mains = mains ?? Plate.Mains(230, 230, 50, 50) })
            .Outlet("1", Plate.Dc(9, 500), outlet).Feed("wall/1", "OD-03").Check();

    [Fact]
    public void A_guess_is_a_margin_and_no_proof_of_harm()
    {
        var result = Adaptor(false);
        Expect.Breaks(result, "unregulated", "1.4 × 9 V = 12.6 V (1.4 assumed, common practice, no source)");
        Expect.Keeps(result, "over-voltage", "voltage-high");
    }

    [Fact]
    public void A_measured_voltage_with_nothing_drawn_is_judged()
    {
        var harm = Adaptor(false, outlet => outlet with { NoLoad = new Volts(13) });
        Expect.Breaks(harm, "unregulated", "measured 13 V with nothing connected");
        Assert.Contains("until it draws its current", Expect.Breaks(harm, "over-voltage", "13 V > 1.10 × 9 V = 9.9 V").Message, StringComparison.Ordinal);

        var high = Adaptor(false, outlet => outlet with { NoLoad = new Volts(9.8m) });
        Expect.Keeps(high, "over-voltage");
        Assert.Contains("until it draws its current", Expect.Breaks(high, "voltage-high").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_source_resistance_gives_the_voltage_by_Ohms_law()
    {
        // V = R·I: 4 Ω × 500 mA = 2 V (OpenStax University Physics vol. 2, section 9.4).
        var result = Adaptor(false, outlet => outlet with { SourceOhms = new Ohms(4) });
        Expect.Breaks(result, "unregulated", "9 V + 500 mA × 4 Ω = 11 V");
        Expect.Breaks(result, "over-voltage", "11 V > 1.10 × 9 V = 9.9 V");
    }

    [Fact]
    public void A_measured_voltage_counts_even_where_no_voltage_is_printed()
    {
        var result = New().Load("OD-03", Plate.Dc(9, 12)).Supply("wall").Outlet("1", Plate.AmpsOnly(500), outlet => outlet with { NoLoad = new Volts(13) })
            .Feed("wall/1", "OD-03").Check();
        Expect.Breaks(result, "over-voltage", "13 V > 1.10 × 9 V = 9.9 V");
    }

    [Fact]
    public void In_series_the_voltages_with_nothing_drawn_add()
    {
        var result = New().Load("PR-02", Plate.Dc(18, 12))
            .Supply("one", supply => supply with { Regulated = false }).Outlet("1", Plate.Dc(9, 100), outlet => outlet with { NoLoad = new Volts(12) })
            .Supply("two").Outlet("1", Plate.Dc(9, 100))
            .Series("one/1 two/1", "PR-02").Check();
        Expect.Breaks(result, "over-voltage", "21 V > 1.10 × 18 V = 19.8 V");
        Expect.Breaks(result, "unregulated");
    }

    [Fact]
    public void In_parallel_the_highest_voltage_with_nothing_drawn_counts()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Supply("wall", supply => supply with { Regulated = false })
            .Outlet("1", Plate.Dc(9, 100), outlet => outlet with { NoLoad = new Volts(12) })
            .Load("OD-03", Plate.Dc(9, 12)).Parallel("brick/1 wall/1", "OD-03").Check();
        Expect.Breaks(result, "over-voltage", "12 V > 1.10 × 9 V = 9.9 V");
    }

    [Fact]
    public void Not_stated_is_told_except_where_the_mains_input_shows_a_switched_mode_supply()
    {
        Expect.CannotTell(Adaptor(null), "unregulated", "Whether wall is regulated is not given");
        Expect.CanTell(Adaptor(null, mains: Plate.Mains(100, 240)), "unregulated");
        Expect.Good(Adaptor(null, mains: Plate.Mains(100, 240)));
        Expect.CannotTell(Adaptor(null, mains: Plate.Mains(220, 240)), "unregulated", "regulated");
    }

    [Fact]
    public void A_supply_that_feeds_nothing_and_an_alternating_one_say_nothing()
    {
        Expect.Good(New().Supply("wall", supply => supply with { Regulated = false }).Outlet("1", Plate.Dc(9, 100)).Check());
        Expect.Good(New().Load("PR-01", Plate.Ac(9, 12)).Supply("wall", supply => supply with { Regulated = false }).Outlet("1", Plate.Ac(9, 100))
            .Feed("wall/1", "PR-01").Check());
    }

}
