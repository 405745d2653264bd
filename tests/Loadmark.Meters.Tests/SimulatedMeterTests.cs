using Loadmark.Meters.Simulated;

namespace Loadmark.Meters.Tests;

public sealed class SimulatedMeterTests
{
    [Fact]
    public void Values_come_one_after_the_other_and_begin_again()
    {
        var meter = new SimulatedMeter([9.02, -9.1, double.PositiveInfinity, double.NegativeInfinity, double.NaN], [0.21]);
        Assert.Equal(
            ["+9.02000000E+00", "-9.10000000E+00", "9.9E+37", "-9.9E+37", "9.91E+37", "+9.02000000E+00"],
            Enumerable.Range(0, 6).Select(_ => meter.Answer("MEAS:VOLT:DC?")));
        Assert.Equal("+2.10000000E-01", meter.Answer("measure:current?"));
        Assert.Null(meter.Answer("*RST"));
        Assert.Equal("+9.02000000E+00;-9.10000000E+00;+2.10000000E-01", meter.Answer("MEAS?;:READ?;:MEAS:CURR:DC?"));
    }

    [Fact]
    public void A_header_goes_on_from_where_the_one_before_it_stood()
    {
        var meter = new SimulatedMeter([9], [0.2]);
        Assert.Equal("+9.00000000E+00;+2.00000000E-01", meter.Answer("MEAS:VOLT?;CURR?"));
        Assert.Equal("+9.00000000E+00;1;+2.00000000E-01", meter.Answer("MEAS:VOLT?;*OPC?;CURR?"));
        Assert.Equal("+9.00000000E+00", meter.Answer("MEAS:VOLT?;READ?"));
        Assert.Equal("-113,\"Undefined header\"", meter.Answer("SYST:ERR?"));
    }

    [Fact]
    public void What_it_does_not_know_is_in_the_queue_and_the_queue_has_an_end()
    {
        var meter = new SimulatedMeter([9], [0.2]);
        foreach (var wrong in new[] { "*ESE", "*ESE x", "*ESE 256", "*ESE 12 12" })
            Assert.Null(meter.Answer(wrong));
        Assert.Equal(
            ["-109,\"Missing parameter\"", "-104,\"Data type error\"", "-222,\"Data out of range\"", "-104,\"Data type error\"", "0,\"No error\""],
            Enumerable.Range(0, 5).Select(_ => meter.Answer("SYST:ERR?")));
        for (var wrong = 0; wrong < 100; wrong++)
            Assert.Null(meter.Answer("NO:SUCH?"));
        var errors = Enumerable.Range(0, 21).Select(_ => meter.Answer("SYST:ERR?")).ToList();
        Assert.Equal(("-113,\"Undefined header\"", "-350,\"Queue overflow\"", "0,\"No error\""), (errors[18], errors[19], errors[20]));
        Assert.Null(meter.Answer("ABCD;*CLS"));
        Assert.Equal("0", meter.Answer("*ESR?"));
        Assert.Null(meter.Answer(" ; "));
    }
}
