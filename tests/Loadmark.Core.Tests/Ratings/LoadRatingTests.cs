using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Ratings;

public sealed class LoadRatingTests
{
    private static readonly Load Bare = new() { Id = "L" };

    [Fact]
    public void Without_any_figure_nothing_is_known_and_values_to_compute_with_stand_in()
    {
        var rating = LoadRating.Of(Bare);
        Assert.Equal(new Figure<QuantityRange<Volt>>(QuantityRange<Volt>.Single(new Volts(9)), Origin.Unknown), rating.Voltage);
        Assert.Equal(new Figure<Polarity>(Polarity.CentreNegative, Origin.Unknown), rating.Polarity);
        Assert.Equal(new Figure<Plug>(new Plug("5.5x2.1"), Origin.Unknown), rating.Plug);
        Assert.Equal(new Figure<SupplyForm>(SupplyForm.Direct, Origin.Unknown), rating.Form);
        Assert.Equal(new Figure<GroundSide>(GroundSide.Negative, Origin.Assumed), rating.Ground);
        Assert.True(rating.IsBlank);
        Assert.Null(rating.Rated);
        Assert.Null(rating.Running);
        Assert.Null(rating.Starting);
        Assert.Null(rating.IsDigital);
    }

    [Fact]
    public void Unknown_is_not_zero_and_zero_is_not_unknown()
    {
        Assert.Null(LoadRating.Of(Bare with { Label = Plate.Dc(9) }).Running);
        Assert.Equal(0m, LoadRating.Of(Bare with { Label = Plate.Dc(9, 0) }).Running!.Value.Value.Value);
    }

    [Fact]
    public void A_typed_figure_counts_before_the_label_and_a_difference_is_noted()
    {
        var rating = LoadRating.Of(Bare with { Label = Plate.Range(9, 18, 300), Voltage = Plate.Dc(12), Current = new Amps(0.2m) });
        Assert.Equal(new Volts(12), rating.Voltage.Value.High);
        Assert.Equal(new Figure<Amps>(new Amps(0.2m), Origin.Stated), rating.Rated);
        Assert.Equal(["voltage", "current"], rating.Disagreements.Select(one => one.What));
    }

    [Fact]
    public void Running_is_measured_where_it_is_given_else_rated()
    {
        var rating = LoadRating.Of(Bare with { Label = Plate.Dc(9, 300), Run = new Amps(0.21m) });
        Assert.Equal(new Figure<Amps>(new Amps(0.3m), Origin.Stated), rating.Rated);
        Assert.Equal(new Figure<Amps>(new Amps(0.21m), Origin.Measured), rating.Running);
        Assert.Empty(rating.Disagreements);
        Assert.Single(LoadRating.Of(Bare with { Label = Plate.Dc(9, 300), Run = new Amps(0.31m) }).Disagreements);
    }

    [Theory]
    [InlineData(520, 520)]
    [InlineData(300, 300)]
    [InlineData(200, 300)] // starting is never less than running
    public void Starting_is_given_else_running_and_never_less(int start, int expected)
    {
        var timed = new TimedCurrent(new Amps(start / 1000m), new Seconds(1.5m));
        var stated = LoadRating.Of(Bare with { Label = Plate.Dc(9, 300), Start = timed });
        Assert.Equal(expected / 1000m, stated.Starting!.Value.Value.Value);
        Assert.Equal(start < 300, stated.Disagreements.Length == 1);

        var assumed = LoadRating.Of(Bare with { Label = Plate.Dc(9), Kind = new LoadKind("digital"), Start = timed });
        Assert.Equal(expected / 1000m, assumed.Starting!.Value.Value.Value);
        Assert.Equal(0.3m, LoadRating.Of(Bare with { Label = Plate.Dc(9, 300) }).Starting!.Value.Value.Value);
    }

    [Theory]
    [InlineData("digital", DrawLaw.Power)]
    [InlineData("large digital", DrawLaw.Power)]
    [InlineData("valve", DrawLaw.Resistance)]
    [InlineData("analog drive", DrawLaw.Current)]
    [InlineData("tuner", DrawLaw.Current)]
    public void The_kind_decides_how_it_draws_unless_that_is_given(string kind, DrawLaw law)
    {
        Assert.Equal(law, LoadRating.Of(Bare with { Kind = new LoadKind(kind) }).DrawLaw);
        Assert.Equal(DrawLaw.Resistance, LoadRating.Of(Bare with { Kind = new LoadKind(kind), Draws = DrawLaw.Resistance }).DrawLaw);
    }

