using System.Text;
using Loadmark.Core.Offers;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.PriceLists;

namespace Loadmark.Files.Tests;

/// <summary>Price lists as people write them, and what they are told of those that cannot be read.</summary>
public sealed class PriceListTests
{
    private const string Commas =
        "supply,price,mass_g,label,outlets,total,isolated,mains\n"
        + "stage-1,49.90,450,\"INPUT 100-240V~ 50/60Hz, 0.5A\",\"1-4: 9 V DC 150 mA | 5: 9 V DC 500 mA; 12 V DC 400 mA\",18 W,yes,\n"
        + "stage-2,12,,OUTPUT 9V DC 200mA,,,,230 V\n";

    private const string Semicolons =
        "supply;price;mass_g;label;outlets;total;isolated;mains\r\n"
        + "stage-1;49,90;450;INPUT 100-240V~ 50/60Hz, 0.5A;\"1-4: 9 V DC 150 mA | 5: 9 V DC 500 mA; 12 V DC 400 mA\";18 W;TRUE;\r\n"
        + "\r\n"
        + "stage-2;12;;OUTPUT 9V DC 200mA;;;;230 V\r\n"
        + ";;;;;;;\r\n";

    [Theory]
    [InlineData(Commas)]
    [InlineData(Semicolons)]
    [InlineData("\uFEFF" + Commas)]
    [InlineData("\n\n" + Commas)]
    public void Both_separators_and_both_decimal_signs_say_the_same(string text)
    {
        var offers = Read(text);
        Assert.Equal(["stage-1", "stage-2"], offers.Select(static offer => offer.Id));
        Assert.Equal(49.90m, offers[0].Price);
        Assert.Equal(450m, offers[0].MassGrams);
        Assert.Equal(12m, offers[1].Price);
        Assert.Null(offers[1].MassGrams);

        var brick = SupplyOf(offers[0]);
        Assert.Equal(["1", "2", "3", "4", "5"], brick.Outlets.Items.Select(static outlet => outlet.Id));
        Assert.Equal(["9 V 0.5 A", "12 V 0.4 A"], OutletRating.Of(brick, brick.Outlets[4]).Modes.Select(static mode => $"{mode.Volts!.Value.Low.Value} V {mode.Limit!.Value.Value.Value:0.###} A"));
        Assert.Equal(0.15m, OutletRating.Of(brick, brick.Outlets[3]).Modes[0].Limit!.Value.Value.Value);
        Assert.Equal(18m, brick.Total!.Watts!.Value.Value);
        Assert.True(brick.Isolated);
        Assert.Equal(240m, SupplyRating.Of(brick).Mains!.Volts!.Value.High.Value);

        var wall = SupplyOf(offers[1]);
        Assert.Equal("1", Assert.Single(wall.Outlets).Id);
        Assert.Equal(0.2m, OutletRating.Of(wall, wall.Outlets[0]).Modes[0].Limit!.Value.Value.Value);
        Assert.Null(wall.Isolated);
        Assert.Equal(230m, SupplyRating.Of(wall).Mains!.Volts!.Value.High.Value);
    }

    [Fact]
    public void Columns_may_stand_in_any_order_and_case_and_those_not_needed_may_be_left_out()
    {
        var offer = Assert.Single(Read("OUTLETS,Price,supply\n1: 9 V DC 1 A,5,stage-3\n"));
        Assert.Equal(("stage-3", 5m, null), (offer.Id, offer.Price, offer.MassGrams));
    }

    [Fact]
    public void A_cell_in_quotes_may_hold_separators_line_breaks_and_quotes()
    {
        var offer = Assert.Single(Read("supply,price,label\n\"stage-4, \"\"old\"\"\",\"5,50\",\"OUTPUT 9V\nDC 1A\"\n"));
        Assert.Equal("stage-4, \"old\"", offer.Id);
        Assert.Equal(5.50m, offer.Price);
        Assert.Equal(1m, OutletRating.Of(SupplyOf(offer), SupplyOf(offer).Outlets[0]).Modes[0].Limit!.Value.Value.Value);
    }

