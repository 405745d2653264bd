using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Paper;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;
using Loadmark.Workshop.Sheets;
using Loadmark.Workshop.Shopping;

namespace Loadmark.Workshop.Tests.Sheets;

/// <summary>What is to be bought to build a rig, with the prices of a list that surely are its own.</summary>
public sealed class ShoppingPageTests
{
    private const string Rig =
        """
        rig: r
        mains: 230 V 50 Hz
        loads:
          drive-3: 9V DC 12mA centre negative 5.5x2.1
          delay-2: 9V DC 20mA centre negative 5.5x2.1
          chorus-1: 9V DC 20mA centre negative 5.5x2.1
        supplies:
          brick-4:
            isolated: true
            to_buy: yes
            outlets: { 1-2: 9V DC 100mA centre negative 5.5x2.1 }
          wall: { label: OUTPUT 9V DC 1A centre negative 5.5x2.1 }
        leads:
          chain-5: { type: daisy chain, plugs: 2, tail: 0.4 m, pitch: 0.15 m, count: 3, to_buy: yes }
          flip: { type: reversing, length: 0.5 m }
        wired:
          - { from: brick-4/1, to: drive-3 }
          - { from: wall/1, lead: chain-5, to: [delay-2, chorus-1] }
        """;

    private const string Header = "supply,price,outlets,isolated,total,lead,type,plugs,tail,count\n";

    private const string Brick = "brick-4,49.50,1-2: 9V DC 100mA centre negative,yes,,,,,,\n";

    private const string Chain = ",5.00,,,,chain-5,daisy chain,2,,\n";

    [Fact]
    public void What_is_marked_and_what_is_not_listed_is_to_be_bought_and_nothing_else()
    {
        var list = Of(Rig, null);
        Assert.Equal(
            [("brick-4", 1), ("chain-5", 3), ("straight lead", 1)], list.Things.Items.Select(static thing => (thing.Name, thing.Count)));
        Assert.Equal([1, 2], list.ToMake.Items.Select(static lead => lead.Number));
        Assert.False(list.HasPrices);
    }

    [Fact]
    public void A_line_of_the_same_tag_is_the_price_and_what_has_none_is_never_hidden()
    {
        var list = Of(Rig, Header + Brick + Chain);
        Assert.Equal(
            [("brick-4: same tag", 49.50m), ("chain-5: same tag", 15m), (": ", null)],
            list.Things.Items.Select(static thing => ($"{thing.Line?.Offer.Id}: {thing.Line?.How}", thing.Cost)));
        Assert.Equal("At least 64.50: 1 thing has no price in the list.", list.CostSentence);
        Assert.Equal("At least 49.50: 4 things have no price in the list.", Of(Rig, Header + Brick).CostSentence);
        Assert.Equal("Nothing of it has a price in the list.", Of(Rig, Header + "other,1.00,1: 9V DC 100mA,,,,,,,\n").CostSentence);
        Assert.Equal(
            "In all 64.50.",
            Of(Rig.Replace("  - { from: brick-4/1, to: drive-3 }\n", "", StringComparison.Ordinal), Header + Brick + Chain).CostSentence);
    }

    [Fact]
    public void A_line_may_be_named_as_the_supply_is()
    {
        var named = Rig.Replace("brick-4", "more", StringComparison.Ordinal).Replace("    to_buy", "    name: brick-4\n    to_buy", StringComparison.Ordinal);
        Assert.Equal("same name", Of(named, Header + Brick).Things[0].Line?.How);
        Assert.Null(Of(Rig.Replace("brick-4", "more", StringComparison.Ordinal), Header + Brick).Things[0].Line);
    }

    [Theory]
    [InlineData("brick-4,49.50,1-3: 9V DC 100mA centre negative,yes,,,,,,\n", "3 outlets")]
    [InlineData("brick-4,49.50,1-2: 9V DC 200mA centre negative,yes,,,,,,\n", "outlet 1 gives 9 V 200 mA")]
    [InlineData("brick-4,49.50,1-2: 9V DC 100mA centre positive,yes,,,,,,\n", "outlet 1 has the other polarity")]
    [InlineData("brick-4,49.50,1-2: 9V DC 100mA centre negative 5.5x2.5,yes,,,,,,\n", "outlet 1 has a plug 5.5x2.5")]
    [InlineData("brick-4,49.50,1-2: 9V AC 100mA,yes,,,,,,\n", "outlet 1 gives another kind of current")]
    [InlineData("brick-4,49.50,1-2: 9V DC 100mA centre negative,no,,,,,,\n", "outlets that are not isolated")]
    [InlineData(",49.50,,,,brick-4,straight,,,\n", "a lead")]
    public void A_line_of_the_same_tag_that_is_another_thing_is_no_price(string line, string difference)
    {
        var thing = Of(Rig, Header + line).Things[0];
        Assert.Null(thing.Line);
        Assert.Null(thing.Cost);
        Assert.Equal($"the list's brick-4 is another: {difference}", thing.Remark);
    }

