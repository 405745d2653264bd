using Loadmark.Planning.Buying;

namespace Loadmark.Planning.Tests.Buying;

/// <summary>What is bought for small random rigs is as good as the best of all baskets, which are tried one by one by the rules alone.</summary>
public sealed class ShopOracleTests(ITestOutputHelper output)
{
    /// <summary>Shops as they are, then shops with supplies that others must feed, then shops that have leads too.</summary>
    [Theory]
    [InlineData(300, false, false)]
    [InlineData(20, true, false)]
    [InlineData(150, false, true)]
    public void The_cheapest_and_the_front_are_those_of_all_baskets(int allShops, bool withHubs, bool withLeads)
    {
        var shops = Rounds.Of(allShops);
        var (possible, free, unproven, points, checks, baskets, fed, leads) = (0, 0, 0, 0, 0, 0, 0, 0);
        var (quiet, dearer, unprovenQuiet) = (0, 0, 0);
        for (var seed = 1; seed <= shops; seed++)
        {
            var shop = new RandomShop(seed, withHubs, withLeads);
            var oracle = new ShopOracle(shop.Rig, shop.Offers);
            baskets += oracle.Tried;
            var options = new BuyOptions { TimeLimit = TimeSpan.FromMinutes(1), CheckTimeLimit = TimeSpan.FromSeconds(10) };
            if (seed % 3 != 0)
                options = options with { MassStepGrams = 0, SpareStep = Watts.Zero };
            var bought = SupplyBuyer.Buy(shop.Rig, shop.Offers, options, TestContext.Current.CancellationToken);
            checks += bought.Checks;
            var about = $"seed {seed}\n{shop.Text}\n{shop.List}\n{string.Join('\n', bought.LeftOut)}";

            Assert.True(bought.CheapestQuiet is null == (bought.QuietStatus is BuyStatus.Infeasible or BuyStatus.Unknown), about);
            if (bought.QuietStatus is BuyStatus.Optimal or BuyStatus.Infeasible)
                Assert.True(oracle.CheapestQuiet == bought.CheapestQuiet?.Price, $"quiet for {bought.CheapestQuiet?.Price} instead of {oracle.CheapestQuiet}, {about}");
            else
                unprovenQuiet++;
            if (bought.CheapestQuiet is { } quietest)
            {
                quiet++;
                dearer += bought.Cheapest != quietest ? 1 : 0;
                Assert.True(quietest.IsQuiet && oracle.CheapestQuiet <= quietest.Price, about);
                PlanAssert.IsSafe(quietest.Plan);
            }

            if (oracle.Cheapest is not { } price)
            {
                Assert.True(bought.Front.Count == 0, about);
                Assert.True(bought.Status == BuyStatus.Infeasible, about);
                continue;
            }

            possible++;
            fed += bought.Cheapest?.Plan.Rig.Wired!.Value.Items.Any(static feed => feed.To.Items.Any(static id => id.StartsWith("hub", StringComparison.Ordinal))) is true ? 1 : 0;
            leads += bought.Cheapest?.Leads.Count > 0 ? 1 : 0;
            free += price == 0 ? 1 : 0;
            Assert.True(bought.Cheapest is not null, about);
            Assert.True(bought.Cheapest.Price == price, $"{bought.Cheapest.Price} instead of {price}, {about}");
            if (bought.Status == BuyStatus.Optimal)
                Assert.True(price == bought.PriceBound, about);
            if (!bought.IsFrontComplete)
            {
                unproven++;
                continue;
            }

            var beaten = bought.LeftOut.Items.Where(static left => left.IsBeaten).Select(static left => left.Offer.Id).ToHashSet(StringComparer.Ordinal);
            var expected = oracle.Front(options, beaten);
            var found = bought.Front.Items.Select(static option => (option.Price, Mass: option.MassGrams, Spare: option.Spare.Value)).ToList();
            Assert.True(expected.SequenceEqual(found), $"{string.Join(' ', found)}\ninstead of {string.Join(' ', expected)}\n{about}");
            points += found.Count;
            foreach (var option in bought.Front)
            {
                Assert.True(option.Plan.Unfed.Count == 0, about);
                PlanAssert.IsSafe(option.Plan);

                // Every lead that is bought is in use, and marked: none of an option can be left out.
                var used = option.Plan.Rig.Wired!.Value.Items.CountBy(static feed => feed.Lead ?? "").ToDictionary();
                Assert.All(option.Leads, one => Assert.Equal(one.Count, used.GetValueOrDefault(one.Offer.Id)));
                Assert.Equal(option.Leads.Items.Select(static one => one.Offer.Id), option.Plan.Rig.Leads.Items.Where(static lead => lead.ToBuy).Select(static lead => lead.Id));
            }
        }

        output.WriteLine($"{shops} shops, {baskets} baskets tried; {possible} feed everything, {free} for nothing, {fed} feed a supply that must be fed, {leads} buy leads; {points} points on fronts, {unproven} fronts not proven; the planner was asked {checks} times; {quiet} quiet, {dearer} of them other than the cheapest, {unprovenQuiet} not proven");
        Assert.InRange(dearer, withHubs || withLeads ? 0 : 1, shops);
        Assert.InRange(unprovenQuiet, 0, shops / 15);
        Assert.InRange(possible, shops / 4, shops * 9 / 10);
        Assert.InRange(free, 1, shops / 2);
        Assert.InRange(leads, withLeads ? shops / 10 : 0, withLeads ? shops : 0);
        Assert.InRange(unproven, 0, shops / 15);
    }
}
