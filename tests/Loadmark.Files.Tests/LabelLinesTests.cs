using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;

namespace Loadmark.Files.Tests;

/// <summary>What becomes of lines that people type or paste.</summary>
public sealed class LabelLinesTests
{
    [Theory]
    [InlineData("drive-3: 9V DC 12mA centre negative", "drive-3", "9V DC 12mA centre negative", false)]
    [InlineData("  - drive-3 :9V DC 12mA", "drive-3", "9V DC 12mA", false)]
    [InlineData("drive-3 9V DC 12mA", "drive-3", "9V DC 12mA", false)]
    [InlineData("the big delay: 9V 300mA", "the big delay", "9V 300mA", false)]
    [InlineData("9V DC 12mA", "L-01", "9V DC 12mA", true)]
    [InlineData("OUTPUT: 9V DC 12mA", "L-01", "OUTPUT: 9V DC 12mA", true)]
    [InlineData("DC 9V: 12mA", "L-01", "DC 9V: 12mA", true)]
    [InlineData("AC-01: 12mA 9V", "AC-01", "12mA 9V", false)]
    [InlineData("9,5 V 0,3 A", "L-01", "9,5 V 0,3 A", true)]
    public void Reads_a_load(string line, string id, string label, bool isProposed)
    {
        var row = Assert.Single(Loads(line).Rows);
        Assert.Null(row.Refusal);
        Assert.Equal(new Load { Id = id, Label = NameplateReader.Read(label) }, row.Load);
        Assert.Equal(isProposed, row.IsIdProposed);
        Assert.Equal(line, row.Text);
    }

    [Theory]
    [InlineData("drive-3:", "nothing stands after the tag")]
    [InlineData("Guitar pedals", "it says no voltage, current or power")]
    [InlineData("drive-3: red", "it says no voltage, current or power")]
    [InlineData("drive-3\u0007: 9V", "it holds the character U+0007, which has no place in a text")]
    [InlineData("a very very very very very very very very very very long tag indeed: 9V", "cannot be the id of a load: it is longer than 64 characters")]
    public void Refuses_a_line_and_keeps_it(string line, string because)
    {
        var row = Assert.Single(Loads(line).Rows);
        Assert.Contains(because, row.Refusal!.Because, StringComparison.Ordinal);
        Assert.Equal(line, row.Text);
        Assert.Null(row.Load);
    }

    [Fact]
    public void Tells_twins_from_those_that_are_there()
    {
        var rows = LabelLines.Read("drive-3: 9V 12mA\n\ndrive-3: 9V 15mA\r\n9V 3mA\nL-01: 9V\n", new EntryTarget(EntryKind.Loads, ["drive-3", "L-02"])).Rows;
        Assert.Equal([1, 3, 4, 5], rows.Select(row => row.Line));
        Assert.Equal(["drive-3"], rows[0].Replaces);
        Assert.Equal("'drive-3' stands here a second time; the first is on line 1", rows[1].Refusal!.Because);
        Assert.Equal("L-03", rows[2].Load!.Id);
        Assert.Empty(rows[3].Replaces);
    }

    /// <summary>Two unrelated things of one proposed tag would pass for one piece of gear.</summary>
    [Theory]
    [InlineData(EntryKind.Loads, "9V 3mA\nL-04: 9V 5mA\n9V 4mA", "L-03 L-04 L-05")]
    [InlineData(EntryKind.Loads, "9V\t3mA\n9V\t4mA", "L-03 L-04")]
    [InlineData(EntryKind.Supplies, "OUTPUT 9V 500mA\nOUTPUT 12V 1A", "S-02 S-03")]
    public void No_tag_is_proposed_that_gear_elsewhere_has(EntryKind kind, string text, string tags)
    {
        var target = new EntryTarget(kind, ["L-01"]) { Elsewhere = new HashSet<string> { "L-02", "S-01" } };
        var rows = LabelLines.Read(text, target).Rows;
        Assert.Equal(tags, string.Join(' ', rows.Select(static row => row.Load?.Id ?? row.Supply?.Id)));
        Assert.All(rows, static row => Assert.Empty(row.Replaces));

        // Typed, it is taken: the same piece may well be in another rig.
        Assert.Equal("L-02", Assert.Single(LabelLines.Read("L-02: 9V 3mA", target with { Kind = EntryKind.Loads }).Rows).Load!.Id);
    }

    [Fact]
    public void Shows_what_of_a_label_is_stated_derived_and_unread()
    {
        var label = Assert.Single(Loads("drive-3: 9V 2.7W bright red").Rows).Label!;
        Assert.Equal(["amps"], label.Derived);
        Assert.Equal("bright red", Assert.Single(label.Unread).Text);
    }

    [Fact]
    public void Reads_outlets()
    {
        var rows = LabelLines.Read("1-4: 9 V 150 mA\n5: 9 V 500 mA; 12 V 400 mA\n18 V 100 mA\n7:\n4: 9 V\n1-99999: 9 V\nx: y", new EntryTarget(EntryKind.Outlets, ["2", "5"])).Rows;
        Assert.Equal(["1", "2", "3", "4"], rows[0].Outlets.Select(outlet => outlet.Id));
        Assert.Equal(["2"], rows[0].Replaces);
        Assert.Equal(2, rows[1].Label!.Modes.Length);
        Assert.Equal("6", Assert.Single(rows[2].Outlets).Id);
        Assert.True(rows[2].IsIdProposed);
        Assert.Equal("", Assert.Single(rows[3].Outlets).Label.Text);
        Assert.Contains("outlet '4' stands here a second time; the first is at line 1", rows[4].Refusal!.Because, StringComparison.Ordinal);
        Assert.Contains("it holds more than 1000 outlets", rows[5].Refusal!.Because, StringComparison.Ordinal);
        Assert.NotNull(rows[6].Refusal);
    }

