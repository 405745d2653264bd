using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

public sealed class RigFileWriterTests
{
    [Fact]
    public void What_is_written_reads_back_as_the_same_rig() =>
        RigGen.Rigs.Sample(
            rig =>
            {
                var text = RigFileWriter.Write(rig);
                Assert.Equal(rig, Fixtures.Read(text));
                Assert.Equal(text, RigFileWriter.Write(Fixtures.Read(text)));

                // What the reader takes, the checks must take too.
                Assert.Equal(rig.Name, NameplateCheck.Of(rig).Rig);
            },
            iter: Rounds.Of(2_000));

    [Fact]
    public void Writes_the_pit_rig_in_its_own_spelling()
    {
        var text = RigFileWriter.Write(Fixtures.Read(Fixtures.Pit));
        Assert.Contains("\n  drive-3: {kind: analog drive, label: 9V DC 12mA centre negative}\n", text, StringComparison.Ordinal);
        Assert.Contains("\n    plug: 5.5x2.5\n", text, StringComparison.Ordinal);
        Assert.Contains("\n    start: 520 mA for 1.5 s\n", text, StringComparison.Ordinal);
        Assert.Contains("\n  - {from: [brick/2, brick/3], joined: series, to: preamp-2}\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Writes_figures_of_any_size_exactly()
    {
        var rig = new Rig
        {
            Name = "r",
            Loads = [new Load { Id = "x", Run = new Amps(0.123456789m), InputCapacitance = new Farads(0.000000000123456m), Polarity = Polarity.CentreNegative }],
            Headroom = 0.123456m,
        };
        var text = RigFileWriter.Write(rig);
        Assert.Contains("0.123456789 A", text, StringComparison.Ordinal);
        Assert.Contains("centre negative", text, StringComparison.Ordinal);
        Assert.Equal(rig, Fixtures.Read(text));
    }

    [Fact]
    public void Refuses_rigs_that_no_file_can_hold()
    {
        Assert.Throws<ArgumentException>(() => RigFileWriter.Write(new Rig { Name = "r", Loads = [new Load { Id = "x" }, new Load { Id = "x" }] }));
        Assert.Throws<ArgumentException>(() => RigFileWriter.Write(new Rig { Name = "r", Loads = [new Load { Id = "x", Run = new Amps(1m / 3m) }] }));
        Assert.Throws<ArgumentException>(() => RigFileWriter.Write(new Rig { Name = "r", Wired = [new Feed { From = [new("a", "1")], To = ["x"] }] }));
    }
}
