using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Figures that are assumed, computed or contradicted. The classes' figures are common practice, no source.</summary>
public sealed class FigureTests
{
    [Theory]
    [InlineData("analog drive", "analog drive: 4 mA to 20 mA, taken as 20 mA")]
    [InlineData("analog delay", "analog delay: 20 mA to 50 mA, taken as 50 mA")]
    [InlineData("complex analog delay", "complex analog delay: 20 mA to 100 mA, taken as 100 mA")]
    [InlineData("digital", "digital: 100 mA to 300 mA, taken as 300 mA")]
    [InlineData("large digital", "large digital: 300 mA and more, taken as 300 mA")]
    [InlineData("valve", "valve: about 500 mA for each valve's heater, taken as 500 mA")]
    public void A_class_stands_in_for_a_missing_draw(string kind, string working)
    {
        var result = One(Plate.Dc(9, 1000), Plate.Dc(9), load => load with { Kind = new LoadKind(kind) }).Check();
        Expect.Breaks(result, "figure-assumed", working);
    }

    [Fact]
    public void Loads_of_one_class_are_one_finding()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("drive-3", Plate.Dc(9), load => load with { Kind = new LoadKind("fuzz") }).Load("compressor-2", Plate.Dc(9))
            .Feed("brick/1", "drive-3").Feed("brick/2", "compressor-2").Check();
        var finding = Expect.Breaks(result, "figure-assumed", "fuzz and analog drive: 4 mA to 20 mA, taken as 20 mA");
        Assert.Equal("The draw of drive-3 and compressor-2 is not known: taken as 20 mA each.", finding.Message);
        Assert.Equal("Read the labels or measure.", finding.Remedy);
    }

    [Fact]
    public void A_measured_draw_needs_no_class_and_an_unfed_load_no_figures()
    {
        Expect.Good(One(Plate.Dc(9, 100), Plate.Dc(9), load => load with { Run = new Amps(0.01m) }).Check());
        Expect.Keeps(New().Load("drive-3", null, load => load with { Polarity = null, Plug = null, Kind = null }).Check(), "figure-assumed");
    }

    [Fact]
    public void A_setting_that_is_not_given_is_assumed_aloud()
    {
        RigBuilder Rig(decimal volts) => New().Load("preamp-1", Plate.Dc(volts, 200)).Supply("brick").Outlet("5", Plate.Modes((9, 500), (12, 400), (18, 250)));
        var harms = Rig(12).Feed("brick/5", "preamp-1").Check();
        Assert.Equal(["brick/5", "preamp-1"], Expect.Says(harms, "over-voltage", Severity.Unsure, "brick/5 can be set to 9 V, 12 V, 18 V, and the wiring does not say which: at 18 V it can destroy what is on it.").Subjects);
        Expect.Keeps(harms, "figure-assumed");

        var finding = Expect.Breaks(Rig(18).Feed("brick/5", "preamp-1").Check(), "figure-assumed", "settings 9 V, 12 V, 18 V");
        Assert.Equal("brick/5 can be set to 9 V, 12 V, 18 V, and the wiring does not say which: taken as 18 V.", finding.Message);
        Assert.Equal(Severity.Margin, finding.Severity);
        Assert.Equal(["brick/5"], finding.Subjects);
        Expect.Good(Rig(12).FeedAt("brick/5", 12, "preamp-1").Check());
    }

    [Fact]
    public void A_label_that_was_not_understood_is_quoted()
    {
        var odd = new Nameplate("9V 30 mAh") { Form = Field<SupplyForm>.Read(SupplyForm.Direct, default), Modes = [Plate.Mode(9, 9, null)], Unread = [new Unread("30 mAh", default)] };
        var finding = Expect.Breaks(One(Plate.Dc(9, 100), odd, load => load with { Kind = null }).Check(), "figure-assumed", "100 mA − 0 A known = 100 mA");
        Assert.Equal("Nothing tells what drive-3 draws; brick/1 is enough only if that is no more than 100 mA. Not understood on the label of drive-3: “30 mAh”.", finding.Message);
    }

    [Fact]
    public void An_unknown_draw_on_outlets_in_parallel_is_judged_against_both()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("X-01", Plate.Dc(9), load => load with { Kind = null }).Parallel("brick/1 brick/2", "X-01").Check();
        Assert.Contains("no more than 200 mA", Expect.Breaks(result, "figure-assumed").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Isolation_matters_only_between_outlets()
    {
        static Supply Unstated(Supply supply) => supply with { Isolated = null };
        Expect.Good(New().Load("drive-3", Plate.Dc(9, 12)).Supply("wall", Unstated).Outlet("1", Plate.Dc(9, 100)).Feed("wall/1", "drive-3").Check());
        Expect.Breaks(
            Two(Plate.Dc(9, 100), Plate.Dc(9, 100), Unstated).Load("drive-3", Plate.Dc(9, 12)).Feed("brick/1", "drive-3").Check(),
            "figure-assumed",
            "assumed not isolated");
    }

    [Fact]
    public void Amps_computed_from_watts_are_noted_with_the_working()
    {
        // I = P/V (OpenStax University Physics vol. 2, section 9.5): 1.8 W at 9 V is 200 mA.
        Expect.Breaks(One(Plate.Dc(9, 500), Plate.Dc(9, watts: 1.8m)).Check(), "figure-derived", "1.8 W ÷ 9 V = 200 mA");
        Expect.Breaks(One(Plate.Dc(9, 500), Plate.Dc(9), load => load with { Watts = new Watts(1.8m) }).Check(), "figure-derived", "1.8 W ÷ 9 V = 200 mA");

        // A range of voltages counts with its lowest: the highest current.
        Expect.Breaks(One(Plate.Dc(9, 500), Plate.Range(9, 18, watts: 1.8m)).Check(), "figure-derived", "1.8 W ÷ 9 V = 200 mA");

        // An outlet counts with its setting.
        var outlet = New().Load("drive-3", Plate.Dc(12, 100)).Supply("brick").Outlet("1", Plate.Range(9, 18, watts: 6)).FeedAt("brick/1", 12, "drive-3").Check();
        Expect.Breaks(outlet, "figure-derived", "6 W ÷ 12 V = 500 mA");
        Assert.Equal(0.5m, outlet.Outlets[0].Limit!.Value.Value);
    }

    [Fact]
    public void The_working_shows_the_mode_that_the_current_comes_from()
    {
        var label = Plate.Of(SupplyForm.Direct, Plate.Mode(9, 9, null, 1.8m), Plate.Mode(18, 18, null, 6));
        Expect.Breaks(One(Plate.Dc(9, 500), label).Check(), "figure-derived", "1.8 W ÷ 9 V = 200 mA");
        Expect.Breaks(One(Plate.Dc(18, 500), label).Check(), "figure-derived", "6 W ÷ 18 V = 333.3 mA");
    }

    [Fact]
    public void The_draw_is_that_of_the_voltage_it_is_fed()
    {
        var pairs = Plate.Of(SupplyForm.Direct, Plate.Mode(9, 9, 100), Plate.Mode(18, 18, 50));
        Assert.Equal(0.05m, One(Plate.Dc(18, 80), pairs).Check().Outlets[0].Run!.Value.Value);
        Assert.Equal(0.1m, One(Plate.Dc(9, 120), pairs).Check().Outlets[0].Run!.Value.Value);

        // P = V·I: 3.6 W at 18 V is 200 mA, at 9 V 400 mA.
        Assert.Equal(0.2m, One(Plate.Dc(18, 250), Plate.Range(9, 18, watts: 3.6m)).Check().Outlets[0].Run!.Value.Value);
        Assert.Equal(0.4m, One(Plate.Dc(9, 500), Plate.Range(9, 18, watts: 3.6m)).Check().Outlets[0].Run!.Value.Value);
    }

    [Fact]
    public void Typed_and_printed_figures_that_differ_are_noted()
    {
        var result = One(Plate.Dc(9, 500), Plate.Dc(9, 300), load => load with { Current = new Amps(0.25m) }).Check();
        Assert.Equal("Two figures for the current of drive-3 do not agree. The typed figure counts.", Expect.Breaks(result, "figure-conflict", "typed 250 mA, label 300 mA").Message);
        Assert.Equal(0.25m, result.Outlets[0].Run!.Value.Value);
        Expect.Good(One(Plate.Dc(9, 500), Plate.Dc(9, 300), load => load with { Current = new Amps(0.3m) }).Check());
    }

    [Fact]
    public void A_supplys_typed_total_and_mains_are_compared_with_its_label()
    {
        var total = New().Supply("brick", supply => supply with { Label = Plate.Dc(9, watts: 20), Total = new SupplyTotal(null, new Watts(18)) })
            .Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100)).Check();
        Assert.Equal(["brick"], Expect.Breaks(total, "figure-conflict", "typed 18 W, label 20 W").Subjects);

        var mains = New().Supply("brick", supply => supply with { Label = Plate.Mains(230, 230), Mains = Plate.Mains(100, 240) }).Check();
        Expect.Breaks(mains, "figure-conflict", "typed 100 V to 240 V, label 230 V");
    }

    [Fact]
    public void A_supplys_label_that_contradicts_itself_is_noted()
    {
        var result = New().Supply("wall", supply => supply with { Label = new Nameplate("") { Conflicts = ["9 V × 1 A = 9 W, printed 5 W"] } }).Check();
        Expect.Breaks(result, "figure-conflict", "9 V × 1 A = 9 W, printed 5 W");
    }
}
