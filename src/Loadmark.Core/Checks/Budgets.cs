using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>All limits of a rig that carry something, with the sums that lie on them.</summary>
/// <remarks>
/// A load takes what it needs and no more, so only sums are compared with limits, never a limit with a load
/// (Kirchhoff's current law).
/// </remarks>
internal sealed class Budgets
{
    private const string AnotherOutlet = "another outlet";

    private Budgets(List<Budget> outlets, List<Budget> banks, List<Budget> supplies)
    {
        Outlets = outlets;
        Banks = banks;
        Supplies = supplies;
        All = new List<Budget>(outlets.Count + banks.Count + supplies.Count);
        All.AddRange(outlets);
        All.AddRange(banks);
        All.AddRange(supplies);
    }

    /// <summary>One for each outlet that feeds something; outlets in parallel have one together.</summary>
    public List<Budget> Outlets { get; }

    /// <summary>One for each named bank with a limit.</summary>
    public List<Budget> Banks { get; }

    /// <summary>One or two for each supply with a total, by amps and by watts.</summary>
    public List<Budget> Supplies { get; }

    /// <summary>The budgets of all outlets, banks and supplies that carry something.</summary>
    public List<Budget> All { get; }

    /// <summary>Adds up a rig.</summary>
    public static Budgets Of(WiredRig rig)
    {
        var outlets = new List<Budget>(rig.Feeds.Count);
        foreach (var outlet in rig.Outlets)
        {
            if (outlet.Feeds is [{ Joined: Joint.Parallel } feed] && feed.Outlets.All(static other => other.Feeds.Count == 1))
            {
                if (feed.Outlets[0] == outlet)
                    outlets.Add(OfParallel(feed));
            }
            else if (outlet.Feeds.Count > 0)
            {
                outlets.Add(OfOutlet(outlet));
            }
        }

        var banks = new List<Budget>();
        var supplies = new List<Budget>();
        var first = 0;
        foreach (var supply in rig.Supplies)
        {
            var count = supply.Supply.Outlets.Count;
            foreach (var bank in supply.Supply.Banks)
                AddTotals(banks, rig, first, count, bank.Name, bank.Total);
            if (supply.Total is { } total)
                AddTotals(supplies, rig, first, count, bank: null, total);
            first += count;
        }

        return new Budgets(outlets, banks, supplies);
    }

    private static Budget OfOutlet(WiredOutlet outlet)
    {
        var surge = outlet.Rating.Outlet.Surge;
        var budget = new Budget
        {
            Holder = outlet.Name,
            Elsewhere = AnotherOutlet,
            Subjects = [outlet.Name],
            InWatts = false,
            Limit = outlet.Limit?.Value.Value,
            Surge = surge?.Current.Value,
            SurgeDuration = surge?.Duration,
        };
        AddLoads(budget, outlet, inWatts: false);
        return budget;
    }

    private static Budget OfParallel(WiredFeed feed)
    {
        decimal? limit = 0;
        decimal? surge = 0;
        Seconds? duration = null;
        var limits = ImmutableArray.CreateBuilder<decimal>(feed.Outlets.Length);
        foreach (var outlet in feed.Outlets)
        {
            limit += outlet.Limit?.Value.Value;
            if (outlet.Limit is { } own)
                limits.Add(own.Value.Value);
            surge += outlet.Rating.Outlet.Surge?.Current.Value;
            duration = outlet.Rating.Outlet.Surge?.Duration is { } lasts && (duration is not { } least || lasts < least) ? lasts : duration;
        }

        var budget = new Budget
        {
            Holder = $"{feed.OutletNames} in parallel",
            Elsewhere = AnotherOutlet,
            Subjects = [.. feed.Outlets.Select(outlet => outlet.Name)],
            InWatts = false,
            Limit = limit,
            ParallelLimits = limit is null ? [] : limits.DrainToImmutable(),
            Surge = surge,
            SurgeDuration = duration,
        };
        foreach (var load in feed.Loads)
            budget.Add(load, 1, mayRepeat: false);
        return budget;
    }

    /// <summary>A supply's outlets stand together in the rig: from <paramref name="first"/>, <paramref name="count"/> of them.</summary>
    private static void AddTotals(List<Budget> budgets, WiredRig rig, int first, int count, string? bank, SupplyTotal total)
    {
        if (total.Amps is { } amps)
            AddTotal(amps.Value, inWatts: false);
        if (total.Watts is { } watts)
            AddTotal(watts.Value, inWatts: true);

        void AddTotal(decimal limit, bool inWatts)
        {
            Budget? budget = null;
            for (var place = first; place < first + count; place++)
            {
                var outlet = rig.Outlets[place];
                if (outlet.Feeds.Count > 0 && (bank is null || outlet.Rating.Outlet.Bank == bank))
                    AddLoads(budget ??= Total(outlet.Rating.Supply.Id, bank, limit, inWatts), outlet, inWatts);
            }

            if (budget is not null)
                budgets.Add(budget);
        }
    }

    private static Budget Total(string supply, string? bank, decimal limit, bool inWatts) => new()
    {
        Holder = bank is null ? $"{supply} in all" : $"bank {bank} of {supply}",
        Elsewhere = bank is null ? "another supply" : "an outlet outside the bank",
        Subjects = [supply],
        InWatts = inWatts,
        Limit = limit,
    };

    private static void AddLoads(Budget budget, WiredOutlet outlet, bool inWatts)
    {
        var factor = inWatts ? outlet.Volts?.Value : 1;
        for (var place = 0; place < outlet.Feeds.Count; place++)
        {
            var feed = outlet.Feeds[place];
            var share = factor * feed.ShareOf(outlet);
            foreach (var load in feed.Loads)
                budget.Add(load, share, mayRepeat: feed.Outlets.Length > 1);
        }
    }
}
