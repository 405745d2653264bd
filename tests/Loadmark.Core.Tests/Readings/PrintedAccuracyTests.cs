using CsCheck;
using Loadmark.Core.Readings;

namespace Loadmark.Core.Tests.Readings;

public sealed class PrintedAccuracyTests
{
    [Theory]
    [InlineData("0.5 % + 2 digits", 0.005, 0, 2, 0)]
    [InlineData("±(0.5% + 2)", 0.005, 0, 2, 0)]
    [InlineData("± ( 0,5 % + 2 )", 0.005, 0, 2, 0)]
    [InlineData("+/-0.5% ±2", 0.005, 0, 2, 0)]
    [InlineData("0.5 % rdg + 3 dgt", 0.005, 0, 3, 0)]
    [InlineData("0.5% rdg. + 3 dgts.", 0.005, 0, 3, 0)]
    [InlineData("1 %", 0.01, 0, 0, 0)]
    [InlineData("0.05 V", 0, 0, 0, 0.05)]
    [InlineData("0.8% of reading + 0.1% of range", 0.008, 0.001, 0, 0)]
    [InlineData("0.8% of the reading + 0.1% FS + 1 count", 0.008, 0.001, 1, 0)]
    [InlineData("0.1 % of full scale", 0, 0.001, 0, 0)]
    [InlineData("1.5 % + 3 counts of 10 mV", 0.015, 0, 0, 0.03)]
    [InlineData("0.5 % + 2 lsd + 3 mV", 0.005, 0, 2, 0.003)]
    [InlineData("5 digits", 0, 0, 5, 0)]
    public void Reads_what_makers_print(string text, double ofReading, double ofRange, double digits, double plus)
    {
        Assert.True(PrintedAccuracyReader.TryRead<Volt>(text, out var accuracy, out var fault), $"{fault}");
        Assert.Equal(new PrintedAccuracy<Volt>((decimal)ofReading, (decimal)ofRange, (decimal)digits, new Volts((decimal)plus)), accuracy);
        Assert.Null(fault);
    }

    [Theory]
    [InlineData("", 0, "it is empty")]
    [InlineData("±()", 0, "it is empty")]
    [InlineData("good", 0, "it does not start with a number")]
    [InlineData("2", 0, "the unit is missing (V)")]
    [InlineData("0.5 % + 2.5", 8, "the unit is missing (V)")]
    [InlineData("0.5 % + rubbish", 8, "it does not start with a number")]
    [InlineData("0.5 % of the moon", 0, "'of the moon' is neither the reading nor the range")]
    [InlineData("0.5 % + 2 mA", 8, "'mA' is not a unit that fits here (V)")]
    [InlineData("0.5 % + + 2", 8, "it is empty")]
    [InlineData("0.5 % +", 7, "it is empty")]
    [InlineData("0.5 % + 2 digits too many", 8, "'too many' after a number of digits says nothing")]
    [InlineData("0.5 % + 20000 digits", 8, "'20000 digits' does not begin with a number of counts")]
    [InlineData("100 %", 0, "'100 %' is not a share of the reading such as 1 %")]
    [InlineData("-1 %", 0, "'-1 %' is not a share of the reading such as 1 %")]
    [InlineData("60 % + 60 %", 0, "the shares come to 100 % or more")]
    [InlineData("60 % fs + 60 % fs", 0, "the shares come to 100 % or more")]
    public void Says_what_it_could_not_read_and_where(string text, int start, string problem)
    {
        Assert.False(PrintedAccuracyReader.TryRead<Volt>(text, out var accuracy, out var fault));
        Assert.Equal((start, problem), (fault!.Place.Start, fault.Problem));
        Assert.Equal(default, accuracy);
        Assert.InRange(fault.Place.End, 0, text.Length);
        Assert.StartsWith($"at character {start + 1}: {problem}; expected a share of the reading such as 0.5 %", $"{fault}", StringComparison.Ordinal);
    }

    [Fact]
    public void Whatever_is_typed_is_read_or_refused() =>
        Gen.String[Gen.Char["0123456789.,%±+-() oOfFdDgGtTrRsSmMuUVvAaN"], 0, 24].Sample(static text =>
            Assert.Equal(PrintedAccuracyReader.TryRead<Volt>(text, out _, out var fault), fault is null));

    [Fact]
    public void What_is_written_is_read_back() =>
        Gen.Select(Gen.Int[0, 9999], Gen.Int[0, 9999], Gen.Int[0, 50], Gen.Int[0, 5000]).Sample(static (reading, range, digits, plus) =>
        {
            var accuracy = new PrintedAccuracy<Ampere>(reading * 1e-4m, range * 1e-4m, digits, new Amps(plus * 1e-6m));
            Assert.True(PrintedAccuracyReader.TryRead<Ampere>($"{accuracy}", out var again, out var fault), $"{accuracy} {fault}");
            Assert.Equal(accuracy, again);
        });

    [Fact]
    public void What_the_band_needs_and_is_not_known_is_not_taken_for_nothing()
    {
        var reading = new Volts(9);
        Assert.Null(new PrintedAccuracy<Volt>(0.005m, 0, 2, Volts.Zero).Within(reading));
        Assert.Null(new PrintedAccuracy<Volt>(0.005m, 0.001m, 0, Volts.Zero).Within(reading, step: new Volts(0.01m)));
        Assert.Null(new PrintedAccuracy<Volt>(0.005m, 0, 2, Volts.Zero).StandardUncertainty(reading));
        Assert.Equal(0.045m, new PrintedAccuracy<Volt>(0.005m, 0, 0, Volts.Zero).Within(reading)!.Value.Value);
        Assert.Equal(0.125m, new PrintedAccuracy<Volt>(0.005m, 0.001m, 2, new Volts(0.04m)).Within(-1 * reading, new Volts(0.01m), new Volts(20))!.Value.Value);
    }
}
