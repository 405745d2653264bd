using CsCheck;
using Loadmark.Core.Readings;

namespace Loadmark.Core.Tests.Readings;

public sealed class DisplayedValueTests
{
    [Theory]
    [InlineData("9.02", 9.02, 0.01)]
    [InlineData("9.00 V", 9, 0.01)]
    [InlineData("9", 9, 1)]
    [InlineData("-9,02V", -9.02, 0.01)]
    [InlineData("+ 0.5", 0.5, 0.1)]
    [InlineData("0.00", 0, 0.01)]
    [InlineData("812 mV", 0.812, 0.001)]
    [InlineData("812.4mV", 0.8124, 0.0001)]
    public void The_step_is_that_of_the_last_digit(string text, double volts, double step)
    {
        Assert.True(DisplayedValueReader.TryRead<Volt>(text, out var value, out var problem), problem);
        Assert.Equal((new Volts((decimal)volts), new Volts((decimal)step)), (value.Value, value.Step));
        Assert.Equal(text.Trim()[0] is '+' or '-' or '\u2212' or '\u2013', value.IsSigned);
    }

    [Theory]
    [InlineData("", "it is empty")]
    [InlineData("OL", "the meter says that its range is exceeded; choose a larger one")]
    [InlineData("--9", "it has two signs")]
    [InlineData("9 mA", "'mA' is not a unit that fits here (V)")]
    [InlineData("9,020 ", null)]
    [InlineData("1e3", "numbers with an exponent are not read; write it out")]
    [InlineData("5000", "it is more than anything on a pedalboard has (at most 1000 V)")]
    public void Refuses_what_is_no_reading(string text, string? expected)
    {
        Assert.False(DisplayedValueReader.TryRead<Volt>(text, out _, out var problem));
        Assert.Equal(expected ?? "the comma may mean a decimal point or thousands; write the number without it", problem);
    }

    [Fact]
    public void What_a_display_shows_is_read_with_its_digits() =>
        Gen.Select(Gen.Int[-99_999, 99_999], Gen.Int[2, 6]).Sample(static (counts, places) =>
        {
            var scale = (byte)places;
            var shown = new decimal(Math.Abs(counts), 0, 0, counts < 0, scale);
            Assert.True(DisplayedValueReader.TryRead<Volt>(shown.ToString(System.Globalization.CultureInfo.InvariantCulture), out var value, out var problem), problem);
            Assert.Equal(shown, value.Value.Value);
            Assert.Equal(new decimal(1, 0, 0, false, scale), value.Step.Value);
        });
}