    [Theory]
    [InlineData(",5.00,,,,chain-5,daisy chain,5,,\n", "5 plugs")]
    [InlineData(",5.00,,,,chain-5,daisy chain,2,0.6 m,\n", "a tail of 0.6 m")]
    [InlineData(",5.00,,,,chain-5,reversing,,,\n", "reversing lead")]
    public void A_lead_of_the_same_tag_that_is_another_is_no_price(string line, string difference) =>
        Assert.Equal($"the list's chain-5 is another: {difference}", Of(Rig, Header + line).Things[1].Remark);

    [Fact]
    public void Of_what_the_list_has_too_few_the_rest_has_no_price()
    {
        var list = Of(Rig, Header + ",5.00,,,,chain-5,daisy chain,2,,2\n");
        Assert.Equal((2, 10m, "the list has 2 of 3"), (list.Things[1].Priced, list.Things[1].Cost, list.Things[1].Remark));
        Assert.Equal("At least 10.00: 3 things have no price in the list.", list.CostSentence);
    }

    /// <summary>What a plan to buy takes has the price that the plan says, whatever it had to call it.</summary>
    [Fact]
    public void What_buying_puts_into_the_rig_has_the_price_that_it_said()
    {
        var offers = PriceListReader.ReadFile(Repository.PathOf("examples/harbour-row.prices.csv")).Offers!.Value;
        var result = SupplyBuyer.Buy(SheetTests.Example("to-buy.rig.yaml"), offers, new BuyOptions(), TestContext.Current.CancellationToken);
        Assert.NotEmpty(result.Options.Items);
        foreach (var option in result.Options)
        {
            var rig = SheetTests.Read(Files.RigFileWriter.Write(option.Plan.Rig));
            var list = ShoppingList.Of(rig, [], offers);
            Assert.Equal((option.Price, 0), (list.Cost, list.Unpriced));
        }
    }

    /// <summary>The stretches are 0.5 m, and 0.4 m and 0.15 m: 1.05 m, and three times 40 mm for their ends.</summary>
    [Fact]
    public void Cable_and_plugs_are_those_of_the_leads_to_make()
    {
        var parts = LeadParts.Of(Of(Rig, null).ToMake, CuttingWishes.CommonAllowance);
        Assert.Equal(new Metres(1.17m), Assert.Single(parts.Cables.Items).Length);
        Assert.Equal([new PlugNeed("5.5x2.1", 5, 0)], parts.Plugs.Items);
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void The_page_says_it_all_and_is_the_same_twice(string paper)
    {
        Assert.Null(TypedSheetOptions.Read(
            SheetTests.Options with { Prices = Offers(Header + Brick + Chain) },
            new TypedSheet { Only = ["shopping"], Paper = paper, Reels = ["1 m"] },
            out var options));
        var document = SheetTests.Set(SheetTests.Read(Rig), options);
        PageAssert.IsSound(document);
        var texts = string.Join(' ', SheetTests.TextsOf(document));
        foreach (var said in (string[])["At least 64.50: 1 thing has no price in the list.", "brick-4: same tag", "no price in the list", "2 × 1 m", "1.17 m", "5.5x2.1"])
            Assert.Contains(said, texts, StringComparison.Ordinal);
        Assert.Equal(
            SheetFile.Write(document, SheetFileKind.Pdf), SheetFile.Write(SheetTests.Set(SheetTests.Read(Rig), options), SheetFileKind.Pdf));
    }

    [Fact]
    public void Reels_that_do_not_suffice_are_said()
    {
        Assert.Null(TypedSheetOptions.Read(SheetTests.Options, new TypedSheet { Only = ["shopping"], Reels = ["0.6 m x 1"] }, out var options));
        Assert.Contains("not enough: 2 pieces are missing", string.Join(' ', SheetTests.TextsOf(SheetTests.Set(SheetTests.Read(Rig), options))), StringComparison.Ordinal);
    }

    /// <summary>It is on the sheet where there is something to say of it, and where it is asked for.</summary>
    [Fact]
    public void It_is_set_where_something_is_marked_or_a_price_list_is_given()
    {
        Assert.True(IsSet(SheetTests.Read(Rig), SheetTests.Options));
        Assert.False(IsSet(SheetTests.Example("pit.rig.yaml"), SheetTests.Options));
        Assert.True(IsSet(SheetTests.Example("pit.rig.yaml"), SheetTests.Options with { Prices = Offers(Header + Brick) }));
        Assert.True(IsSet(SheetTests.Example("pit.rig.yaml"), SheetTests.Options with { Only = [SheetPart.Shopping] }));
    }

    private static bool IsSet(Rig rig, SheetOptions options) =>
        SheetTests.Set(rig, options).Pages.SelectMany(static page => page.All())
            .Any(static part => part.Tag == PaperTag.Heading && part.Shapes.OfType<Drawing.Scenes.TextShape>().Any(static text => text.Text == "Shopping list"));

    private static ShoppingList Of(string rig, string? prices)
    {
        var figures = SheetFigures.Of(SheetTests.Read(rig), TestContext.Current.CancellationToken);
        return ShoppingList.Of(figures.Rig, figures.Leads, prices is null ? null : Offers(prices));
    }

    private static ValueList<Offer> Offers(string prices)
    {
        var reading = PriceListReader.Read(prices, "prices.csv");
        return reading.Offers ?? throw new InvalidOperationException(string.Join(' ', reading.Errors));
    }
}
