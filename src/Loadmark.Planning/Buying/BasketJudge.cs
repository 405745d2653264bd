namespace Loadmark.Planning.Buying;

/// <summary>
/// Tells whether a basket feeds everything. It asks the planner only what it cannot conclude: what can stand in for a basket that
/// feeds everything does too, what a basket that does not can stand in for does not either, and nothing does that lacks what it must have.
/// </summary>
/// <param name="problem">What there is to feed.</param>
/// <param name="offers">The offers.</param>
/// <param name="cuts">What every basket that feeds everything must have.</param>
/// <param name="checkLimit">How long the planner may look at one basket.</param>
/// <param name="clock">How long there is in all.</param>
/// <param name="isQuiet">Whether everything must be fed with no finding of noise.</param>
/// <param name="cancellation">Stops it.</param>
internal sealed class BasketJudge(
    BuyProblem problem, OfferScreen offers, List<CoverCut> cuts, TimeSpan checkLimit, SearchClock clock, bool isQuiet,
    CancellationToken cancellation)
{
    private readonly Dictionary<Basket, bool?> _known = [];
    private readonly List<Basket> _feeding = [];
    private readonly List<Basket> _failing = [];

    /// <summary>Whether everything must be fed with no finding of noise.</summary>
    public bool IsForQuiet => isQuiet;

    /// <summary>How often the planner was asked.</summary>
    public int Checks { get; private set; }

    /// <summary>Whether a basket feeds everything; null when that was not found out in the time.</summary>
    public bool? Feeds(Basket basket)
    {
        if (_known.TryGetValue(basket, out var known))
            return known;
        if (cuts.Exists(cut => !cut.HoldsFor(basket)))
            return false;
        if (cancellation.IsCancellationRequested)
            return null;
        if (_feeding.Exists(feeding => StandsIn(basket, feeding)))
            return true;
        if (_failing.Exists(failing => StandsIn(failing, basket)))
            return false;
        if (clock.IsOver)
            return null;

        Checks++;
        var (rig, options) = problem.With(PurchasesOf(basket), clock.AtMost(checkLimit));
        var answer = isQuiet
            ? RigPlanner.CanFeedAllQuietly(rig, options, cancellation)
            : RigPlanner.CanFeedAll(rig, options, cancellation);
        _known.Add(basket, answer);
        if (answer is { } told)
            (told ? _feeding : _failing).Add(basket);
        return answer;
    }

    /// <summary>Whether everything would be fed with as many of every offer as can be of use; null when that was not found out.</summary>
    public bool? FeedsWithAll() => Feeds(new Basket([.. offers.Useful.Select(static offer => offer.Most)]));

    /// <summary>The basket as a shopping list.</summary>
    public List<Purchase> PurchasesOf(Basket basket) =>
        [.. basket.Kinds.Select(offer => new Purchase(offers.Useful[offer].Offer, basket.Counts[offer]))];

    /// <summary>Whether each supply of one basket can be given a supply of its own in the other that can stand in for it.</summary>
    private bool StandsIn(Basket one, Basket other)
    {
        if (one.Counts.Sum() < other.Counts.Sum())
            return false;
        int[] kinds = [.. one.Kinds];
        var assignment = new Assignment(
            kinds.Select(kind => one.Counts[kind]), offers.Useful.Count, (place, taker) => offers.Order[kinds[place], taker]);
        return other.Kinds.All(kind => assignment.TryGive(kind, other.Counts[kind]));
    }
}
