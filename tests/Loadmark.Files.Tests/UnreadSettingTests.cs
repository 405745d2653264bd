using Loadmark.Core.Checks;

namespace Loadmark.Files.Tests;

/// <summary>What the fuzzer found: the reader and the checks must agree on which settings an outlet has.</summary>
public sealed class UnreadSettingTests
{
    [Fact]
    public void An_outlet_with_a_mode_of_unknown_voltage_may_be_set_to_anything()
    {
        var reading = RigFileReader.Read(
            """
            rig: r
            loads: { delay-2: { label: 9V 300mA } }
            supplies: { brick: { outlets: { 1: "9? V DC 500 mA; 12 VC 250 mA" } } }
            wired: [ { from: brick/1, at: 18 V, to: delay-2 } ]
            """,
            "f");
        Assert.NotNull(reading.Rig);
        Assert.Equal(Severity.Harm, NameplateCheck.Of(reading.Rig).Verdict);
    }
}
