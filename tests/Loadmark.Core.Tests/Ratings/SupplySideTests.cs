using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Ratings;

/// <summary>What supplies and outlets can give once labels, typed figures and defaults are joined.</summary>
public sealed class SupplySideTests
{
    private static readonly Supply Brick = new() { Id = "brick" };

    private static OutletRating Of(Outlet outlet, Supply? supply = null) => OutletRating.Of(supply ?? Brick, outlet);

    [Fact]
    public void Isolation_not_stated_is_assumed_false_and_the_outlet_decides_before_the_supply()
    {
        var outlet = new Outlet { Id = "1", Label = Plate.Dc(9, 100) };
        Assert.Equal(new Figure<bool>(false, Origin.Assumed), Of(outlet).Isolated);
        Assert.Equal("brick", Of(outlet).Return);
        Assert.Equal("brick/1", Of(outlet, Brick with { Isolated = true }).Return);
        Assert.Equal("brick", Of(outlet with { Isolated = false }, Brick with { Isolated = true }).Return);
        Assert.Equal("brick, bank left", Of(outlet with { Bank = "left" }, Brick with { Isolated = true }).Return);
    }

    [Fact]
    public void An_outlet_whose_label_is_short_takes_the_rest_from_its_supply()
    {
        var supply = Brick with { Label = Plate.Dc(9, 500) };
        Assert.Equal(0.5m, Of(new Outlet { Id = "1", Label = Plate.Empty }, supply).Modes[0].Limit!.Value.Value.Value);
        Assert.Equal(0.5m, Of(new Outlet { Id = "1", Label = Plate.Dc(9) }, supply).Modes[0].Limit!.Value.Value.Value);
        Assert.Null(Of(new Outlet { Id = "1", Label = Plate.Dc(12) }, supply).Modes[0].Limit);
        Assert.Equal(0.1m, Of(new Outlet { Id = "1", Label = Plate.Dc(9, 100) }, supply).Modes[0].Limit!.Value.Value.Value);
    }

    [Fact]
    public void Nothing_printed_is_one_mode_of_nothing_known() => Assert.Equal([default], Of(new Outlet { Id = "1", Label = Plate.Empty }).Modes);

    [Theory]
    [InlineData(9, "0.5")] // 4.5 W ÷ 9 V
    [InlineData(18, "0.25")]
    public void Printed_watts_limit_an_adjustable_outlet_by_its_setting(int setting, string amps) =>
        Assert.Equal(decimal.Parse(amps), Of(new Outlet { Id = "1", Label = Plate.Range(9, 18, watts: 4.5m) }).Modes[0].LimitAt(new Volts(setting))!.Value.Value.Value);

    [Theory]
    [InlineData(9, "0.3", Origin.Stated)]
    [InlineData(18, "0.25", Origin.Derived)]
    public void Printed_amps_and_watts_both_limit_it(int setting, string amps, Origin origin) => Assert.Equal(
        new Figure<Amps>(new Amps(decimal.Parse(amps)), origin),
        Of(new Outlet { Id = "1", Label = Plate.Range(9, 18, 300, 4.5m) }).Modes[0].LimitAt(new Volts(setting)));

    [Fact]
    public void A_typed_polarity_that_differs_from_the_label_is_noted()
    {
        var label = new Nameplate("9V centre positive") { Polarity = Field<Polarity>.Read(Polarity.CentrePositive, default) };
        var rating = Of(new Outlet { Id = "1", Label = label, Polarity = Polarity.CentreNegative });
        Assert.Equal(new Figure<Polarity>(Polarity.CentreNegative, Origin.Stated), rating.Polarity);
        Assert.Equal("typed centre negative, label centre positive", Assert.Single(rating.Disagreements).Working);
    }

    [Theory]
    [InlineData(100, 240, null, true)]
    [InlineData(115, 230, null, null)] // may be a transformer with a switch
    [InlineData(220, 240, null, null)]
    [InlineData(100, 240, false, false)]
    public void A_wide_mains_input_means_a_regulated_supply(int low, int high, bool? stated, bool? regulated) =>
        Assert.Equal(regulated, SupplyRating.Of(Brick with { Mains = Plate.Mains(low, high), Regulated = stated }).Regulated);

    [Fact]
    public void The_label_gives_what_a_typed_mains_input_leaves_out()
    {
        var typed = new Nameplate("230 V") { Mains = Plate.Mains(230, 230).Mains! with { Hertz = null } };
        var mains = SupplyRating.Of(Brick with { Mains = typed, Label = Plate.Mains(230, 230, 50, 50) }).Mains!;
        Assert.Equal(new Frequency(50), mains.Hertz!.Value.Low);
    }
}
