using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Readings;
using Loadmark.Workshop.Accepting;

namespace Loadmark.Workshop.Tests.Accepting;

/// <summary>Which readings still hold after a rig was changed.</summary>
public sealed class HeldReadingsTests
{
    private static readonly string Pit = File.ReadAllText(Repository.PathOf("examples/pit.rig.yaml"));
    private static readonly string Measured = File.ReadAllText(Repository.PathOf("examples/pit.readings.csv"));

    [Theory]
    [InlineData("rig: Pit board", "rig: Pit board, new name", 0)]
    [InlineData("run: 210 mA", "run: 208 mA", 0)]
    [InlineData("name: Delay with the long tail", "name: Long tail", 0)]
    public void What_only_tells_of_things_changes_no_reading(string was, string becomes, int lost) =>
        Assert.Equal(lost, Held(was, becomes).Lost.Count);

    /// <summary>The chain and all that hangs on the same supply loaded; open the chain's own plugs alone, when the outlet or the lead is another.</summary>
    [Fact]
    public void Another_outlet_loses_its_own_open_readings_and_all_loaded_ones()
    {
        var held = Held("from: brick/3", "from: brick/4");
        Assert.Contains("tuner-1 at brick/3 plug 1, open", held.Lost);
        Assert.DoesNotContain(held.Lost, static one => one.EndsWith("open", StringComparison.Ordinal) && !one.StartsWith("tuner-1", StringComparison.Ordinal));
        Assert.Equal(7, held.Lost.Items.Count(static one => one.EndsWith("loaded", StringComparison.Ordinal)));
        Assert.Equal(3, held.Lost.Items.Count(static one => one.EndsWith("draw", StringComparison.Ordinal)));
        Assert.Equal(6, held.Held);
        Assert.Equal(6, held.Session.Readings.Count);
    }

    [Fact]
    public void Another_load_loses_what_was_measured_loaded_and_keeps_the_open_volts()
    {
        var held = Held("kind: digital tuner", "kind: digital");
        Assert.DoesNotContain(held.Lost, static one => one.EndsWith("open", StringComparison.Ordinal));
        Assert.Equal(7, held.Held);
    }

    [Fact]
    public void Other_mains_lose_all_of_it() => Assert.Equal(0, Held("mains: 230 V 50 Hz", "mains: 120 V 60 Hz").Held);

    /// <summary>No rig is too odd to be compared, and compared with itself it loses nothing.</summary>
    [Fact]
    public void A_rig_that_is_as_it_was_loses_nothing()
    {
        foreach (var file in Directory.GetFiles(Repository.PathOf("examples"), "*.rig.yaml"))
        {
            var rig = Read(File.ReadAllText(file));
            var plugs = RigPlugs.Of(rig);
            var session = ReadingsReader.Read(
                string.Concat(plugs.Plugs.Items.Select(static plug => $"{plug.Name}: -9.00 open, -9.00 loaded, 10 mA\n")), "r", plugs).Session!;

            // As a record has it: written and read again.
            var kept = Read(RigFileWriter.Write(rig.WithoutLibrary()));
            var held = HeldReadings.Of(kept, session, rig);
            Assert.Empty(held.Lost);
            Assert.Equal(3 * plugs.Plugs.Count, held.Held);
        }
    }

    private static HeldReadings Held(string was, string becomes)
    {
        Assert.Contains(was, Pit, StringComparison.Ordinal);
        var before = Read(Pit);
        var session = ReadingsReader.Read(Measured, "r", RigPlugs.Of(before)).Session!;
        return HeldReadings.Of(before, session, Read(Pit.Replace(was, becomes, StringComparison.Ordinal)));
    }

    private static Rig Read(string text)
    {
        var reading = RigFileReader.Read(text, "rig");
        Assert.True(reading.Rig is not null, string.Join('\n', reading.Errors));
        return reading.Rig;
    }
}
