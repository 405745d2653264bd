using Loadmark.Files.Entry;

namespace Loadmark.Files.Tests.Entry;

/// <summary>Names in what people say of one thing; what is printed stays what it was.</summary>
public sealed class NamedLabelTests
{
    [Theory]
    [InlineData("My delay says 9V DC 300mA centre negative", "delay", "9V DC 300mA centre negative")]
    [InlineData("delay 9V DC 300mA center neg", "delay", "9V DC 300mA center neg")]
    [InlineData("9V DC 300mA centre negative (my delay)", "delay", "9V DC 300mA centre negative")]
    [InlineData("the tuner is 9V 30mA", "tuner", "9V 30mA")]
    [InlineData("300mA 9V tuner", "tuner", "300mA 9V")]
    [InlineData("tuner: 9V 30mA", "tuner", "9V 30mA")]
    [InlineData("drive-3 9V DC 12mA", "drive-3", "9V DC 12mA")]
    [InlineData("drive-3: 9V DC 12mA", "drive-3", "9V DC 12mA")]
    [InlineData("psu: 9V 2A", "psu", "9V 2A")]
    [InlineData("My adaptor: 9V 2A centre negative", "adaptor", "9V 2A centre negative")]
    [InlineData("brick: 8 x 9V 100mA", "brick", "8 x 9V 100mA")]
    [InlineData("power supply: 9V DC 1.7A", "power supply", "9V DC 1.7A")]
    [InlineData("it says 9 V and 100 mA on the back", null, "9 V and 100 mA on")]
    [InlineData("9V DC 12mA", null, "9V DC 12mA")]
    [InlineData("OUTPUT: 9V DC 2A", null, "OUTPUT: 9V DC 2A")]
    [InlineData("9V DC 12mA wobble thing 200 frogs, and a very long story about it", null, "9V DC 12mA wobble thing 200 frogs, and a very long story about it")]
    [InlineData("", null, "")]
    public void A_name_stands_before_after_or_round_the_figures(string text, string? name, string label) =>
        Assert.Equal(new NamedLabel(name, label), NamedLabel.Of(text));
}
