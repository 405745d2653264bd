using Loadmark.Core.Nameplates;
using Loadmark.Core.Offers;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>Chooses supplies, and leads where it has any, from a price list for what a rig's own do not feed.</summary>
public static class SupplyBuyer
{
    private const string ReservedName = "room";
    private const int LeastPriority = 3;
    private const double QuietShare = 0.2;

    /// <summary>
    /// Finds the cheapest supplies and leads with which every load is fed, and the options worth choosing between. The same rig, offers and
    /// options give the same answer as long as no time limit ends the search.
    /// </summary>
    /// <param name="rig">The rig; of its own wiring only pinned feeds count; leads that it lists cost nothing.</param>
    /// <param name="offers">The price list; each name once.</param>
    /// <param name="options">How to choose.</param>
    /// <param name="cancellation">Stops the search; what was found so far is returned.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="ArgumentException">Two offers have one name.</exception>
    /// <exception cref="OperationCanceledException">It was stopped before there was anything to search among.</exception>
    public static BuyResult Buy(Rig rig, IReadOnlyList<Offer> offers, BuyOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(offers);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.PriceRatio, 1, nameof(options));
        if (offers.DistinctBy(static offer => offer.Id, StringComparer.Ordinal).Count() < offers.Count)
            throw new ArgumentException("Two offers have one name.", nameof(offers));

        var limit = options.WithQuiet ? options.TimeLimit * (1 - QuietShare) : options.TimeLimit;
        var clock = new SearchClock(limit, TimeProvider.System, cancellation);
        var reserved = ReservedFor(rig, options.ReservedLoads);
        var whole = rig with { Loads = [.. rig.Loads, .. reserved] };
        var problem = new BuyProblem(whole, options.Only, offers, options.AcrossBoards);
        var screen = new OfferScreen(problem, offers, cancellation);
        var scales = new Scales(screen.Useful, problem.OwnedSpare, options);
        var cuts = new CoverCuts(problem, screen).All();
        var judge = new BasketJudge(problem, screen, cuts, options.CheckTimeLimit, clock, isQuiet: false, cancellation);
        var unfeedable = new UnfeedableLoads(problem, screen, options.CheckTimeLimit, clock, cancellation);
        var search = new BasketSearch(
            new BasketTree(screen, scales, cuts, clock), new BasketGuess(screen, scales, cuts, judge), judge, scales, options);
        var unsuited = unfeedable.Loads();
        if (unsuited.Count == 0)
            search.Run();

        var isPossible = search.Front.Count > 0;
        var isProven = unsuited.Count > 0 || search.IsFirstProven;
        var status = StatusOf(isPossible, isProven);
        var left = options.TimeLimit - (limit - clock.Left);
        var lastLook = new LastLook(TimeProvider.System);
        var described = Describe(search.Front, problem, judge, scales, options, lastLook, cancellation);
        PricedBasket[] baskets = [.. search.Front.Where((_, index) => described[index] is not null)];
        BuyOption[] front = [.. described.OfType<BuyOption>()];
        var place = Array.FindIndex(front, static option => option.IsQuiet);
        var (quiet, quietStatus) = (place < 0 ? null : front[place], isPossible ? BuyStatus.Unknown : status);
        var quietSearch = new QuietSearch(
            problem, screen, scales, options, new SearchClock(left, TimeProvider.System, cancellation), cancellation);
        if (place == 0)
        {
            quietStatus = status;
        }
        else if (isPossible && problem.HumsAsPinned)
        {
            quietStatus = BuyStatus.Infeasible;
        }
        else if (isPossible && options.WithQuiet)
        {
            quietSearch.Run(place < 0 ? null : baskets[place].Price);
            var isNew = quietSearch.Cheapest is { } found && (quiet is null || found.Price < baskets[place].Price);
            var cheaper = isNew
                ? Describe(quietSearch.Cheapest!, problem, judge, scales, options, isQuiet: true, lastLook, cancellation)
                : quiet;

            // It is known that it can be wired so; a wiring of it that is not quiet, for want of time, is none to show.
            quiet = cheaper?.IsQuiet is true ? cheaper : quiet;
            quietStatus = StatusOf(quiet is not null, quietSearch.IsProven && quiet == cheaper);
        }
        else if (quiet is not null)
        {
            quietStatus = BuyStatus.Feasible;
        }

