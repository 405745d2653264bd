using Loadmark.Core.Offers;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;

namespace Loadmark.Planning.Tests.Buying;

/// <summary>Leads on the price list: bought where those on hand do not do, at their price, and no more of them than can be had.</summary>
public sealed class PricedLeadTests
{
    private const string Columns = "supply,price,mass_g,label,isolated,lead,type,plugs,plug,count\n";

    private const string Board = "rig: Board\nmains: 230 V 50 Hz\nloads:\n  drive-1: { kind: analog drive, label: 9V DC 50mA centre negative 5.5x2.1 }\n"
        + "  drive-2: { kind: analog drive, label: 9V DC 50mA centre negative 5.5x2.1 }\n";

    private const string Wall = "wall-1,20,300,INPUT 100-240V~ 50/60Hz OUTPUT 9V DC 500mA centre negative 5.5x2.1,yes,,,,,\n";

    [Fact]
    public void A_chain_that_costs_less_than_a_second_supply_is_bought()
    {
        var cheapest = Buy(Board, Wall + ",6,40,,,chain-1,daisy chain,3,,\n").Cheapest!;
        Assert.Equal(["wall-1", "chain-1"], cheapest.Purchases.Items.Select(static purchase => purchase.Offer.Id));
        Assert.Equal((26m, 340m, 1), (cheapest.Price, cheapest.MassGrams, cheapest.Count));
        Assert.Equal("1 daisy chain with 3 plugs", cheapest.LeadWords);
        Assert.Equal(["wall-1", "chain-1"], cheapest.Plan.Rig.ToBuy);
        Assert.Equal(BuyStatus.Optimal, Buy(Board, Wall + ",6,40,,,chain-1,daisy chain,3,,\n").Status);
    }

    [Fact]
    public void A_chain_that_costs_more_than_a_second_supply_is_not()
    {
        var cheapest = Buy(Board, Wall + ",21,40,,,chain-1,daisy chain,3,,\n").Cheapest!;
        Assert.Equal(40m, cheapest.Price);
        Assert.Null(cheapest.LeadWords);
    }

    [Fact]
    public void A_lead_on_hand_costs_nothing()
    {
        var cheapest = Buy(Board + "leads:\n  own: { type: daisy chain, plugs: 2 }\n", Wall + ",6,40,,,chain-1,daisy chain,3,,\n").Cheapest!;
        Assert.Equal(20m, cheapest.Price);
        Assert.Empty(cheapest.Leads);
    }

    [Theory]
    [InlineData("", 5100, "2 reversing leads")]
    [InlineData("1", 7550, "1 reversing lead")]
    public void No_more_leads_are_bought_than_there_are(string count, int hundredths, string words)
    {
        var list = "positive-1,50,,INPUT 100-240V~ 50/60Hz OUTPUT 9V DC 60mA centre positive 5.5x2.1,yes,,,,,\n" + Wall + $",5.50,,,,flip-1,reversing,,,{count}\n";
        var cheapest = Buy(Board.Replace("negative", "positive", StringComparison.Ordinal), list).Cheapest!;
        Assert.Equal((hundredths, words), ((int)(cheapest.Price * 100), cheapest.LeadWords));
    }

    [Fact]
    public void A_plug_is_adapted_by_a_lead_that_is_bought()
    {
        var cheapest = Buy(Board.Replace("5.5x2.1 }\n  ", "5.5x2.5 }\n  ", StringComparison.Ordinal), Wall + ",3,,,,adaptor-1,straight,,5.5x2.5,\n").Cheapest!;
        Assert.Equal((43m, "1 straight lead with a 5.5x2.5 plug"), (cheapest.Price, cheapest.LeadWords));
        Assert.Null(cheapest.MassGrams);
    }

    [Fact]
    public void A_lead_that_nothing_needs_is_left_out_with_why()
    {
        var result = Buy(Board, Wall + ",1,,,,plain-1,straight,,,\n,1,,,,flip-1,reversing,,,\n");
        Assert.Equal(["plain-1", "flip-1"], result.LeftOut.Items.Select(static left => left.Offer.Id));
        Assert.All(result.LeftOut, static left => Assert.StartsWith("No load here needs it", left.Because, StringComparison.Ordinal));
    }

    [Fact]
    public void A_lead_alone_may_be_all_that_is_lacking()
    {
        var rig = Board + "supplies:\n  own: { label: OUTPUT 9V DC 500mA centre negative 5.5x2.1 }\n";
        var result = Buy(rig, Wall + ",6,40,,,chain-1,daisy chain,3,,\n");
        Assert.Equal(["chain-1"], result.Cheapest!.Purchases.Items.Select(static purchase => purchase.Offer.Id));
        Assert.IsType<LeadOffer>(result.Cheapest.Purchases[0].Offer);
        Assert.Equal(0, result.Cheapest.Count);
    }

    private static BuyResult Buy(string rig, string rows) => SupplyBuyer.Buy(
        Tests.Rigs.Read(rig), PriceListReader.Read(Columns + rows, "list").Offers!.Value, new BuyOptions(), TestContext.Current.CancellationToken);
}
