using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>The voltage with nothing drawn is no setting: an adaptor "9 V, 14 V no load" cannot be set to 14 V.</summary>
public sealed class NoLoadTests
{
    [Theory]
    [InlineData("OUTPUT 9V 300mA, 14V no load", 14)]
    [InlineData("9V DC 300mA (no load 14V)", 14)]
    [InlineData("9V DC 300mA (14V DC no load)", 14)]
    [InlineData("9V 500mA unloaded 13.5V", 13.5)]
    [InlineData("open circuit 14V, 9V 300mA", 14)]
    [InlineData("open-circuit voltage: 14 V, output 9V 300mA", 14)]
    [InlineData("9V⎓300mA max 14V off load", 14)]
    [InlineData("9V no load 14V 300mA", 14)]
    [InlineData("9V no-load 14V, 300mA", 14)]
    [InlineData("9V 300mA Leerlauf 14V", 14)]
    [InlineData("INPUT 230V~ 50Hz OUTPUT 9V⎓300mA NO LOAD: 13V", 13)]
    public void It_is_read_apart(string text, double volts)
    {
        var label = NameplateReader.Read(text);
        Assert.Equal(new Volts((decimal)volts), label.NoLoad);
        var mode = Assert.Single(label.Modes);
        Assert.Equal(new Volts(9), mode.Volts!.Value.High);
        Assert.Empty(label.Unread);
        Assert.Equal(label.NoLoad, NameplateReader.Read(NameplateWriter.Write(label)).NoLoad);
    }

    [Theory]
    [InlineData("9V 300mA, 12V 200mA")]
    [InlineData("9V no load")]
    [InlineData("no load 230V, 9V 300mA output is on")]
    public void Nothing_else_is_taken_for_it(string text)
    {
        var label = NameplateReader.Read(text);
        Assert.NotEqual(new Volts(9), label.NoLoad);
        Assert.Contains(label.Modes, static mode => mode.Volts?.High == new Volts(9));
    }

    [Theory]
    [InlineData("Never use without load 9V 300mA")]
    [InlineData("without load 9V")]
    [InlineData("open circuit protection 9V 300mA")]
    public void The_only_voltage_of_a_label_is_no_voltage_with_nothing_drawn(string text) => Assert.Null(NameplateReader.Read(text).NoLoad);
}
