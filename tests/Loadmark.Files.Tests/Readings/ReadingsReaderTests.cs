using System.Collections.Immutable;
using CsCheck;
using Loadmark.Core.Acceptance;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Ratings;
using Loadmark.Core.Readings;
using Loadmark.Files.Readings;

namespace Loadmark.Files.Tests.Readings;

/// <summary>What was measured, as people write it down.</summary>
public sealed class ReadingsReaderTests
{
    private const string Rig = """
        rig: three
        loads: { drive-3: 9V DC 12mA, chorus-1: 9V DC 45mA, delay-2: 9V DC 300mA }
        supplies: { brick: { label: "INPUT 100-240V~", outlets: { 1-3: 9 V 500 mA } } }
        leads: { chain-1: { type: daisy chain, plugs: 3 } }
        wired:
          - { from: brick/1, lead: chain-1, to: [drive-3, chorus-1] }
          - { from: brick/2, to: [delay-2] }
        """;

    private static readonly string[] Pieces =
        ["delay-2", "plug", "open", ",", ";", ":", "\n", "\"", "-9.02 V", "9", "volts accuracy", "%", "\t", " ", "#", "'", "loaded"];

    private static readonly PlugList Plugs = PlugList.Of(LeadList.Of(WiredRig.Of(RigFileReader.Read(Rig, "rig").Rig!)));

    [Theory]
    [InlineData("plug,open,loaded,draw\ndelay-2,-9.02,-8.95,0.212\n")]
    [InlineData("load;open V;loaded (V);draw mA\ndelay-2;-9,02;-8,95;212\n")]
    [InlineData("Plug\tNo load\tRunning\tCurrent (mA)\nbrick/2\t-9.02 V\t-8.95\t212\n")]
    [InlineData("plug,load,open,loaded,draw\nbrick/2 plug 1,delay-2,'-9.02 V,'-8.95 V,212 mA\n")]
    [InlineData("delay-2: -9.02 V open, -8.95 V loaded, 212 mA")]
    [InlineData("Lead 2: -9,02; -8,95; 212mA")]
    [InlineData("delay-2: −9.02\ndelay-2: loaded −8.95\n\n# a line of comment\nbrick/2: draws -212 mA\n")]
    public void The_same_readings_in_many_forms(string text)
    {
        var read = ReadingsReader.Read(text, "r", Plugs);
        Assert.True(read.Session is not null, string.Join('\n', read.Errors));
        var (plug, reading) = Assert.Single(read.Session.Readings);
        Assert.Equal("brick/2 plug 1", plug);
        Assert.Equal((new Volts(-9.02m), new Volts(0.01m), true), (reading.Open!.Value.Value, reading.Open.Value.Step, reading.Open.Value.IsSigned));
        Assert.Equal(new Volts(-8.95m), reading.Loaded!.Value.Value);
        Assert.Equal((new Amps(0.212m), new Amps(0.001m)), (reading.Draw!.Value.Value, reading.Draw.Value.Step));
    }

    [Fact]
    public void Who_and_when_stand_above()
    {
        var session = ReadingsReader.Read(
            "Measured by: R. Ellery\ndate: 2026-11-30\nMETER: the yellow one\nserial:\nvolts accuracy: ±(0.5% + 2)\nrig: 12ab34cd\nplug,open\n", "r", Plugs).Session!;
        Assert.Equal(("R. Ellery", "2026-11-30", "the yellow one", null, "12ab34cd"), (session.By, session.Taken, session.Meter, session.Serial, session.RigVersion));
        Assert.Equal("0.5 % + 2 digits", session.VoltsAccuracy.ToString());
        Assert.Null(session.AmpsAccuracy);
    }

