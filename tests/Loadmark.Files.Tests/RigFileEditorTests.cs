using CsCheck;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

public sealed class RigFileEditorTests
{
    private static readonly ValueList<Feed> Two =
    [
        new Feed { From = [new("brick", "1")], To = ["drive-3"], Pinned = true },
        new Feed { From = [new("brick", "2"), new("brick", "3")], Joined = Joint.Series, At = [new Volts(9)], To = ["preamp-2"] },
    ];

    private static readonly ValueList<Feed> One = [new Feed { From = [new("wall", "1")], To = ["drive-3", "delay-2"] }];

    [Fact]
    public void Replaces_only_the_feeds_and_keeps_the_rest()
    {
        var edited = RigFileEditor.ReplaceWiring(Fixtures.Pit, Two);
        var key = Fixtures.Pit.IndexOf("wired:", StringComparison.Ordinal);
        var end = Fixtures.Pit.IndexOf("\n\nsignal:", StringComparison.Ordinal);
        var expected = Fixtures.Pit[..key]
            + "wired:                             # leave out to have it planned\n  - {from: brick/1, to: drive-3, pinned: true}\n  - {from: [brick/2, brick/3], joined: series, at: 9 V, to: preamp-2}"
            + Fixtures.Pit[end..];
        Assert.Equal(expected, edited);
    }

    [Theory]
    [InlineData("wired:   # planned\n\n# end\n", "wired:   # planned\n  - {from: wall/1, to: [drive-3, delay-2]}\n\n# end\n")]
    [InlineData("wired:", "wired:\n  - {from: wall/1, to: [drive-3, delay-2]}")]
    [InlineData("wired: []   # none\nsignal: [amp]", "wired:\n  - {from: wall/1, to: [drive-3, delay-2]}   # none\nsignal: [amp]")]
    [InlineData("wired: [{from: a/1,\n  to: drive-3}]\nsignal: [amp]\n", "wired:\n  - {from: wall/1, to: [drive-3, delay-2]}\nsignal: [amp]\n")]
    [InlineData("wired:\n- from: a/1\n  to: drive-3 # last\n# end", "wired:\n  - {from: wall/1, to: [drive-3, delay-2]}\n# end")]
    [InlineData("wired:\n- from: a/1\n  to:\n  - drive-3\n\n\n# end\nsignal: [amp]", "wired:\n  - {from: wall/1, to: [drive-3, delay-2]}\n\n\n# end\nsignal: [amp]")]
    [InlineData("\"wired\" : ~\n", "\"wired\" :\n  - {from: wall/1, to: [drive-3, delay-2]}\n")]
    [InlineData("signal: [amp] # order\n", "signal: [amp] # order\n\nwired:\n  - {from: wall/1, to: [drive-3, delay-2]}\n")]
    [InlineData("signal:\n- amp", "signal:\n- amp\n\nwired:\n  - {from: wall/1, to: [drive-3, delay-2]}\n")]
    [InlineData("signal: [amp]\n...\n", "signal: [amp]\n\nwired:\n  - {from: wall/1, to: [drive-3, delay-2]}\n...\n")]
    public void Edits_blocks_of_every_shape(string end, string expected) =>
        Assert.Equal(Fixtures.Small(expected), RigFileEditor.ReplaceWiring(Fixtures.Small(end), One));

    [Theory]
    [InlineData("wired:   # planned\n- {from: a/1, to: drive-3}\n", "wired: []   # planned\n")]
    [InlineData("wired: [{from: a/1, to: drive-3}] # x\n", "wired: [] # x\n")]
    [InlineData("", "\nwired: []\n")]
    public void Writes_empty_wiring(string end, string expected) =>
        Assert.Equal(Fixtures.Small(expected), RigFileEditor.ReplaceWiring(Fixtures.Small(end), []));

    [Fact]
    public void Keeps_line_ends_of_two_characters_and_the_byte_order_mark()
    {
        var text = "\uFEFF" + Fixtures.Pit.Replace("\n", "\r\n", StringComparison.Ordinal);
        var edited = RigFileEditor.ReplaceWiring(text, Two);
        Assert.StartsWith("\uFEFF#", edited, StringComparison.Ordinal);
        Assert.Equal(edited.Count(character => character == '\n'), edited.Split("\r\n").Length - 1);
        Assert.Equal(Two, Fixtures.Read(edited).Wired);
    }

    [Fact]
    public void Edits_JSON()
    {
        ValueList<Feed> wired = [new Feed { From = [new("wall", "1")], At = [new Volts(9)], To = ["drive-3"], Pinned = true }];
        var edited = RigFileEditor.ReplaceWiring(Fixtures.Json, wired);
        Assert.Equal(Fixtures.Json.Replace("[{\"from\": \"wall\", \"to\": [\"drive-3\"]}]", "[{\"from\": \"wall/1\", \"at\": \"9 V\", \"to\": \"drive-3\", \"pinned\": true}]", StringComparison.Ordinal), edited);

        var without = Fixtures.Json.Replace("\t\"wired\": [{\"from\": \"wall\", \"to\": [\"drive-3\"]}],\n", "", StringComparison.Ordinal);
        edited = RigFileEditor.ReplaceWiring(without, wired);
        using var json = System.Text.Json.JsonDocument.Parse(edited);
        Assert.Equal("wall/1", json.RootElement.GetProperty("wired")[0].GetProperty("from").GetString());
        Assert.Contains("\n\t\"wired\": [", edited, StringComparison.Ordinal);
    }

    [Fact]
    public void Edits_every_rig_it_writes() =>
        Check.Sample(
            RigGen.Rigs.SelectMany(rig => RigGen.Feeds([.. rig.Loads], [.. rig.Supplies], [.. rig.Leads]).Select(wired => (rig, wired: wired ?? default))),
            pair => Assert.Equal(pair.rig with { Wired = pair.wired }, Fixtures.Read(RigFileEditor.ReplaceWiring(RigFileWriter.Write(pair.rig), pair.wired))),
            iter: Rounds.Of(500));

    [Fact]
    public void Refuses_what_it_cannot_edit()
    {
        Assert.Throws<ArgumentException>(() => RigFileEditor.ReplaceWiring("not a rig", Two));
        Assert.Throws<InvalidOperationException>(() => RigFileEditor.ReplaceWiring("rig: r", Two));
        Assert.Throws<InvalidOperationException>(() => RigFileEditor.ReplaceWiring(Fixtures.Small("? wired\n: []\n"), One));
    }
}
