using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>Supplies that are fed by others: a plan feeds them where that feeds more, or better, and says what it does not know.</summary>
public sealed class FedSupplyTests(ITestOutputHelper output)
{
    private const string Wall = "  wall: { label: \"INPUT 100-240V~ OUTPUT 9V DC 3A centre negative\", isolated: true }\n";
    private const string Loads = "loads: { drive-1: 9V DC 20mA, drive-2: 9V DC 20mA, delay-1: 9V DC 200mA, delay-2: 9V DC 200mA }\n";

    [Fact]
    public void An_input_is_planned_where_its_outlets_are_wanted()
    {
        var plan = Plan(Loads + "supplies:\n" + Wall + Hub(4));
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(5, plan.Rig.Wired!.Value.Count);
        Assert.Contains(plan.Rig.Wired.Value, static feed => feed.To.Items.Contains("hub") && feed.From[0].Supply == "wall");
        PlanAssert.IsSafe(plan);
    }

    [Fact]
    public void A_supply_that_nothing_needs_stays_idle()
    {
        var plan = Plan("loads: { drive-1: 9V DC 20mA }\nsupplies:\n" + Wall + Hub(4));
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Single(plan.Rig.Wired!.Value);
        Assert.DoesNotContain(plan.Rig.Wired.Value, static feed => feed.To.Items.Contains("hub"));
    }

    [Fact]
    public void An_input_shares_a_chain_where_there_is_no_other_way()
    {
        var plan = Plan(Loads + "supplies:\n" + Wall + Hub(2) + "leads: { chain: { type: daisy chain, plugs: 3 } }\n");
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        var shared = plan.Rig.Wired!.Value.Items.Single(static feed => feed.To.Items.Contains("hub"));
        Assert.Equal(3, shared.To.Count);
        PlanAssert.IsSafe(plan);
    }

    /// <summary>The draw of an input counts against what feeds it: here it is too much, and that is proven.</summary>
    [Fact]
    public void An_input_that_nothing_bears_leaves_its_outlets_idle()
    {
        var plan = Plan(Loads + "supplies:\n  small: { label: \"INPUT 100-240V~ OUTPUT 9V DC 500mA centre negative\" }\n" + Hub(4));
        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.Equal(3, plan.Unfed.Count);
        Assert.DoesNotContain(plan.Rig.Wired!.Value, static feed => feed.From[0].Supply == "hub");
    }

    [Fact]
    public void One_supply_may_feed_another_that_feeds_a_third()
    {
        var plan = Plan(
            Loads + "supplies:\n  wall: { label: \"INPUT 100-240V~ OUTPUT 18V DC 2A centre negative\" }\n"
            + "  middle: { label: \"INPUT 18V DC 1.5A centre negative OUTPUT 9V DC 1.5A centre negative\" }\n" + Hub(4));
        Assert.Empty(plan.Unfed);
        Assert.Contains(plan.Rig.Wired!.Value, static feed => feed.To.Items.Contains("hub") && feed.From[0].Supply == "middle");
        Assert.Contains(plan.Rig.Wired!.Value, static feed => feed.To.Items.Contains("middle") && feed.From[0].Supply == "wall");
        PlanAssert.IsSafe(plan);
    }

    /// <summary>
    /// A hub that is not isolated joins its returns with the outlet that feeds it: a load with positive ground behind it must not meet one
    /// with negative ground on that return. Two ways of feeding it differ in nothing else.
    /// </summary>
    [Fact]
    public void Returns_that_an_input_joins_are_heeded()
    {
        var plan = Plan(
            "loads: { fuzz-1: { label: 9V DC 5mA, ground: positive, polarity: centre negative }, drive-1: 9V DC 150mA, drive-2: 9V DC 150mA }\n"
            + "supplies:\n  brick: { label: \"INPUT 100-240V~\", outlets: { 1: 9 V DC 200 mA centre negative, 2: 9 V DC 200 mA centre negative, 3: 9 V DC 200 mA centre negative } }\n"
            + "  hub: { label: \"INPUT 9V DC 100mA centre negative OUTPUT 9V DC 20mA centre negative\" }\n");
        PlanAssert.IsSafe(plan);
        Assert.NotEmpty(plan.Unfed);
        Assert.NotEqual(PlanStatus.Optimal, plan.Status);
    }

