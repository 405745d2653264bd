using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

public sealed class NameplateWriterTests
{
    [Theory]
    [InlineData("DC9V/0.3A (-) center", "9V DC 0.3A, centre negative")]
    [InlineData("INPUT 100-240V~ 50/60Hz 0.6A OUTPUT 12V⎓2A", "MAINS 100V to 240V 50Hz to 60Hz 0.6A OUTPUT 12V DC 2A")]
    [InlineData("9 V 500 mA; 12 V 400 mA", "9V 0.5A; 12V 0.4A")]
    [InlineData("9-18V 20-50mA 2.1mm barrel", "9V to 18V 0.02A to 0.05A, 5.5x2.1")]
    [InlineData("300mA 2.7W", "OUTPUT 0.3A 2.7W")]
    [InlineData("9V 45W", "9V 45W")]
    [InlineData("9V AC/DC", "9V AC/DC")]
    [InlineData("nothing to see", "")]
    public void Writes_the_canonical_label(string label, string written) =>
        Assert.Equal(written, NameplateWriter.Write(NameplateReader.Read(label)));
}