    [Theory]
    [InlineData(300, "2.97", 0)] // 9 V × 300 mA = 2.7 W; 10 % over is no conflict yet
    [InlineData(300, "2.98", 1)]
    public void Watts_may_differ_from_volts_times_amps_by_10_per_cent(int milliamps, string watts, int conflicts)
    {
        var rating = LoadRating.Of(Bare with { Label = Plate.Dc(9), Current = new Amps(milliamps / 1000m), Watts = new Watts(decimal.Parse(watts)) });
        Assert.Equal(conflicts, rating.Disagreements.Length);
        Assert.Equal(0.3m, rating.Rated!.Value.Value.Value);
    }

    [Theory]
    [InlineData("1.61", 1)] // below 9 V × 200 mA = 1.8 W by more than 10 %
    [InlineData("1.8", 0)]
    [InlineData("3.6", 0)] // 18 V × 200 mA
    [InlineData("3.97", 1)]
    public void Watts_of_a_range_of_volts_may_be_those_at_any_of_them(string watts, int conflicts) =>
        Assert.Equal(conflicts, LoadRating.Of(Bare with { Label = Plate.Range(9, 18, 200), Watts = new Watts(decimal.Parse(watts)) }).Disagreements.Length);

    [Fact]
    public void Typed_figures_that_differ_from_the_watts_of_the_label_are_noted()
    {
        var label = Plate.Dc(9, watts: 3);
        Assert.Equal("label 3 W, but 9 V × 100 mA = 0.9 W", Assert.Single(LoadRating.Of(Bare with { Label = label, Current = new Amps(0.1m) }).Disagreements).Working);
        Assert.Equal("typed 1 W, label 3 W", Assert.Single(LoadRating.Of(Bare with { Label = label, Watts = new Watts(1) }).Disagreements).Working);
        Assert.Empty(LoadRating.Of(Bare with { Label = label, Current = new Amps(0.32m) }).Disagreements);
        Assert.Empty(LoadRating.Of(Bare with { Label = label, Watts = new Watts(3) }).Disagreements);
    }

    [Fact]
    public void Amps_from_watts_are_derived_and_with_an_assumed_voltage_assumed()
    {
        Assert.Equal(new Figure<Amps>(new Amps(0.5m), Origin.Derived), LoadRating.Of(Bare with { Label = Plate.Dc(12, watts: 6) }).Rated);
        Assert.Equal(new Figure<Amps>(new Amps(0.5m), Origin.Assumed), LoadRating.Of(Bare with { Watts = new Watts(4.5m) }).Rated);

        // A typed voltage moves what the label's watts come to.
        Assert.Equal(0.5m, LoadRating.Of(Bare with { Label = Plate.Dc(9, watts: 6), Voltage = Plate.Dc(12) }).Rated!.Value.Value.Value);
    }

    [Fact]
    public void Nothing_is_derived_from_no_voltage() =>
        Assert.Null(LoadRating.Of(Bare with { Voltage = Plate.Dc(0), Watts = new Watts(5) }).Rated);

    [Fact]
    public void Several_printed_modes_give_the_range_and_the_highest_current()
    {
        var rating = LoadRating.Of(Bare with { Label = Plate.Modes((9, 300), (18, 150)) });
        Assert.Equal(new QuantityRange<Volt>(new Volts(9), new Volts(18)), rating.Voltage.Value);
        Assert.Equal(0.3m, rating.Rated!.Value.Value.Value);
    }

    [Fact]
    public void An_ambiguous_field_of_a_label_counts_as_not_known()
    {
        var label = new Nameplate("9V centre ?") { Polarity = Field<Polarity>.Ambiguous([Polarity.CentreNegative, Polarity.CentrePositive], default) };
        Assert.True(LoadRating.Of(Bare with { Label = label }).Polarity.IsAssumed);
    }
}
