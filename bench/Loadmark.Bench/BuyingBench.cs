using System.Diagnostics;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;

namespace Loadmark.Bench;

/// <summary>Times the choice of supplies: the example of 20 loads and 60 offers, and smaller boards of the same loads.</summary>
internal static class BuyingBench
{
    private const int Rounds = 3;

    public static int Run()
    {
        var whole = RigFileReader.ReadFile("examples/to-buy.rig.yaml").Rig!;
        var offers = PriceListReader.ReadFile("examples/harbour-row.prices.csv").Offers!.Value;
        var table = new ResultTable(
            "Buying supplies",
            $"examples/to-buy.rig.yaml and parts of it, with the {offers.Count} offers of examples/harbour-row.prices.csv; the best of {Rounds} rounds after one to warm up. "
            + "\"Search\" is what finds and proves; the plans of the options come on top. "
            + ResultTable.Machine,
            "rig", "loads", "cheapest", "proven", "search for the cheapest", "with its plan", "front", "proven complete", "search for the front", "with all plans", "checks by the planner");

        foreach (var (name, rig) in Rigs(whole))
        {
            var cheapest = Time(rig, offers, withFront: false);
            var front = Time(rig, offers, withFront: true);
            table.Add(
                name, $"{rig.Loads.Count}", $"{cheapest.Result.Cheapest?.Price}", $"{cheapest.Result.Status == BuyStatus.Optimal}",
                $"{cheapest.Search:N0} ms", $"{cheapest.Whole:N0} ms", $"{front.Result.Front.Count} options", $"{front.Result.IsFrontComplete}",
                $"{front.Search:N0} ms", $"{front.Whole:N0} ms", $"{cheapest.Result.Checks}, {front.Result.Checks}");
        }

        table.Write("buying.md");
        return 0;
    }

    private static IEnumerable<(string Name, Rig Rig)> Rigs(Rig whole)
    {
        foreach (var size in new[] { 6, 12 })
            yield return ($"the first {size} loads", Part(whole, whole.Loads.Items.Take(size).ToList()));
        yield return ("all", whole);
        yield return ("all, nothing owned", whole with { Supplies = [] });
        yield return ("all, nothing owned, no chain", whole with { Supplies = [], Leads = [] });
    }

    private static Rig Part(Rig whole, List<Load> loads) =>
        whole with { Loads = [.. loads], Signal = [] };

    private static (BuyResult Result, double Search, double Whole) Time(Rig rig, ValueList<Core.Offers.Offer> offers, bool withFront)
    {
        BuyResult? result = null;
        var (search, whole) = (double.MaxValue, double.MaxValue);
        for (var round = 0; round <= Rounds; round++)
        {
            // With no time for the plans what is left is the search.
            var clock = Stopwatch.StartNew();
            SupplyBuyer.Buy(rig, [.. offers], new BuyOptions { WithFront = withFront, PlanTimeLimit = TimeSpan.Zero });
            var alone = clock.Elapsed.TotalMilliseconds;
            clock.Restart();
            result = SupplyBuyer.Buy(rig, [.. offers], new BuyOptions { WithFront = withFront });
            var both = clock.Elapsed.TotalMilliseconds;
            if (round == 0)
                continue;
            search = Math.Min(search, alone);
            whole = Math.Min(whole, both);
        }

        return (result!, search, whole);
    }
}
