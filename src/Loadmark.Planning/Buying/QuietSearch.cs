namespace Loadmark.Planning.Buying;

/// <summary>
/// Finds the cheapest basket with which everything can be fed with no finding of noise: the search for the cheapest, with a planner that
/// must keep loads that mind company on returns of their own. An instance serves once.
/// </summary>
/// <param name="problem">What there is to feed.</param>
/// <param name="offers">The offers.</param>
/// <param name="scales">The prices and masses of the offers.</param>
/// <param name="options">How to choose.</param>
/// <param name="clock">How long to search.</param>
/// <param name="cancellation">Stops the search.</param>
internal sealed class QuietSearch(
    BuyProblem problem, OfferScreen offers, Scales scales, BuyOptions options, SearchClock clock, CancellationToken cancellation)
{
    /// <summary>The cheapest basket that was found; null where none was.</summary>
    public PricedBasket? Cheapest { get; private set; }

    /// <summary>Whether nothing cheaper is quiet: nothing at all, where none was found.</summary>
    public bool IsProven { get; private set; }

    /// <summary>What everything that is quiet costs at the least, as far as it is proven, in units of the scale.</summary>
    public long PriceBound { get; private set; }

    /// <summary>How often the planner was asked.</summary>
    public int Checks { get; private set; }

    /// <summary>Searches.</summary>
    /// <param name="most">The price of a basket that is known to be quiet, beyond which it is not searched; null where none is.</param>
    public void Run(long? most)
    {
        var cuts = new CoverCuts(problem, offers, isQuiet: true).All();
        var judge = new BasketJudge(problem, offers, cuts, options.CheckTimeLimit, clock, isQuiet: true, cancellation);
        if (most is null && judge.FeedsWithAll() == false)
        {
            (IsProven, Checks) = (true, judge.Checks);
            return;
        }

        var tree = new BasketTree(offers, scales, cuts, clock);
        var search = new BasketSearch(
            tree, new BasketGuess(offers, scales, cuts, judge), judge, scales, options with { WithFront = false });
        search.Run(most);
        Cheapest = search.Front.Count > 0 ? search.Front[0] : null;
        (IsProven, PriceBound, Checks) = (search.IsFirstProven, search.PriceBound, judge.Checks);
    }
}
