using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;
using Loadmark.Files.Texts;

namespace Loadmark.Files.Tests;

/// <summary>Files of gear, and the texts that a library keeps.</summary>
public sealed class GearFileTests
{
    private static readonly Gen<ValueList<string>> Words = Gen.OneOf<string>("pit", "spare", "=1+1", "on tour", "é").Array[0, 3].Select(words => (ValueList<string>)[.. words.Distinct()]);

    private static readonly Gen<(GearPiece Piece, ValueList<string> Words)[]> Gear =
        Gen.Select(RigGen.Rigs, Words.Array[20]).Select((rig, words) => GearPiece.AllOf(rig).DistinctBy(piece => (piece.Kind, GearTag.KeyOf(piece.Tag))).Select((piece, at) => (piece, words[at % 20])).ToArray());

    [Fact]
    public void Any_gear_reads_back_as_itself() => Gear.Sample(
        gear =>
        {
            foreach (var (piece, _) in gear)
                Assert.Equal(piece, GearText.Read(piece.Kind, piece.Tag, GearText.Write(piece)).Piece);

            // A list of gear has no place for a name with a control character, which quotes in a rig's own file can spell.
            var listed = gear.Where(one => ControlCharacters.FirstIn(one.Piece.Name) < 0).ToArray();
            AssertRows(listed.OrderBy(one => one.Piece.Kind), GearFileReader.Read(GearFileWriter.WriteYaml(listed), "gear.yaml"));
            var all = GearFileReader.Read(GearFileWriter.WriteYaml(gear), "gear.yaml");
            Assert.Equal(gear.Length - listed.Length, all.Rows.Count(row => row.Refusal is { Because: "its name or one of its words holds a control character" }));
            Assert.Equal(listed.Length, all.Rows.Count(row => row.Piece is not null));
        },
        iter: 150);

    [Fact]
    public void Any_table_of_gear_reads_back_as_itself() => Gear.Sample(
        gear =>
        {
            foreach (var kind in Enum.GetValues<GearKind>())
            {
                // A rig's own file takes what a table does not, such as a supply without an outlet, a line break in a name, or a tag of spaces.
                var some = gear.Where(one => one.Piece.Kind == kind && one.Piece.Supply is not { Outlets.Count: 0 }).ToArray();
                var text = GearFileWriter.WriteTable(kind, some);
                var reading = GearFileReader.Read(text, "gear.csv");
                Assert.Empty(reading.Errors);
                foreach (var row in reading.Rows.Where(row => row.Piece is not null))
                    Assert.Contains(some, one => one.Piece == row.Piece);
                Assert.DoesNotContain(text.Split('\n'), line => line.StartsWith('=') || line.Contains(",=", StringComparison.Ordinal));
            }
        },
        iter: 150);

