using System.Diagnostics;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.PriceLists;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Tests.Oracle.Fleet;

namespace Loadmark.Bench;

/// <summary>Times the choice of supplies: the example of 20 loads and 60 offers, and seeded rigs that own nothing, with that list and with seeded ones.</summary>
internal static class BuyingBench
{
    private const int Rounds = 3;
    private const int SeededOffers = 60;
    private static readonly BuyOptions Options = new() { TimeLimit = TimeSpan.FromSeconds(5), PlanTimeLimit = TimeSpan.FromSeconds(1) };

    public static int Run()
    {
        var example = RigFileReader.ReadFileWithText("examples/to-buy.rig.yaml").Reading.Rig!;
        IReadOnlyList<Offer> list = [.. PriceListReader.ReadFile("examples/harbour-row.prices.csv").Offers!.Value];
        var table = new ResultTable(
            "Buying supplies",
            $"The example of 20 loads (examples/to-buy.rig.yaml) and seeded rigs of a fleet that own no supply, without the loads that nothing on the list suits; with the {list.Count} "
            + $"offers of examples/harbour-row.prices.csv, and with seeded lists of {SeededOffers}. After warm-up, the plans of all options included; the example is the best of {Rounds} rounds. "
            + $"Limits: {Options.TimeLimit.TotalSeconds:0} s of search, {Options.PlanTimeLimit.TotalSeconds:0} s a plan. {ResultTable.Machine}",
            "rig", "loads", "list", "cheapest", "proven", "cheapest ms", "options", "proven complete", "front ms", "planner asked: cheapest, front");
        Buy(example, list, withFront: true);

        Add(table, "example", example, "shipped", list, Rounds);
        Add(table, "example, nothing owned", example with { Supplies = [] }, "shipped", list, Rounds);
        Add(table, "example, no chain", example with { Leads = [] }, "shipped", list, Rounds);
        foreach (var size in new[] { 6, 12, 20, 30, 40 })
        {
            for (var seed = 1; seed <= 2; seed++)
            {
                var rig = RigFileReader.Read(new FleetRig(seed, size, isShort: false).ToString(), "fleet").Rig! with { Supplies = [], Wired = null };
                Add(table, $"fleet {seed}", rig, "shipped", list, 1);
                Add(table, $"fleet {seed}", rig, $"seeded {seed}", SeededPriceList.Make((100 * size) + seed, SeededOffers), 1);
                table.Write("buying.md");
            }
        }

        return 0;
    }

    private static void Add(ResultTable table, string name, Rig rig, string listName, IReadOnlyList<Offer> list, int rounds)
    {
        if (Buy(rig, list, withFront: false).Result.Unsuited is { Count: > 0 } unsuited)
            rig = rig with { Loads = [.. rig.Loads.Items.Where(load => !unsuited.Items.Contains(load.Id))], Signal = [] };
        var (cheapest, one) = Best(rig, list, withFront: false, rounds);
        var (front, all) = Best(rig, list, withFront: true, rounds);
        table.Add(
            name, $"{rig.Loads.Count}", listName, cheapest.Cheapest is { } option ? $"{option.Price:0.00}" : "none",
            cheapest.Status is BuyStatus.Optimal or BuyStatus.Infeasible ? "yes" : $"no, not below {cheapest.PriceBound:0.00}", $"{one:N0}",
            $"{front.Front.Count}", front.IsFrontComplete ? "yes" : "no", $"{all:N0}", $"{cheapest.Checks}, {front.Checks}");
        Console.Error.WriteLine($"{name}, {rig.Loads.Count} loads, {listName}: {cheapest.Status} {one:N0} ms; {front.Front.Count} options, {front.IsFrontComplete}, {all:N0} ms");
    }

    private static (BuyResult Result, double Milliseconds) Best(Rig rig, IReadOnlyList<Offer> list, bool withFront, int rounds) =>
        Enumerable.Range(0, rounds).Select(_ => Buy(rig, list, withFront)).MinBy(static run => run.Milliseconds);

    private static (BuyResult Result, double Milliseconds) Buy(Rig rig, IReadOnlyList<Offer> list, bool withFront)
    {
        var clock = Stopwatch.StartNew();
        var result = SupplyBuyer.Buy(rig, list, Options with { WithFront = withFront });
        return (result, clock.Elapsed.TotalMilliseconds);
    }
}
