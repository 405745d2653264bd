using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>What stands at an input is never a setting of the output, whatever the thing is called before the word.</summary>
public sealed class InputSideTests
{
    [Theory]
    [InlineData("PACK IN 5V 2A, OUT 9V 2A")]
    [InlineData("10000mAh IN 5V 2A OUT 9V 2A")]
    [InlineData("37Wh IN 5V 2A OUT 9V 2A")]
    [InlineData("Li-ion IN 5V 2A OUT 9V 2A")]
    [InlineData("MODEL 12 IN 5VDC 2A OUT 9VDC 2A")]
    [InlineData("BOOSTER IN 5 V 2 A / OUT 9 V 2 A")]
    public void A_word_before_it_does_not_hide_an_input(string label)
    {
        var read = NameplateReader.Read(label);
        Assert.Equal(5m, read.Input!.Volts!.Value.Low.Value);
        Assert.Equal(2m, read.Input.Amps!.Value.Value);
        Assert.Equal(9m, Assert.Single(read.Modes).Volts!.Value.Low.Value);
    }

    /// <summary>The names of a pedal's sockets, and what is made in a year, are no inputs of a supply.</summary>
    [Theory]
    [InlineData("GUITAR IN AMP OUT 9V DC 20mA")]
    [InlineData("MADE IN 2019 9V DC 20mA")]
    [InlineData("GUITAR IN 9V DC 20mA")]
    public void Names_of_sockets_are_no_inputs(string label)
    {
        var read = NameplateReader.Read(label);
        Assert.Null(read.Input);
        Assert.Equal(9m, Assert.Single(read.Modes).Volts!.Value.Low.Value);
    }
}