    [Theory]
    [InlineData("delya-2: 9", 1, 1, "did you mean 'delay-2'?")]
    [InlineData("by: x\n\nlead 1: -9", 3, 1, "several plugs are called so")]
    [InlineData("delay-2: -9, x", 1, 14, "loaded: expected volts as the meter showed them")]
    [InlineData("delay-2: -9 open, -9.1 open", 1, 19, "has a reading open already")]
    [InlineData("just words", 1, 1, "expected a plug or a load, a colon")]
    [InlineData("volts accuracy: good", 1, 1, "expected an accuracy as its maker prints it")]
    [InlineData("plug,open,colour\ndelay-2,-9,red", 1, 11, "'colour' is not a column")]
    [InlineData("plug,open\ndelay-2,9 mA", 2, 9, "'mA' is not a unit that fits here")]
    [InlineData("plug,open\n,-9", 2, 1, "this line names no plug")]
    [InlineData("plug,open\ndelay-2,-9,-9", 2, 12, "goes in quotation marks")]
    [InlineData("plug,load,open\nbrick/1 plug 1,delay-2,-9", 2, 16, "feeds drive-3, not delay-2")]
    [InlineData("plug,open,open\n", 1, 11, "stands here a second time")]
    [InlineData("delay-2: OL", 1, 10, "its range is exceeded")]
    public void What_is_wrong_has_a_place(string text, int line, int column, string message)
    {
        var read = ReadingsReader.Read(text, "r", Plugs);
        Assert.Null(read.Session);
        Assert.Equal((line, column), (read.Errors[0].Line, read.Errors[0].Column));
        Assert.Contains(message, read.Errors[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_written_is_read_back() =>
        Gen.Select(Gen.Int[-90, 90].Array[3], Gen.Int[0, 4].Array[3], Gen.Bool.Array[3], Gen.Int[0, 7]).Sample(
            static (counts, decimals, signs, which) =>
            {
                var session = new BenchSession
                {
                    By = "R. Ellery",
                    VoltsAccuracy = new PrintedAccuracy<Volt>(0.005m, 0, 2, Volts.Zero),
                    Ambient = "21 °C",
                    Readings = ImmutableDictionary<string, BenchReading>.Empty.Add(Plugs.Plugs[1].Name, new BenchReading
                    {
                        Open = (which & 1) == 0 ? null : Shown<Volt>(counts[0], decimals[0], signs[0]),
                        Loaded = (which & 2) == 0 ? null : Shown<Volt>(counts[1], decimals[1], signs[1]),
                        Draw = (which & 4) == 0 ? null : Shown<Ampere>(Math.Abs(counts[2]), decimals[2], isSigned: false),
                    }),
                };
                var text = ReadingsWriter.Write(session, Plugs.Plugs);
                var read = ReadingsReader.Read(text, "r", Plugs);
                Assert.True(read.Session is not null, string.Join('\n', read.Errors));
                Assert.Equal(session with { Readings = read.Session.Readings }, read.Session);
                var (before, after) = (session.Of(Plugs.Plugs[1].Name), read.Session.Of(Plugs.Plugs[1].Name));
                Assert.Equal(before, after);
            },
            iter: Rounds.Of(2000));

    /// <summary>Whatever is thrown at it comes back as a session or as errors.</summary>
    [Fact]
    public void Nothing_breaks_it() =>
        Gen.Int[0, Pieces.Length - 1].Array[0, 30]
            .Sample(static pieces =>
            {
                var read = ReadingsReader.Read(string.Concat(pieces.Select(static piece => Pieces[piece])), "r", Plugs);
                return read.Session is null != read.Errors.IsEmpty;
            }, iter: Rounds.Of(5000));

    private static DisplayedValue<TUnit> Shown<TUnit>(int counts, int decimals, bool isSigned)
        where TUnit : struct, IUnit
    {
        var step = 1m;
        for (var place = 0; place < decimals; place++)
            step /= 10;
        return new DisplayedValue<TUnit>(new Quantity<TUnit>(counts * step), new Quantity<TUnit>(step)) { IsSigned = counts < 0 || (isSigned && counts > 0) };
    }
}
