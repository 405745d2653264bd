using Loadmark.Core.Gear;

namespace Loadmark.Reference.Gear;

/// <summary>Figures that the trade goes by and nobody has published as a standard: common practice, no source.</summary>
[Trait("Source", "common practice, no source")]
public sealed class CircuitDefaultTests
{
    [Fact(DisplayName = "9 V at 5 A is 45 W (common practice, no source)")]
    public void Nine_volts_at_five_amps() => Assert.Equal(new Watts(45), new Volts(9) * new Amps(5));

    [Fact(DisplayName = "100 mA of 2 A leaves 1.9 A (common practice, no source)")]
    public void A_tenth_of_an_amp_of_two() => Assert.Equal("1.9 A", (new Amps(2) - new Amps(0.1m)).ToString());

    [Theory(DisplayName = "Draw by class of load (common practice, no source)")]
    [InlineData("analog drive", 4, 20)]
    [InlineData("analog compressor", 4, 20)]
    [InlineData("analog modulation", 20, 50)]
    [InlineData("complex analog delay", 20, 100)]
    [InlineData("digital", 100, 300)]
    [InlineData("large digital", 300, null)]
    [InlineData("valve", 500, 500)]
    public void Class_draws(string kind, int low, int? high)
    {
        var figures = ClassDraw.Of(new LoadKind(kind).Class);

        Assert.NotNull(figures);
        Assert.Equal(low / 1000m, figures.Low.Value);
        Assert.Equal(high / 1000m, figures.High?.Value);
    }
}