        return new BuyResult
        {
            Status = status,
            Front = [.. front],
            CheapestQuiet = quiet,
            QuietStatus = quietStatus,
            QuietPriceBound = (decimal)(place == 0 ? search.PriceBound : quietSearch.PriceBound) / scales.PriceUnits,
            IsFrontComplete = unsuited.Count > 0 || (search.IsComplete && front.Length == described.Length),
            PriceBound = (decimal)search.PriceBound / scales.PriceUnits,
            Unsuited = [.. unsuited],
            NeedLeads = isPossible ? [] : [.. unfeedable.NeedLeads().Except(unsuited, StringComparer.Ordinal)],
            LeftOut = [.. screen.LeftOut],
            Checks = judge.Checks + unfeedable.Checks + quietSearch.Checks,
            Rig = whole,
            ReservedLoads = [.. reserved.Select(static load => load.Id)],
        };
    }

    private static BuyStatus StatusOf(bool isPossible, bool isProven) => (isPossible, isProven) switch
    {
        (true, true) => BuyStatus.Optimal,
        (true, false) => BuyStatus.Feasible,
        (false, true) => BuyStatus.Infeasible,
        _ => BuyStatus.Unknown,
    };

    private static List<Load> ReservedFor(Rig rig, ValueList<Nameplate> plates)
    {
        var names = rig.Loads.Items.Select(static load => load.Id).ToHashSet(StringComparer.Ordinal);
        var loads = new List<Load>();
        foreach (var plate in plates)
        {
            var name = $"{ReservedName} {loads.Count + 1}";
            while (!names.Add(name))
                name += "+";
            loads.Add(new Load { Id = name, Label = plate, Priority = LeastPriority });
        }

        return loads;
    }

    /// <summary>
    /// Plans the wiring of each option, several at a time; what one plan comes to does not depend on the others. Null for an option that
    /// there was no time for when the search was stopped; never the first.
    /// </summary>
    private static BuyOption?[] Describe(
        IReadOnlyList<PricedBasket> baskets, BuyProblem problem, BasketJudge judge, Scales scales, BuyOptions options,
        LastLook lastLook, CancellationToken cancellation)
    {
        var described = new BuyOption?[baskets.Count];
        var done = 0;
        Parallel.For(0, baskets.Count, index =>
        {
            if (index > 0 && cancellation.IsCancellationRequested && lastLook.IsOver)
                return;
            described[index] = Describe(baskets[index], problem, judge, scales, options, isQuiet: false, lastLook, cancellation);
            options.Progress?.Report(
                new BuyProgress((decimal)baskets[^1].Price / scales.PriceUnits, baskets.Count, Interlocked.Increment(ref done)));
        });
        return described;
    }

    private static BuyOption Describe(
        PricedBasket basket, BuyProblem problem, BasketJudge judge, Scales scales, BuyOptions options, bool isQuiet,
        LastLook lastLook, CancellationToken cancellation)
    {
        var purchases = judge.PurchasesOf(basket.Basket);
        var (rig, planOptions) = problem.With(purchases, options.PlanTimeLimit, isQuiet);
        var plan = RigPlanner.Plan(rig, planOptions, cancellation);

        // That everything can be fed is known; whoever stops the search wants to see how all the same.
        if (plan.Unfed.Count > 0 && cancellation.IsCancellationRequested)
            plan = RigPlanner.Plan(rig, planOptions with { TimeLimit = lastLook.Left }, CancellationToken.None);
        return new BuyOption
        {
            Purchases = [.. purchases],
            Price = scales.PriceOf(basket.Basket),
            MassGrams = basket.Mass == scales.UnknownMass ? null : (decimal)basket.Mass / scales.MassUnits,
            Spare = new Watts(Math.Max(0, basket.Spare)),
            Plan = plan,
            IsWiredForQuiet = isQuiet,
        };
    }
}
