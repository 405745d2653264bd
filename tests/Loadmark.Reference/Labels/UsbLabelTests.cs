using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Labels;

/// <summary>The fixed supplies of USB Power Delivery (standard power range) as a charger's label lists them.</summary>
[Trait("Source", "USB PD 3.2 fixed supplies, as printed by TI SLVSFM6A and Renesas")]
public sealed class UsbLabelTests
{
    [Theory]
    [InlineData("5V⎓3A, 9V⎓3A, 15V⎓3A, 20V⎓5A")]
    [InlineData("OUTPUT: 5V⎓3A; 9V⎓3A; 15V⎓3A; 20V⎓5A")]
    [InlineData("5V⎓3A or 9V⎓3A or 15V⎓3A or 20V⎓5A")]
    public void Modes_are_those_of_the_standard(string label)
    {
        var rows = ReferenceTable.Read("usb_power").Where(row => row["kind"] == "SPR fixed").ToList();
        Assert.All(rows, row => Assert.StartsWith("read", row["source_or_read_or_memory"], StringComparison.Ordinal));
        var published = rows
            .GroupBy(row => row.Number("max_V"), row => row.Number("max_A"))
            .Select(group => (Volts: new Volts(group.Key), Amps: new Amps(group.Max())));

        var nameplate = NameplateReader.Read(label);

        Assert.Equal(SupplyForm.Direct, nameplate.Form.Value);
        Assert.All(nameplate.Modes, mode => Assert.True(mode.Volts is { IsSingle: true }));
        Assert.Equal(published, nameplate.Modes.Select(mode => (mode.Volts!.Value.Low, mode.Amps!.Value.Value)));
        Assert.Empty(nameplate.Conflicts);
    }
}