    [Fact]
    public void A_table_of_loads_with_its_words()
    {
        var reading = GearFileReader.Read("Tag,Name,Nameplate,mA,Words,Colour\ndelay-2,Delay,9V 300mA,,pit; spare,red\ndrive-3,,9V,12,,\n,Nameless,9V 10mA,,,\nextra-1,,9V,lots,,\n", "gear.csv");
        Assert.Equal([2, 3, 4, 5], reading.Rows.Select(row => row.Line));
        Assert.Equal(["pit", "spare"], reading.Rows[0].Words!.Value);
        Assert.Null(reading.Rows[1].Words);
        Assert.Equal("12 mA", $"{reading.Rows[1].Piece!.Load!.Current}");
        Assert.Equal("it has no tag", reading.Rows[2].Refusal!.Because);
        Assert.StartsWith("current: expected a current such as 300 mA, found \"lots", reading.Rows[3].Refusal!.Because, StringComparison.Ordinal);
        Assert.StartsWith("Colour: left out", Assert.Single(reading.LeftOut), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_of_leads()
    {
        var reading = GearFileReader.Read("lead;type;plugs;wire\nlong chain;daisy chain;5;0,22 mm²\n;reversing;;\nodd;woven;;\n", "leads.csv");
        Assert.Equal(LeadType.DaisyChain, reading.Rows[0].Piece!.Lead!.Type);
        Assert.Equal(["it has no name", "type: expected one of straight, daisy chain, reversing, series, parallel, found \"woven\""], reading.Rows[1..].Select(row => row.Refusal!.Because));
    }

    [Theory]
    [InlineData("loads: { delay-2: { run: 1 mA }, DELAY-2: { run: 2 mA } }", 1, "'DELAY-2' stands here a second time; the first is on line 1")]
    [InlineData("loads:\n  delay-2: { run: 1 mA }\nsupplies:\n  delay-2: { outlets: { 1: 9 V 1 A } }\nleads:\n  a: {}\n  A: {}\n", 7, "'A' stands here a second time; the first is on line 6")]
    [InlineData("loads:\n  delay-2: { from: library }", 2, "it says 'from', so that its figures stand elsewhere and not here")]
    [InlineData("loads:\n  delay-2: [300 mA]", 2, "delay-2: expected its label, or the keys of a load, found a list")]
    [InlineData("loads:\n  delay-2: { run: 1 mA\n    , colour: red }", 3, "'colour' is not a key of a load; its keys are ")]
    [InlineData("loads:\n  delay-2: { run: 1 mA }\nload: {}", 3, "'load' is not a section of a file of gear; did you mean 'loads'?")]
    public void What_is_refused_says_why_and_where(string text, int line, string because)
    {
        var row = Assert.Single(GearFileReader.Read(text, "gear.yaml").Rows, row => row.Refusal is not null);
        Assert.Equal(line, row.Line);
        Assert.StartsWith(because, row.Refusal!.Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("loads: { delay-2: { run: 1 mA }, delay-2: { run: 2 mA } }", "a:1:34: 'delay-2' stands here a second time; the first is at line 1, column 10")]
    [InlineData("loads: [", "a:1:9: ")]
    [InlineData("- loads", "a:1:1: the file: expected the sections loads, supplies or leads, found a list")]
    [InlineData("loads:\n\u0007", "a:2:1: the character U+0007 has no place in a text file")]
    public void What_cannot_be_read_at_all_is_an_error(string text, string error)
    {
        var reading = GearFileReader.Read(text, "a");
        Assert.Empty(reading.Rows);
        Assert.StartsWith(error, $"{reading.Errors[0]}", StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_rig_is_a_file_of_gear_too() =>
        Assert.Equal(GearPiece.AllOf(Fixtures.Read(Fixtures.Pit)).Select(piece => piece.Tag), GearFileReader.Read(Fixtures.Pit, "pit.rig.yaml").Rows.Select(row => row.Tag));

    [Fact]
    public void Twenty_thousand_pieces_fit_and_what_is_larger_is_refused()
    {
        var many = GearFileReader.Read("tag,label\n" + string.Concat(Enumerable.Range(0, 20_000).Select(number => $"extra-{number:00000},9V DC 100mA\n")), "gear.csv");
        Assert.Equal(20_000, many.Rows.Count(row => row.Piece is not null));
        Assert.Contains("at most 60000 are read at once", GearFileReader.Read("tag\n" + string.Concat(Enumerable.Repeat("a\n", 60_002)), "gear.csv").Errors[0].Message, StringComparison.Ordinal);
        Assert.Contains("over 16 MiB", GearFileReader.Read(new string('a', GearFileReader.MostBytes + 1), "gear.yaml").Errors[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_makes_it_fail() => Gen.Select(Gen.OneOf(Gen.String, Gen.OneOf<string>("loads:", " delay-2:", "\n", "{", "}", ": ", "tag,label", "lead;", "\"", "9V", "[", "words: ", "'=1", "\t", ",").Array[0, 40].Select(string.Concat)), Gen.OneOf<string>("a", "a.csv", "a.yaml")).Sample((text, name) =>
    {
        var reading = GearFileReader.Read(text, name);
        Assert.All(reading.Rows, row => Assert.True(row.Piece is null != row.Refusal is null));
        RigMentions.Of(text);
    });

    [Fact]
    public void Merging_keeps_what_the_other_says_nothing_of()
    {
        var load = GearPiece.Of(Fixtures.Read("rig: a\nloads: { delay-2: { name: Delay, run: 210 mA, isolate: yes } }").Loads[0]);
        var over = GearPiece.Of(Fixtures.Read("rig: a\nloads: { DELAY-2: { run: 220 mA, kind: digital } }").Loads[0]);
        var merged = GearText.Merge(load, over).Piece!;
        Assert.Equal(load.Load! with { Run = new Amps(0.22m), Kind = new LoadKind("digital") }, merged.Load);
        Assert.Equal([new GearDifference("kind", null, "digital"), new GearDifference("run", "210 mA", "220 mA")], GearText.Differences(load, merged).OrderBy(one => one.Key));
    }

    [Fact]
    public void A_rig_s_gear_is_named_though_its_figures_cannot_be_read()
    {
        Assert.Equal(
            [new GearMention(GearKind.Load, "delay-2"), new GearMention(GearKind.Load, "drive-3"), new GearMention(GearKind.Supply, "brick"), new GearMention(GearKind.Lead, "chain")],
            RigMentions.Of("rig: a\nloads: { delay-2: { run: lots }, drive-3: { from: library } }\nsupplies: { brick: }\nleads: { chain: {} }\n"));
        Assert.Null(RigMentions.Of("rig: ["));
        Assert.Null(RigMentions.Of("just words"));
        Assert.Empty(RigMentions.Of("rig: a\nloads: { \"half \\uD83C\": {} }") ?? []);
    }

    private static void AssertRows(IEnumerable<(GearPiece Piece, ValueList<string> Words)> gear, GearFileResult reading)
    {
        Assert.Empty(reading.Errors);
        Assert.Equal(gear.Select(one => (one.Piece, one.Words)), reading.Rows.Select(row => (row.Piece!, row.Words ?? [])));
    }
}
