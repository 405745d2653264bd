namespace Loadmark.Core.Tests.Quantities;

public sealed class QuantityReaderTests
{
    [Theory]
    [InlineData("300mA", "0.3")]
    [InlineData("300 mA", "0.3")]
    [InlineData("0,3 A", "0.3")]
    [InlineData("1.2 A", "1.2")]
    [InlineData(".5A", "0.5")]
    [InlineData("300 milliamps", "0.3")]
    public void Reads_a_current(string text, string amps)
    {
        Assert.True(QuantityReader.TryRead<Ampere>(text, out var read, out var problem), problem);
        Assert.Equal(decimal.Parse(amps), read.Value);
    }

    [Theory]
    [InlineData("")]
    [InlineData("300")]
    [InlineData("-300 mA")]
    [InlineData("NaN A")]
    [InlineData("300 mV")]
    [InlineData("9999999 A")]
    [InlineData("1,000 mA")]
    [InlineData("1e300 A")]
    public void Refuses_what_is_not_a_current_and_says_why(string text)
    {
        Assert.False(QuantityReader.TryRead<Ampere>(text, out _, out var problem));
        Assert.False(string.IsNullOrEmpty(problem));
    }
}
