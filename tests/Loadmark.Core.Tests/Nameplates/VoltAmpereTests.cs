using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>
/// Volt-amperes are effective volts times effective amps (IEC 60050, 131-11-41, from memory): of alternating current they give the current
/// and not the power, of direct current neither, since a transformer gives less behind a rectifier.
/// </summary>
public sealed class VoltAmpereTests
{
    [Theory]
    [InlineData("OUTPUT 9V AC 10VA", 9, "10/9", null, 10, "amps")]
    [InlineData("OUTPUT 9V~ 9VA", 9, "1", null, 9, "amps")]
    [InlineData("9V AC 1A 9VA", 9, "1", null, 9, "")]
    [InlineData("9V AC 1A", 9, "1", null, 9, "voltAmps")]
    [InlineData("9V AC 1A 6W", 9, "1", 6.0, null, "")]
    [InlineData("OUTPUT 9V DC 10VA", 9, null, null, 10, "")]
    [InlineData("OUTPUT 9V 10VA", 9, null, null, 10, "")]
    [InlineData("OUTPUT 9V DC 500mA 6VA", 9, "0.5", 4.5, 6, "watts")]
    [InlineData("9V DC 1A", 9, "1", 9.0, null, "watts")]
    [InlineData("12 VAC 10VA 8W", 12, "10/12", 8.0, 10, "amps")]
    public void Are_no_watts(string label, int volts, string? amps, double? watts, int? voltAmps, string derived)
    {
        var reading = NameplateReader.Read(label);
        var mode = Assert.Single(reading.Modes);
        Assert.Equal(volts, mode.Volts!.Value.High.Value);
        Assert.Equal(Quotient(amps), mode.Amps?.Value.Value);
        Assert.Equal((decimal?)watts, mode.Watts?.Value.Value);
        Assert.Equal(voltAmps, mode.VoltAmps?.Value.Value);
        Assert.Equal(derived, string.Join(' ', reading.Derived));
        Assert.Empty(reading.Conflicts);
        Assert.Empty(reading.Unread);
        Assert.Equal(mode, Assert.Single(NameplateReader.Read(NameplateWriter.Write(reading)).Modes) with
        {
            VoltsPlace = mode.VoltsPlace,
            AmpsPlace = mode.AmpsPlace,
            WattsPlace = mode.WattsPlace,
        });

        static decimal? Quotient(string? text) => text?.Split('/') is not { } parts ? null
            : parts.Length == 1 ? decimal.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture)
            : int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture) / (decimal)int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Of_the_mains_input_are_a_transformers()
    {
        var reading = NameplateReader.Read("INPUT 230V~ 50Hz 12VA OUTPUT 9V⎓ 500mA");
        Assert.Equal(new VoltAmps(12), reading.Mains!.VoltAmps);
        Assert.Null(reading.Mains.Watts);
        Assert.Equal(new Watts(4.5m), Assert.Single(reading.Modes).Watts!.Value.Value);
        Assert.True(reading.PrintsVoltAmps);
        Assert.Equal(new VoltAmps(12), NameplateReader.Read(NameplateWriter.Write(reading)).Mains!.VoltAmps);
        Assert.False(NameplateReader.Read("INPUT 230V~ 50Hz 12W OUTPUT 9V⎓ 500mA").PrintsVoltAmps);
        Assert.False(NameplateReader.Read("OUTPUT 9V⎓ 500mA, not 12VA").PrintsVoltAmps);
    }

    [Fact]
    public void That_do_not_agree_with_the_current_are_a_conflict_of_alternating_current_alone()
    {
        Assert.Equal("20 VA is printed, but 9 V × 1 A = 9 VA", Assert.Single(NameplateReader.Read("9V AC 1A 20VA").Conflicts));
        Assert.Equal("20 W is printed, but 9 V × 1 A = 9 W", Assert.Single(NameplateReader.Read("9V AC 1A 20W").Conflicts));
        Assert.Empty(NameplateReader.Read("9V DC 1A 20VA").Conflicts);
    }

    [Fact]
    public void At_an_outlet_are_its_own()
    {
        var reading = NameplateReader.Read("OUTPUTS 1-2 9V DC 100mA, 3 9V AC 9VA");
        Assert.Equal(new Watts(0.9m), reading.Outlets[0].Modes[0].Watts!.Value.Value);
        Assert.Equal(new Figure<Amps>(new Amps(1), Origin.Derived), reading.Outlets[1].Modes[0].Amps);
        Assert.Equal(new VoltAmps(9), reading.Outlets[1].Modes[0].VoltAmps!.Value.Value);
    }
}
