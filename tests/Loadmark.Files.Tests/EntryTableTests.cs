using CsCheck;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;

namespace Loadmark.Files.Tests;

/// <summary>Tables of loads and supplies, from spreadsheets and back.</summary>
public sealed class EntryTableTests
{
    public static TheoryData<string> Hostile => ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "'=1", "''=1", "'", "''", "'80s fuzz", " =1", "=HYPERLINK(\"http://a\",\"b\")", "a,b;c\td\"e\nf", "=cmd|' /C calc'!A0"];

    [Fact]
    public void Loads_come_back_equal() =>
        Check.Sample(
            Gen.Select(RigGen.Rigs, Gen.Int[0, 2].Select(index => ",;\t"[index])),
            (rig, separator) =>
            {
                var reading = LoadTable.Read(LoadTable.Write(rig.Loads, separator), new EntryTarget(EntryKind.Loads, []));
                Assert.Equal(rig.Loads, (ValueList<Load>)[.. reading.Rows.Select(row => row.Load!)]);
            },
            iter: 300,
            threads: 2);

    [Fact]
    public void Supplies_come_back_equal() =>
        Check.Sample(
            Gen.Select(RigGen.Rigs, Gen.Int[0, 2].Select(index => ",;\t"[index])),
            (rig, separator) =>
            {
                var text = SupplyTable.Write(rig.Supplies, separator);
                var reading = SupplyTable.Read(text, []);
                Assert.True(reading.Rows.All(row => row.Refusal is null), text + string.Join('\n', reading.Rows.Select(row => row.Refusal?.Because)));
                Assert.Equal(rig.Supplies, (ValueList<Supply>)[.. reading.Rows.Select(row => row.Supply!)]);
            },
            iter: 300,
            threads: 2);

    [Theory]
    [MemberData(nameof(Hostile))]
    public void No_cell_is_a_formula_and_every_text_comes_back(string text)
    {
        var load = new Load { Id = "drive-3", Label = Core.Nameplates.NameplateReader.Read(text), Name = text.Trim() };
        foreach (var separator in (ReadOnlySpan<char>)[',', ';', '\t'])
        {
            var table = LoadTable.Write([load], separator);
            Assert.Equal(load, Assert.Single(LoadTable.Read(table, new EntryTarget(EntryKind.Loads, [])).Rows).Load);
            foreach (var cell in table.Split('\n')[1].Split(separator).Select(cell => cell.Trim('"').TrimStart(' ')))
                Assert.False(cell.Length > 0 && "=+-@\t\r".Contains(cell[0], StringComparison.Ordinal) && !text.Contains(separator, StringComparison.Ordinal), table);
        }
    }

    [Fact]
    public void Reads_a_table_with_names_and_decimal_commas()
    {
        var reading = LoadTable.Read("\uFEFFTag;Name;Volts;Current (mA);Polarity;Colour;Measured [A]\r\ndrive-3;Drive;9,5;12,5;centre negative;red;0,011\r\ndelay-2;\"Delay; long\";9;300;c+;;\r\n", new EntryTarget(EntryKind.Loads, ["delay-2"]));
        Assert.Equal(["tag", "name", "voltage", "current", "polarity", null, "run"], reading.Columns.Select(column => column.Becomes));
        Assert.Equal("by its name; bare numbers are in mA", reading.Columns[3].Because);
        Assert.StartsWith("left out: 'Colour' is not the name of a column", reading.Columns[5].Because, StringComparison.Ordinal);
        var loads = reading.Rows.Select(row => row.Load!).ToList();
        Assert.Equal((0.0125m, 0.011m, "9,5 V"), (loads[0].Current!.Value.Value, loads[0].Run!.Value.Value, loads[0].Voltage!.Text));
        Assert.Equal("Delay; long", loads[1].Name);
        Assert.Equal(["delay-2"], reading.Rows[1].Replaces);
        Assert.Equal([2, 3], reading.Rows.Select(row => row.Line));
    }

    [Theory]
    [InlineData("tag,mA\ndrive-3,twelve", "current: expected a current such as 300 mA, found \"twelve\"")]
    [InlineData("tag,current\ndrive-3,12", "current: expected a current such as 300 mA, found \"12\"")]
    [InlineData("tag,label\ndrive-3,9V 1,5A", "it has 3 cells and there are 2 columns; a cell with ',' in it goes in quotation marks")]
    [InlineData("tag,label\ndrive-3,9V\ndrive-3,9V", "stands here a second time; the first is on line 2")]
    [InlineData("tag,label,name\n,,x", "it has neither a tag nor a figure")]
    [InlineData("tag,label\ndrive-3,\"9V", "a quotation mark opens a cell and is never closed")]
    [InlineData("tag,label\ndrive-3,\"9V\" x", "there is text after a closing quotation mark")]
    [InlineData("tag,polarity\ndrive-3,sideways", "polarity: expected one of centre negative, centre positive")]
    [InlineData("tag,volts\ndrive-3,-9", "a figure below zero makes no sense here")]
    public void Refuses_a_row_and_says_why(string text, string because)
    {
        var row = LoadTable.Read(text, new EntryTarget(EntryKind.Loads, [])).Rows[^1];
        Assert.Contains(because, row.Refusal!.Because, StringComparison.Ordinal);
        Assert.Equal(text.Split('\n')[^1], row.Text);
        Assert.Equal(text.Split('\n').Length, row.Line);
    }

    [Fact]
    public void Reads_outlets_with_figures_in_columns()
    {
        var reading = SupplyTable.Read("supply\tisolated\toutlet\tvolts\tmA\tpolarity\nbrick\tyes\t1-4\t9\t150\tcentre negative\n\t\t5\t9\t500\n\t\t5\t9\t1\nwall\t\t1\t12\t1000\t\n", []);
        var supply = reading.Rows[0].Supply!;
        Assert.Equal(5, supply.Outlets.Count);
        Assert.True(supply.Isolated);
        Assert.Equal("9 V 500 mA", supply.Outlets[4].Label.Text);
        Assert.Equal(4, reading.Rows[1].Line);
        Assert.StartsWith("outlet '5' stands here a second time; the first is at line 3", reading.Rows[1].Refusal!.Because, StringComparison.Ordinal);
        Assert.Equal("wall", reading.Rows[2].Supply!.Id);
    }

    [Fact]
    public void A_table_of_supplies_needs_names() =>
        Assert.Contains("the first row must name the columns", SupplyTable.Read("brick,1,9V", []).Problem, StringComparison.Ordinal);

    [Fact]
    public void Writes_only_columns_in_use() =>
        Assert.Equal("tag,label,isolate\ndrive-3,9V,true\n", LoadTable.Write([new Load { Id = "drive-3", Label = Core.Nameplates.NameplateReader.Read("9V"), Isolate = true }]));
}
