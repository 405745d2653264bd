using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

public sealed class NameplateReaderTests
{
    public static TheoryData<string, string> Labels()
    {
        var data = new TheoryData<string, string>();
        foreach (var (label, reading) in LabelTable.Rows)
            data.Add(label, reading);
        return data;
    }

    [Theory]
    [MemberData(nameof(Labels))]
    public void Reads_a_label(string label, string reading) =>
        Assert.Equal(reading, NameplateText.Of(NameplateReader.Read(label)));

    [Fact]
    public void The_table_is_as_long_as_it_claims() => Assert.True(LabelTable.Rows.Count >= 300, $"{LabelTable.Rows.Count}");

    [Fact]
    public void Says_where_each_figure_stands()
    {
        const string Label = "INPUT 230V~ 50Hz OUTPUT 9V⎓ 300mA 2.7W centre negative 5.5x2.1";
        var nameplate = NameplateReader.Read(Label);
        var mode = Assert.Single(nameplate.Modes);

        Assert.Equal("9V", mode.VoltsPlace!.Value.In(Label));
        Assert.Equal("300mA", mode.AmpsPlace!.Value.In(Label));
        Assert.Equal("2.7W", mode.WattsPlace!.Value.In(Label));
        Assert.Equal("⎓", nameplate.Form.Place.In(Label));
        Assert.Equal("centre negative", nameplate.Polarity.Place.In(Label));
        Assert.Equal("5.5x2.1", nameplate.Plug.Place.In(Label));
        Assert.Equal("230V~ 50Hz", nameplate.Mains!.Place.In(Label));
    }

    [Fact]
    public void Says_where_an_ambiguous_figure_stands()
    {
        const string Label = "9V DC 1,000 mA";
        Assert.Equal("1,000 mA", NameplateReader.Read(Label).AmbiguousAmps.Place.In(Label));
    }

    [Fact]
    public void Derives_exactly()
    {
        Assert.Equal(5m, NameplateReader.Read("9V 45W").Modes[0].Amps!.Value.Value.Value);
        Assert.Equal(2.7m, NameplateReader.Read("9V 0.3A").Modes[0].Watts!.Value.Value.Value);
    }

    [Fact]
    public void Reads_the_start_of_an_endless_text_and_gives_the_rest_back()
    {
        var text = "9V 300mA " + string.Concat(Enumerable.Repeat("word ", 200_000));
        var nameplate = NameplateReader.Read(text);

        Assert.Single(nameplate.Modes);
        Assert.Equal(2, nameplate.Unread.Length);
        Assert.Equal(text.Length, nameplate.Unread[^1].Place.End);
        Assert.InRange(nameplate.Unread[^1].Place.Start, NameplateReader.Longest - 10, NameplateReader.Longest + 1);
    }

    [Fact]
    public void A_text_of_nothing_reads_as_nothing()
    {
        Assert.Equal("- []", NameplateText.Of(NameplateReader.Read("")));
        Assert.Equal("- []", NameplateText.Of(NameplateReader.Read(" \n\t\0 ,;-")));
    }
}