    [Theory]
    [InlineData("price", "price: expected a price such as 49.90 (without a currency sign, at most two decimals), found \"\"", "SP,,9 V 1 A,")]
    [InlineData("a currency", "price: expected a price such as 49.90 (without a currency sign, at most two decimals), found \"5 EUR\"", "SP,5 EUR,9 V 1 A,")]
    [InlineData("thousands", "found \"1,299\"; thousands or decimals?", "SP,\"1,299\",9 V 1 A,")]
    [InlineData("below zero", "price: expected a price", "SP,-5,9 V 1 A,")]
    [InlineData("too dear", "it is too large", "SP,10000000,9 V 1 A,")]
    [InlineData("mass", "mass_g: expected a mass in grams such as 450", "SP,5,9 V 1 A,1 kg")]
    [InlineData("no mass", "it must be more than zero", "SP,5,9 V 1 A,0")]
    [InlineData("id", "'a/b' cannot be the id of a supply", "a/b,5,9 V 1 A,")]
    [InlineData("no id", "'' cannot be the id of a supply: it is empty", ",5,9 V 1 A,")]
    [InlineData("nothing", "nothing tells what 'SP' gives", "SP,5,,")]
    [InlineData("too many cells", "this line has 5 cells and the header names 4 columns; a cell with ',' in it goes in quotation marks", "SP,5,50,9 V 1 A,")]
    [InlineData("too few cells", "this line has 2 cells and the header names 4 columns", "SP,5")]
    [InlineData("too few cells, in quotes never closed", "this line has 1 cell and the header names 4 columns", "last")]
    [InlineData("twice", "supply 'first' stands here a second time; the first is at line 2", "first,5,9 V 1 A,")]
    public void Each_error_names_its_line(string what, string message, string line)
    {
        var errors = Errors($"supply,price,label,mass_g\nfirst,5,9 V 1 A,\n\n{line}\nlast,5,9 V 1 A,\n");
        var error = Assert.Single(errors);
        Assert.True(error.Line == 4, $"{what}: {error}");
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("9 V 1 A", "outlets: expected an id or a range, a colon and a label, such as 1-4: 9 V 150 mA, found \"9 V 1 A\"")]
    [InlineData("1: 9 V 1 A | 1: 9 V 1 A", "outlet '1' stands here a second time")]
    [InlineData("4-1: 9 V 1 A", "the range '4-1' is refused: it runs backwards")]
    [InlineData("1-30000: 9 V 1 A", "it holds more than 1000 outlets")]
    [InlineData("1: 9 V 1 A |", "found \"\"")]
    public void Outlets_are_read_as_in_the_rig_file(string cell, string message)
    {
        var error = Assert.Single(Errors($"supply,price,outlets,total,isolated,mains\nSP,5,{cell},,,\n"));
        Assert.Equal((2, 6), (error.Line, error.Column));
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("18,,", "total: expected amps, watts or both", 8)]
    [InlineData(",maybe,", "isolated: expected yes or no, or nothing where it is not known, found \"maybe\"", 9)]
    [InlineData(",,230", "mains: expected a mains input such as 100-240 V, found \"230\"; the unit is missing (V)", 10)]
    public void Figures_are_read_as_in_the_rig_file(string cells, string message, int column)
    {
        var error = Assert.Single(Errors($"supply,price,label,total,isolated,mains\nS,5,9V,{cells}\n"));
        Assert.Equal((2, column), (error.Line, error.Column));
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_errors_of_a_file_come_at_once_in_their_order_and_nothing_is_read()
    {
        var reading = PriceListReader.Read("supply,price,label\nA,x,9V\nB,5,\"9V\n1A\"\nC,y,9V\nD,,9V\n", "list.csv");
        Assert.Null(reading.Offers);
        Assert.Equal([2, 5, 6], reading.Errors.Select(static error => error.Line));
        Assert.StartsWith("list.csv:2:3: price: expected a price", reading.Errors[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_place_of_an_error_counts_characters_not_bytes()
    {
        var error = Assert.Single(Errors("supply,price,label\nØrsted-Ω,x,9V\n"));
        Assert.Equal((2, 10), (error.Line, error.Column));
    }

    [Theory]
    [InlineData("", "the price list is empty")]
    [InlineData(" \n\n", "the price list is empty")]
    [InlineData("supply,price,label\n", "no supply stands under the names of the columns")]
    [InlineData("supply,label\nA,9V\n", "the column 'price' is missing")]
    [InlineData("price,label\n5,9V\n", "the column 'supply' is missing")]
    [InlineData("supply,price\nA,5\n", "a column 'outlets' or 'label' is missing")]
    [InlineData("supply,price,lable\nA,5,9V\n", "'lable' is not a column of a price list; did you mean 'label'?")]
    [InlineData("supply,price,label,shop\nA,5,9V,x\n", "'shop' is not a column of a price list; the columns are supply, price, mass_g")]
    [InlineData("supply,price,label,PRICE\nA,5,9V,5\n", "the column 'price' stands here a second time")]
    [InlineData("supply,price,label\nA,5,\"9V\nB,5,9V\n", "a quotation mark opens a cell and is never closed")]
    [InlineData("supply,price,label\n\"A\" b,5,9V\n", "there is text after a closing quotation mark")]
    [InlineData("supply,price,label\nA,5,9V\0\n", "has no place in a text file")]
    public void A_file_that_is_no_price_list_is_refused(string text, string message) =>
        Assert.Contains(message, Errors(text)[0].Message, StringComparison.Ordinal);

    [Fact]
    public void A_table_without_header_is_refused_with_the_names_it_may_have()
    {
        var errors = Errors("A,5,9V\nB,5,9V\n");
        Assert.Equal(3, errors.Length);
        Assert.All(errors, static error => Assert.Equal(1, error.Line));
    }

    [Fact]
    public void Files_are_UTF8_and_exist()
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(path, [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Semicolons)]);
            Assert.Equal(2, PriceListReader.ReadFile(path).Offers!.Value.Count);
            File.WriteAllBytes(path, [.. Encoding.UTF8.GetBytes("supply,price,label\n"), 0xE9, (byte)'\n']);
            Assert.Contains("not UTF-8", Assert.Single(PriceListReader.ReadFile(path).Errors).Message, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }

        Assert.Contains("there is no such file", Assert.Single(PriceListReader.ReadFile(path).Errors).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Torn_files_give_errors_and_no_exception()
    {
        // Seeded and not for secrets: the same files every time.
        var random = new Random(1);
        for (var round = 0; round < 3000; round++)
        {
            var text = new StringBuilder(random.Next(2) == 0 ? Commas : Semicolons);
            for (var change = random.Next(1, 6); change > 0; change--)
            {
                var at = random.Next(text.Length);
                if (random.Next(2) == 0)
                    text.Remove(at, Math.Min(random.Next(1, 8), text.Length - at));
                else
                    text.Insert(at, "\",;|:\n\r-9é%"[random.Next(11)]);
            }

            var reading = PriceListReader.Read(text.ToString(), "torn.csv");
            Assert.Equal(reading.Offers is null, reading.Errors.Length > 0);
        }
    }

    [Fact]
    public void Leads_are_read_with_the_keys_that_the_rig_file_has()
    {
        var offers = Read("supply,price,label,mass_g,lead,type,length,plugs,plug,wire,count\nstage-1,5,OUTPUT 9V DC 1A,,,,,,,,\n,3.50,,40,flip-1,reversing,0.3 m,,5.5x2.5,AWG 24,4\n,6,,,chain-1,daisy_chain,,5,,,\n");
        Assert.Equal(["stage-1", "flip-1", "chain-1"], offers.Select(static offer => offer.Id));
        var flip = Assert.IsType<LeadOffer>(offers[1]);
        Assert.Equal((3.50m, 40m, 4), (flip.Price, flip.MassGrams, flip.Available));
        Assert.Equal((LeadType.Reversing, 0.3m, "5.5x2.5", 24, null), (flip.Lead.Type, flip.Lead.Length!.Value.Value, flip.Lead.Plug!.Value.Name, flip.Lead.Wire!.Value.Gauge, flip.Lead.Count));
        var chain = Assert.IsType<LeadOffer>(offers[2]);
        Assert.Equal((LeadType.DaisyChain, 5, null), (chain.Lead.Type, chain.Lead.Plugs, chain.Available));
    }

    [Fact]
    public void A_list_may_have_leads_only() => Assert.IsType<LeadOffer>(Assert.Single(Read("lead,price,type\nflip-1,3,reversing\n")));

    [Theory]
    [InlineData("S,3,9V,flip-1,reversing,,", "this line names a supply and a lead; each has a line of its own", 8)]
    [InlineData(",3,9V,,,,", "this line names neither a supply nor a lead", 1)]
    [InlineData(",3,9V,flip-1,reversing,,", "'label' is nothing that a lead has", 4)]
    [InlineData("S,3,9V,,reversing,,", "'type' is nothing that a supply has", 9)]
    [InlineData(",3,,flip-1,crossing,,", "type: expected one of straight, daisy chain, reversing, series, parallel, found \"crossing\"", 12)]
    [InlineData(",3,,chain-1,daisy chain,,", "nothing tells how many plugs 'chain-1' has", 5)]
    [InlineData(",3,,flip-1,reversing,,0", "count: expected a whole number from 1 to 1000, found \"0\"", 23)]
    [InlineData(",3,,first,reversing,,", "lead 'first' stands here a second time; the first is at line 2", 5)]
    public void A_line_that_offers_a_lead_wrongly_says_how(string line, string message, int column)
    {
        var error = Assert.Single(Errors($"supply,price,label,lead,type,plugs,count\nfirst,5,9V 1A,,,,\n{line}\n"));
        Assert.Equal((3, column), (error.Line, error.Column));
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    private static Supply SupplyOf(Offer offer) => Assert.IsType<SupplyOffer>(offer).Supply;

    private static Offer[] Read(string text)
    {
        var reading = PriceListReader.Read(text, "list.csv");
        Assert.Empty(reading.Errors);
        return [.. reading.Offers!.Value];
    }

    private static System.Collections.Immutable.ImmutableArray<FileError> Errors(string text)
    {
        var reading = PriceListReader.Read(text, "list.csv");
        Assert.Null(reading.Offers);
        Assert.NotEmpty(reading.Errors);
        return reading.Errors;
    }
}
