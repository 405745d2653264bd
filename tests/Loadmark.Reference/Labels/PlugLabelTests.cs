using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Labels;

/// <summary>The two plugs of IEC 60130-10 type A as labels print their sizes.</summary>
[Trait("Source", "IEC 60130-10:1971 type A, read in part")]
public sealed class PlugLabelTests
{
    [Theory]
    [InlineData("type A, 2.1", "x")]
    [InlineData("type A, 2.1", " × ")]
    [InlineData("type A, 2.5", "x")]
    [InlineData("type A, 2.5", " × ")]
    public void Size_on_a_label_is_the_plug_of_the_standard(string type, string times)
    {
        var row = ReferenceTable.Row("connectors", "type", type);
        var expected = row["pin_mm"] == "2.1" ? Plug.Common : Plug.WidePin;

        var nameplate = NameplateReader.Read($"9V DC 300mA {row["plug_outer_mm"]}{times}{row["pin_mm"]} mm");

        Assert.Equal(expected, nameplate.Plug.Value);
    }
}