    [Fact]
    public void Reads_supplies_with_their_outlets()
    {
        const string text = """
            brick: INPUT 100-240V~ 50/60Hz 0.6A
              1-4: 9 V 150 mA
              5: 9 V 500 mA; 12 V 400 mA
              6: nonsense
            wall: OUTPUT 9V ⎓ 45W
            shelf: INPUT 100-240V~
            1: 9 V 1 A
            dark: INPUT 100-240V~
            """;
        var rows = LabelLines.Read(text, new EntryTarget(EntryKind.Supplies, ["wall"])).Rows;
        Assert.Equal(["1", "2", "3", "4", "5"], rows[0].Supply!.Outlets.Select(outlet => outlet.Id));
        Assert.Equal(4, rows[1].Line);
        Assert.NotNull(rows[1].Refusal);
        Assert.Equal(new Outlet { Id = "1", Label = NameplateReader.Read("") }, Assert.Single(rows[2].Supply!.Outlets));
        Assert.Equal(["wall"], rows[2].Replaces);
        Assert.Equal("9 V 1 A", Assert.Single(rows[3].Supply!.Outlets).Label.Text);
        Assert.Contains("nothing tells what it gives", rows[4].Refusal!.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Reads_a_paste_from_a_spreadsheet_without_names()
    {
        var reading = Loads("drive-3\t9V DC 12mA\r\ndelay-2\t9V⎓ 300mA\r\n\t9V 3mA\r\n");
        Assert.Equal(["tag", "label"], reading.Columns.Select(column => column.Becomes));
        Assert.Equal(["drive-3", "delay-2", "L-01"], reading.Rows.Select(row => row.Load!.Id));
        Assert.True(reading.Rows[2].IsIdProposed);
    }

    [Fact]
    public void Recognises_columns_by_what_is_in_them()
    {
        var reading = Loads("Long tail\tdrive-3\tdigital\t9 V\t12 mA\tcentre positive\t5.5x2.5\t12\t\nSmall drive\tdrive-4\tanalog drive\t9,5 V\t0,1 A\tc-\t5,5 x 2,1 mm\t7\t");
        Assert.Equal(["name", "tag", "kind", "voltage", "current", "polarity", "plug", null, null], reading.Columns.Select(column => column.Becomes));
        Assert.Contains("bare numbers may be volts, milliamps", reading.Columns[7].Because, StringComparison.Ordinal);
        Assert.Equal("left out: it is empty", reading.Columns[8].Because);
        var load = reading.Rows[1].Load!;
        Assert.Equal(("drive-4", "Small drive", 0.1m, Polarity.CentreNegative), (load.Id, load.Name!, load.Current!.Value.Value, load.Polarity!.Value));
        Assert.Equal(9.5m, load.Voltage!.Modes[0].Volts!.Value.Low.Value);
    }

    [Fact]
    public void Refuses_what_is_too_long()
    {
        var text = string.Join('\n', Enumerable.Range(0, EntryResult.MostLines + 5).Select(n => $"A{n}: 9V"));
        Assert.Contains("these are 2005 lines; at most 2000", Loads(text).Problem, StringComparison.Ordinal);
        Assert.Contains("these are 2005 lines", Loads(text.Replace('\n', '\r')).Problem, StringComparison.Ordinal);
        Assert.Equal("a row has more than 100 cells", Loads(string.Concat(Enumerable.Repeat("9V\t", 300_000))).Problem);
        Assert.Contains("over 1 million characters", Loads(new string('x', 1_100_000)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_whatever_it_is_given_and_loses_no_line()
    {
        string[] pieces = ["drive-3", ":", " ", "\t", "\n", "\r\n", "\r", "9V", "12mA", "1-4", "\"", ";", ",", "'", "=", "-", "\0", "\ud83d", "🎸", "\u2028", "é", "mA", "tag", "label", "  ", "|", "brick", "INPUT 100-240V~", "volts", "1e9", "99999999999"];
        var random = new Random(5);
        for (var round = 0; round < 5_000; round++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(1, 25)).Select(_ => pieces[random.Next(pieces.Length)]));
            foreach (var kind in Enum.GetValues<EntryKind>())
                AssertWhole(text, LabelLines.Read(text, new EntryTarget(kind, ["drive-3", "1"])));
            AssertWhole(text, LoadTable.Read(text, new EntryTarget(EntryKind.Loads, ["drive-3"])));
            AssertWhole(text, SupplyTable.Read(text, ["brick"]));
        }
    }

    private static void AssertWhole(string text, EntryResult reading)
    {
        if (reading.Problem is not null)
            return;
        Assert.All(reading.Rows, row => Assert.Equal(1, (row.Load is null ? 0 : 1) + (row.Supply is null ? 0 : 1) + (row.Outlets.Count > 0 ? 1 : 0) + (row.Refusal is null ? 0 : 1)));
        var kept = string.Concat(reading.Rows.Select(row => row.Text)) + string.Concat(reading.Columns.Select(column => column.Name));
        Assert.True(Digits(kept) == Digits(text) || reading.Columns.Any(column => column.Name is not null), $"{text}\n---\n{kept}");
    }

    private static int Digits(string text) => text.Count(char.IsAsciiLetterOrDigit);

    private static EntryResult Loads(string text) => LabelLines.Read(text, new EntryTarget(EntryKind.Loads, []));
}
