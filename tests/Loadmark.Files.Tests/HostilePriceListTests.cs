using System.Diagnostics;
using System.Text;
using Loadmark.Core.Offers;
using Loadmark.Files.PriceLists;

namespace Loadmark.Files.Tests;

/// <summary>A price list that somebody else made: each thing in it that none can have is refused with its place, and soon.</summary>
public sealed class HostilePriceListTests
{
    private const string Header = "supply,price,outlets\n";
    private const string Outlets = "1-4: 9 V 500 mA centre negative 5.5x2.1";

    [Theory]
    [InlineData(Header + "twin-1,=1+1," + Outlets, 2, 8, "price: expected a price such as 49.90")]
    [InlineData(Header + "twin-1,-1," + Outlets, 2, 8, "price: expected a price such as 49.90")]
    [InlineData(Header + "twin-1,\u22125," + Outlets, 2, 8, "price: expected a price such as 49.90")]
    [InlineData(Header + "twin-1,1000000000," + Outlets, 2, 8, "it is too large")]
    [InlineData(Header + "twin-1,1e9," + Outlets, 2, 8, "price: expected a price such as 49.90")]
    [InlineData(Header + "twin-1,2\u200B0," + Outlets, 2, 8, "price: expected a price such as 49.90")]
    [InlineData(Header + "twin-1,\u0661\u0662," + Outlets, 2, 8, "price: expected a price such as 49.90")]
    [InlineData(Header + "../x,20," + Outlets, 2, 1, "'../x' cannot be the id of a supply")]
    [InlineData(Header + "<b>twin</b>,20," + Outlets, 2, 1, "'<b>twin</b>' cannot be the id of a supply")]
    [InlineData(Header + "\"twin\n1\",20," + Outlets, 2, 1, "it holds a control character or a line break")]
    [InlineData(Header + "tw\0in,20," + Outlets, 2, 3, "the character U+0000 has no place in a text file")]
    [InlineData(Header + "twin-1,20,1-999999999: 9 V 1 mA", 2, 11, "it holds more than 1000 outlets")]
    [InlineData("supply,price,price,outlets\ntwin-1,20,20," + Outlets, 1, 14, "the column 'price' stands here a second time")]
    [InlineData("supply\u202E,price,outlets\ntwin-1,20," + Outlets, 1, 1, "is not a column of a price list; did you mean 'supply'?")]
    public void What_no_list_can_have_is_refused_where_it_stands(string text, int line, int column, string message)
    {
        var reading = PriceListReader.Read(text + "\n", "list.csv");
        Assert.Null(reading.Offers);
        Assert.Equal((line, column), (reading.Errors[0].Line, reading.Errors[0].Column));
        Assert.Contains(message, reading.Errors[0].Message, StringComparison.Ordinal);
    }

    /// <summary>An id that looks like a range, a number, a word of YAML or a formula is just an id.</summary>
    [Theory]
    [InlineData("1-4")]
    [InlineData("..")]
    [InlineData("null")]
    [InlineData("*all")]
    [InlineData("=cmd|calc!A0")]
    [InlineData("twin\u202E1")]
    [InlineData("a: {b")]
    public void An_id_that_looks_like_something_else_comes_back_out_of_the_rigs_file(string id)
    {
        var offer = Assert.IsType<SupplyOffer>(Assert.Single(PriceListReader.Read($"{Header}\"{id}\",20,{Outlets}\n", "list.csv").Offers!.Value));
        Assert.Equal(id, offer.Id);
        var rig = RigFileReader.Read($"rig: Board\nloads: {{ drive-1: 9V DC 12mA }}\nsupplies: {{}}\n", "").Rig! with { Supplies = [offer.Supply] };
        var read = RigFileReader.Read(RigFileWriter.Write(rig), "written.yaml");
        Assert.Empty(read.Errors);
        Assert.Equal(id, Assert.Single(read.Rig!.Supplies).Id);
        Assert.Equal(4, read.Rig.Supplies[0].Outlets.Count);
    }

    [Fact]
    public void A_list_of_two_thousand_is_read_and_one_more_is_refused_where_it_stands()
    {
        static string List(int offers) => string.Concat(Enumerable.Range(1, offers).Select(static offer => $"twin-{offer},20,1: 9 V 100 mA\n").Prepend(Header));
        Assert.Equal(2000, PriceListReader.Read(List(2000), "list.csv").Offers!.Value.Count);
        var error = Assert.Single(PriceListReader.Read(List(30_000), "list.csv").Errors);
        Assert.Equal((2002, 1), (error.Line, error.Column));
        Assert.Contains("more than 2000 supplies and leads", error.Message, StringComparison.Ordinal);
    }

    /// <summary>The bound is far above what any of these takes, and far below what one that grows with the square would take.</summary>
    [Theory]
    [InlineData("a", "", 1_000_000)]
    [InlineData("supply,price,label\na,1,\"", "9;", 480_000)]
    [InlineData("supply,price,label\na,1,", "9V 100mA ", 110_000)]
    [InlineData(Header + "a,1,\"1: ", "9 V 1 mA; ", 95_000)]
    [InlineData(Header + "a,1,\"", "x: 9 V 1 mA|", 80_000)]
    [InlineData(Header, ",", 1_000_000)]
    [InlineData(Header, "\"", 1_000_001)]
    [InlineData(Header, "a,1,1: 9 V 1 mA\n", 60_000)]
    [InlineData("", "supply,", 140_000)]
    public void A_cell_or_a_line_as_long_as_a_file_may_be_is_read_in_no_time(string before, string piece, int times)
    {
        var text = new StringBuilder(before).Insert(before.Length, piece, times).ToString();
        var began = Stopwatch.GetTimestamp();
        var reading = PriceListReader.Read(text, "list.csv");
        Assert.Equal(reading.Offers is null, reading.Errors.Length > 0);
        Assert.All(reading.Errors, static error => Assert.InRange(error.Message.Length, 1, 600));
        Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromSeconds(30));
    }
}