    [Fact]
    public void Whether_all_can_be_fed_counts_what_a_supply_could_feed_when_fed()
    {
        Assert.True(CanFeedAll(Loads + "supplies:\n" + Wall + Hub(4)));
        Assert.False(CanFeedAll(Loads + "supplies:\n" + Wall + Hub(3)));
    }

    /// <summary>
    /// Small random rigs with one or two such supplies, held against every wiring of them. What is called proven is the best; what is not
    /// proven, because such supplies join returns, is told so, and its bounds hold.
    /// </summary>
    [Theory]
    [InlineData(1, 60)]
    [InlineData(2, 20)]
    public void Plans_with_fed_supplies_are_as_good_as_they_say(int hubs, int rigs)
    {
        var cancellation = TestContext.Current.CancellationToken;
        var runs = Enumerable.Range(20_000, rigs).AsParallel().AsOrdered().WithCancellation(cancellation)
            .Select(seed => OracleRun.Of(seed, 4, 5 - hubs, cancellation, hubs)).ToList();
        var (used, proven) = (runs.Count(static run => run.Hubs > 0), runs.Count(static run => run.IsProven));
        output.WriteLine($"{rigs} rigs with {hubs} such supplies, {runs.Sum(static run => (long)run.Tried)} wirings judged; {used} plans feed one; {proven} proven");
        var faults = runs.Select(static run => run.Fault).OfType<string>().ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} plans are at fault\n{string.Join("\n\n", faults.Take(4))}");
        Assert.InRange(used, 1, rigs);
        Assert.InRange(proven, rigs * 9 / 10, rigs);
    }

    /// <summary>What is bought may feed what is bought, or what is there; a dearer supply that needs no feeding is not called the cheapest.</summary>
    [Theory]
    [InlineData("", 35, "wall-big hub-small")]
    [InlineData("supplies: { hub: { label: \"INPUT 9V DC 1.5A centre negative OUTPUTS 1-4 9V 300mA centre negative\", isolated: true } }\n", 15, "wall-big")]
    public void A_supply_on_the_list_may_feed_another(string atHand, decimal price, string bought)
    {
        var list = PriceListReader.Read(
            "supply,price,label,isolated\nhub-small,20,INPUT 9V DC 1.5A centre negative OUTPUTS 1-4 9V 300mA centre negative,yes\n"
            + "wall-big,15,INPUT 100-240V~ OUTPUT 9V DC 3A centre negative,no\nbrick-five,90,INPUT 100-240V~ OUTPUTS 1-5 9V 300mA centre negative,yes\n",
            "list.csv");
        var result = SupplyBuyer.Buy(
            Rigs.Read("rig: To buy\nmains: 230 V 50 Hz\n" + Loads + atHand), [.. list.Offers!], new BuyOptions(), TestContext.Current.CancellationToken);
        Assert.Equal(BuyStatus.Optimal, result.Status);
        Assert.Equal(price, result.Cheapest!.Price);
        Assert.Equal(bought.Split(' ').Order(StringComparer.Ordinal), result.Cheapest.Purchases.Items.Select(static purchase => purchase.Offer.Id).Order(StringComparer.Ordinal));
    }

    private static string Hub(int outlets) =>
        $"  hub: {{ label: \"INPUT 9V DC 1.5A centre negative OUTPUTS 1-{outlets} 9V 300mA centre negative\", isolated: true }}\n";

    private static PlanResult Plan(string text) =>
        RigPlanner.Plan(Rigs.Read("rig: Hub\nmains: 230 V 50 Hz\n" + text), new PlanOptions(), TestContext.Current.CancellationToken);

    private static bool? CanFeedAll(string text) =>
        RigPlanner.CanFeedAll(Rigs.Read("rig: Hub\nmains: 230 V 50 Hz\n" + text), new PlanOptions(), TestContext.Current.CancellationToken);
}
