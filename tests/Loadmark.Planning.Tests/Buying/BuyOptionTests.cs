using Loadmark.Core.Checks;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;

namespace Loadmark.Planning.Tests.Buying;

/// <summary>What is said of each option: how the rules judge it, and which of them stand out.</summary>
public sealed class BuyOptionTests
{
    private const string Board = "rig: Board\nmains: 230 V 50 Hz\nloads:\n  delay-1: { kind: digital delay, label: 9V DC 100mA centre negative 5.5x2.1 }\n"
        + "  delay-2: { kind: digital delay, label: 9V DC 100mA centre negative 5.5x2.1 }\n";

    private const string Prices = "supply,price,mass_g,label,outlets,isolated\n"
        + "shared-2,20,900,INPUT 100-240V~ 50/60Hz,1-2: 9 V DC 200 mA centre negative 5.5x2.1,no\n"
        + "apart-2,28,300,INPUT 100-240V~ 50/60Hz,1-2: 9 V DC 200 mA centre negative 5.5x2.1,yes\n";

    [Fact]
    public void Each_option_is_judged_by_the_rules_and_the_quiet_the_light_and_the_cheap_are_told()
    {
        var result = Buy(Prices);
        Assert.Equal(["shared-2", "apart-2"], result.Front.Items.Select(static option => option.Purchases[0].Offer.Id));
        Assert.All(result.Front, static option => Assert.Equal(NameplateCheck.Of(option.Plan.Rig).Verdict, option.Verdict));
        Assert.Equal(Severity.Noise, result.Front[0].Verdict);
        Assert.False(result.Front[0].IsQuiet);
        Assert.Equal(result.Front[1], result.CheapestQuiet);
        Assert.Equal(result.Front[1], result.Lightest);
        Assert.Equal(result.Front[0], result.FewestBoxes);
        Assert.All(result.Front, static option => Assert.Equal([option.Purchases[0].Offer.Id], option.Plan.Rig.ToBuy));
    }

    [Fact]
    public void The_cheapest_that_is_quiet_is_found_where_none_of_the_front_is()
    {
        // One box hums; two of it do not, but are neither lighter nor within one and a half times the price.
        var result = Buy(string.Join('\n', Prices.Split('\n').Take(2)));
        Assert.False(Assert.Single(result.Front).IsQuiet);
        Assert.Equal((BuyStatus.Optimal, 40m, true), (result.QuietStatus, result.CheapestQuiet!.Price, result.CheapestQuiet.IsQuiet));
        Assert.Equal([20m, 40m], result.Options.Items.Select(static option => option.Price));
    }

    [Fact]
    public void The_same_box_is_wired_quietly_where_headroom_would_have_it_hum()
    {
        // Within headroom the two would share a return; past it each has its own.
        const string List = "supply,price,label,outlets,isolated\n"
            + "pair-1,20,INPUT 100-240V~ 50/60Hz,1: 9 V DC 105 mA centre negative 5.5x2.1 | 2: 9 V DC 105 mA centre negative 5.5x2.1,yes\n";
        const string Own = "supplies:\n  own: { label: INPUT 100-240V~ 50/60Hz, isolated: false, outlets: { 1-2: 9 V DC 500 mA centre negative 5.5x2.1 } }\n";
        var third = Board + "  delay-3: { kind: digital delay, label: 9V DC 100mA centre negative 5.5x2.1 }\n" + Own;
        var result = Buy(List, third);
        Assert.Equal(20m, result.Cheapest!.Price);
        Assert.Equal(Severity.Noise, result.Cheapest.Verdict);
        Assert.Equal((BuyStatus.Optimal, 20m, true), (result.QuietStatus, result.CheapestQuiet!.Price, result.CheapestQuiet.IsWiredForQuiet));
        Assert.Equal(result.Cheapest.Purchases, result.CheapestQuiet.Purchases);
    }

    [Fact]
    public void What_is_pinned_and_hums_is_mended_by_nothing_that_is_bought()
    {
        var board = Board + "  drive-1: { kind: analog drive, label: 9V DC 30mA centre negative 5.5x2.1 }\n"
            + "supplies:\n  own: { label: INPUT 100-240V~ 50/60Hz, isolated: false, outlets: { 1-2: 9 V DC 200 mA centre negative 5.5x2.1 } }\n"
            + "wired:\n  - { from: own/1, to: delay-1, pinned: true }\n  - { from: own/2, to: delay-2, pinned: true }\n";
        var result = Buy(Prices, board);
        Assert.Equal((BuyStatus.Optimal, BuyStatus.Infeasible), (result.Status, result.QuietStatus));
        Assert.Null(result.CheapestQuiet);
    }

    [Fact]
    public void A_plain_transformer_is_marked()
    {
        var result = Buy(
            "supply,price,label\nlump-1,5,INPUT 230V~ 50Hz 10VA OUTPUT 9V DC 300mA centre negative 5.5x2.1\n",
            Board.Replace("9V DC 100mA", "9-18V DC 100mA", StringComparison.Ordinal));
        Assert.Equal("lump-1", Assert.Single(result.Cheapest!.MayBeUnregulated));
        Assert.All(Buy(Prices).Front, static option => Assert.Empty(option.MayBeUnregulated));
    }

    private static BuyResult Buy(string prices, string board = Board) => SupplyBuyer.Buy(
        Tests.Rigs.Read(board), PriceListReader.Read(prices, "prices").Offers!.Value, new BuyOptions(), TestContext.Current.CancellationToken);
}
