namespace Loadmark.Core.Tests.Quantities;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("0.3", "300 mA")]
    [InlineData("1.2", "1.2 A")]
    [InlineData("0", "0 A")]
    [InlineData("0.0999999", "100 mA")]
    [InlineData("0.00099996", "1 mA")]
    [InlineData("0.3333333333", "333.3 mA")]
    [InlineData("12.3456", "12.35 A")]
    [InlineData("0.000012", "12 µA")]
    public void Amps_read_with_a_prefix_and_four_digits(string amps, string text) => Assert.Equal(text, new Amps(decimal.Parse(amps)).ToString());

    [Theory]
    [InlineData("0.5", "0.5 W")]
    [InlineData("45.0", "45 W")]
    public void Watts_read_without_a_prefix(string watts, string text) => Assert.Equal(text, new Watts(decimal.Parse(watts)).ToString());

    [Fact]
    public void A_cross_section_reads_in_square_millimetres() => Assert.Equal("0.22 mm²", new SquareMetres(0.22e-6m).ToString());

    [Fact]
    public void What_is_written_in_full_reads_back_as_the_same_value()
    {
        foreach (var value in new[] { 0m, 0.3m, 0.333333333333m, 12.345678m })
        {
            Assert.True(QuantityReader.TryRead<Ampere>(new Amps(value).ToExactString(), out var read, out var problem), problem);
            Assert.Equal(value, read.Value);
        }
    }

    [Theory]
    [InlineData(9, 9, "9 V", true)]
    [InlineData(9, 18, "9 V to 18 V", false)]
    public void A_range_holds_its_ends(int low, int high, string text, bool isSingle)
    {
        var range = new QuantityRange<Volt>(new Volts(low), new Volts(high));
        Assert.Equal(text, range.ToString());
        Assert.Equal(isSingle, range.IsSingle);
        Assert.True(range.Contains(range.Low) && range.Contains(range.High));
        Assert.False(range.Contains(new Volts(low - 0.001m)) || range.Contains(new Volts(high + 0.001m)));
    }
}
