using Loadmark.Core.Nameplates;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Labels;

/// <summary>
/// Valves as a published library of symbols lists them: none is a figure, alone or beside figures. The systems by which the reader knows
/// designations are from memory; that they cover these is not.
/// </summary>
[Trait("Source", "KiCad symbol library, Valve (CC BY-SA 4.0 with the KiCad libraries exception)")]
public sealed class ValveDesignationTests
{
    public static IEnumerable<TheoryDataRow<string>> Valves() => ReferenceTable.Read("valve_designations")
        .Select(static row => new TheoryDataRow<string>(row["designation"]) { TestDisplayName = $"{row["designation"]} [KiCad, Valve]" });

    [Theory]
    [MemberData(nameof(Valves))]
    public void Are_no_figures(string designation)
    {
        var alone = NameplateReader.Read(designation);
        Assert.Empty(alone.Modes);
        Assert.Null(alone.Mains);
        Assert.NotEmpty(alone.Unread);
        foreach (var label in (string[])[$"{designation}, 9V 100mA", $"9V 100mA {designation}", $"valve {designation} 9V 100mA"])
        {
            var mode = Assert.Single(NameplateReader.Read(label).Modes);
            Assert.Equal(QuantityRange<Volt>.Single(new Volts(9)), mode.Volts);
            Assert.Equal(new Amps(0.1m), mode.Amps?.Value);
        }
    }
}
