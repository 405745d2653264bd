using Loadmark.Core.Display;

namespace Loadmark.Core.Tests.Display;

/// <summary>How figures read for people: the same on the terminal, the page, the drawing and paper.</summary>
public sealed class FigureDisplayTests
{
    [Fact]
    public void A_printed_figure_has_four_digits_and_an_unknown_one_a_question_mark()
    {
        Assert.Equal("1.235 A", FigureDisplay.Printed<Ampere>(new Amps(1.23456m)));
        Assert.Equal("9 V", FigureDisplay.Printed<Volt>(new Volts(9.0m)));
        Assert.Equal("?", FigureDisplay.Printed((Volts?)null));
    }

    [Theory]
    [InlineData("8.97312", "8.973 V")]
    [InlineData("0.00004", "0 V")]
    [InlineData("0.0004", "0 V")]
    [InlineData("0.0006", "1 mV")]
    public void A_computed_voltage_goes_to_the_millivolt(string volts, string text) =>
        Assert.Equal(text, FigureDisplay.Computed(new Volts(decimal.Parse(volts, System.Globalization.CultureInfo.InvariantCulture))));

    [Fact]
    public void A_computed_current_and_time_go_to_a_tenth_of_a_thousandth()
    {
        Assert.Equal("12.3 mA", FigureDisplay.Computed(new Amps(0.012345m)));
        Assert.Equal("30.1 ms", FigureDisplay.Computed(new Seconds(0.03012m)));
        Assert.Equal("?", FigureDisplay.Computed((Amps?)null));
    }

    [Theory]
    [InlineData(1.0, "100 %")]
    [InlineData(0.99999, "over 99.9 %")]
    [InlineData(0.00001, "under 0.1 %")]
    [InlineData(0.0, "0 %")]
    [InlineData(0.1234, "12.3 %")]
    public void A_chance_that_is_not_quite_certain_is_not_called_so(double share, string text) => Assert.Equal(text, FigureDisplay.Chance(share));

    [Fact]
    public void Shares_prices_masses_and_sizes()
    {
        Assert.Equal("12.5 %", FigureDisplay.Percent(0.125m));
        Assert.Equal("35.00", FigureDisplay.Price(35m));
        Assert.Equal("999.5 g", FigureDisplay.Mass(999.5m));
        Assert.Equal("1.25 kg", FigureDisplay.Mass(1250m));
        Assert.Equal("999 kB", FigureDisplay.Size(999_000));
        Assert.Equal("1.2 MB", FigureDisplay.Size(1_200_000));
        Assert.Equal("0.333", FigureDisplay.Number(1m / 3m));
    }
}
