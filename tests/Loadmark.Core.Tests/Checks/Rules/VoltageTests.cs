using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>The bands are common practice (match the voltage), no source.</summary>
public sealed class VoltageTests
{
    private static readonly string[] All = ["over-voltage", "voltage-high", "voltage-low", "under-voltage"];

    [Theory]
    [InlineData("9", "9", "9", null)]
    [InlineData("9", "9", "9.45", null)] // exactly 5 % over
    [InlineData("9", "9", "9.46", "voltage-high")]
    [InlineData("9", "9", "9.9", "voltage-high")] // exactly 10 % over
    [InlineData("9", "9", "9.91", "over-voltage")]
    [InlineData("9", "9", "8.55", null)] // exactly 5 % under
    [InlineData("9", "9", "8.54", "voltage-low")]
    [InlineData("9", "9", "8.1", "voltage-low")] // exactly 10 % under
    [InlineData("9", "9", "8.09", "voltage-low")] // analog: less headroom in its sound
    [InlineData("18", "18", "9", "voltage-low")] // exactly half
    [InlineData("18", "18", "8.99", "under-voltage")]
    [InlineData("9", "18", "12", null)]
    [InlineData("9", "18", "18.9", null)] // the highest printed voltage counts upwards
    [InlineData("9", "18", "19", "voltage-high")]
    [InlineData("9", "18", "20", "over-voltage")]
    [InlineData("9", "18", "8.5", "voltage-low")] // the lowest counts downwards
    [InlineData("9", "18", "8", "voltage-low")]
    [InlineData("9", "9", "12", "over-voltage")] // 12 V into a 9 V load is harm
    public void The_ends_of_each_band_are_inside_it(string low, string high, string outlet, string? rule)
    {
        var result = One(Plate.Dc(decimal.Parse(outlet), 500), Plate.Range(decimal.Parse(low), decimal.Parse(high), 12)).Check();

        Expect.Keeps(result, [.. All.Where(name => name != rule)]);
        if (rule is not null)
            Expect.Breaks(result, rule);
        else
            Expect.Good(result);
    }

    [Fact]
    public void An_18_V_mode_left_selected_is_harm_and_the_remedy_names_the_right_mode()
    {
        var result = New().Load("delay-2", Plate.Dc(9, 210)).Supply("brick").Outlet("5", Plate.Modes((9, 500), (12, 400), (18, 250)))
            .FeedAt("brick/5", 18, "delay-2").Check();

        var finding = Expect.Breaks(result, "over-voltage", "18 V > 1.10 × 9 V = 9.9 V");
        Assert.Equal("delay-2 gets 18 V from brick/5; it is made for 9 V.", finding.Message);
        Assert.Equal("Set brick/5 to 9 V before plugging in.", finding.Remedy);
    }

    [Fact]
    public void The_remedy_never_sets_an_outlet_to_what_another_load_on_it_cannot_take()
    {
        var result = New().Load("delay-2", Plate.Dc(9, 100)).Load("preamp-1", Plate.Dc(18, 100))
            .Supply("brick").Outlet("5", Plate.Modes((9, 500), (18, 250))).FeedOver("chain", "brick/5", "delay-2", "preamp-1")
            .Lead("chain", Rigs.LeadType.DaisyChain, 2).Check(rig => rig with { Wired = (Rigs.ValueList<Rigs.Feed>?)[rig.Wired!.Value[0] with { At = [new Volts(18)] }] });

        Assert.Equal("Feed delay-2 from an outlet of 9 V.", Expect.Breaks(result, "over-voltage").Remedy);
    }

    [Fact]
    public void An_adjustable_outlet_is_advised_to_the_voltage_printed_on_the_load()
    {
        var result = New().Load("preamp-1", Plate.Dc(12, 100)).Supply("brick").Outlet("1", Plate.Range(9, 18, 500)).FeedAt("brick/1", 18, "preamp-1").Check();
        Assert.Equal("Set brick/1 to 12 V before plugging in.", Expect.Breaks(result, "over-voltage").Remedy);
    }

    [Fact]
    public void Outlets_in_series_count_with_the_sum_of_their_voltages()
    {
        // Series sources add (OpenStax University Physics vol. 2, section 10.1).
        var fits = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("preamp-2", Plate.Dc(18, 50)).Series("brick/1 brick/2", "preamp-2");
        Expect.Good(fits.Check());

        var burns = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("preamp-2", Plate.Dc(9, 50)).Series("brick/1 brick/2", "preamp-2");
        var finding = Expect.Breaks(burns.Check(), "over-voltage", "18 V > 1.10 × 9 V = 9.9 V");
        Assert.Contains("9 V + 9 V = 18 V", finding.Message, StringComparison.Ordinal);
        Assert.Equal(["preamp-2", "brick/1", "brick/2"], finding.Subjects);
    }

    /// <summary>That an analog load runs on with less headroom, and a digital one stops, is common practice, no source.</summary>
    [Theory]
    [InlineData("digital", "8.1", "voltage-low")]
    [InlineData("digital", "8.09", "under-voltage")]
    [InlineData("looper", "8.09", "under-voltage")] // the kind does not tell: the safe side
    [InlineData("analog equaliser", "4.5", "voltage-low")]
    [InlineData("analog equaliser", "4.49", "under-voltage")]
    public void A_digital_load_fails_where_an_analog_one_runs_on(string kind, string outlet, string rule)
    {
        var result = One(Plate.Dc(decimal.Parse(outlet), 500), Plate.Dc(9, 12), load => load with { Kind = new LoadKind(kind), Start = new TimedCurrent(new Amps(0.012m), null) }).Check();
        Expect.Keeps(result, [.. All.Where(name => name != rule)]);
        Expect.Breaks(result, rule);
    }

    [Fact]
    public void An_outlet_without_a_voltage_is_to_be_found_out_and_nothing_is_guessed()
    {
        var result = One(Plate.AmpsOnly(500), Plate.Dc(9, 12)).Check();
        Expect.Keeps(result, [.. All.Where(name => name != "over-voltage")]);
        Assert.Equal(["brick/1", "drive-3"], Expect.Says(result, "over-voltage", Severity.Unsure, "The voltage of brick/1 is not known").Subjects);
    }

    [Theory]
    [InlineData("18")]
    [InlineData("9")]
    [InlineData("5")]
    public void A_load_without_a_voltage_is_to_be_found_out_whatever_it_is_fed(string outlet)
    {
        var result = One(Plate.Dc(decimal.Parse(outlet), 500), Plate.AmpsOnly(12)).Check();
        Expect.Keeps(result, [.. All.Where(name => name != "over-voltage")]);
        Assert.Equal(["drive-3"], Expect.Says(result, "over-voltage", Severity.Unsure, "The voltage of drive-3 is not known").Subjects);
    }

    [Fact]
    public void A_current_far_below_what_an_outlet_can_give_is_no_finding()
    {
        // A 100 mA load on a 2 A outlet leaves 1.9 A (common practice, no source).
        var result = One(Plate.Dc(9, 2000), Plate.Dc(9, 100)).Check();
        Expect.Good(result);
        Assert.Equal(1.9m, result.Outlets[0].Limit!.Value.Value - result.Outlets[0].Run!.Value.Value);
        Assert.Equal(Severity.Good, result.Verdict);
    }
}
