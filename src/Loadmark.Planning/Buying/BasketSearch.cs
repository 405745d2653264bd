namespace Loadmark.Planning.Buying;

/// <summary>
/// Goes through baskets in the order of price: the tree proposes, the planner decides, and what it refuses is grown further. The
/// first that feeds everything is the cheapest; each later one is lighter or has more to spare than all before it.
/// </summary>
internal sealed class BasketSearch(BasketTree tree, BasketGuess guess, BasketJudge judge, Scales scales, BuyOptions options)
{
    /// <summary>After so many refusals it is asked whether anything on the list would do at all.</summary>
    private const int RefusalsBeforeAskingForAll = 100;

    private readonly List<PricedBasket> _front = [];
    private bool _isAllProven = true;
    private int _refusals;

    /// <summary>The baskets worth choosing between, the cheapest first.</summary>
    public IReadOnlyList<PricedBasket> Front => _front;

    /// <summary>Whether nothing cheaper than the first one feeds everything, or nothing at all where there is none.</summary>
    public bool IsFirstProven { get; private set; }

    /// <summary>Whether there are no others.</summary>
    public bool IsComplete { get; private set; }

    /// <summary>What everything costs at the least as far as it is proven, in units of the scale.</summary>
    public long PriceBound { get; private set; }

    /// <summary>
    /// Searches until all are found, or the time is over; then at least a basket that feeds everything is there, if one was guessed.
    /// </summary>
    /// <param name="most">What a basket that is known costs, beyond which it is not searched; null where none is known.</param>
    public void Run(long? most = null)
    {
        if (most is { } price)
            tree.LeaveOutOver(price);
        var guessed = most is null && guess.Find() is { } basket ? scales.Of(basket) : null;
        if (guessed is not null)
            tree.LeaveOutOver(Dearest(guessed));
        Search();
        if (_front.Count == 0 && guessed is not null)
            _front.Add(scales.Of(Shrink(guessed.Basket)));
    }

    private void Search()
    {
        while (tree.Next() is { } next)
        {
            if (_isAllProven && _front.Count == 0)
                PriceBound = tree.LeastPrice;
            options.Progress?.Report(
                new BuyProgress((decimal)tree.LeastPrice / scales.PriceUnits, _front.Count, null, judge.IsForQuiet));
            var feeds = judge.Feeds(next.Basket.Basket);
            if (feeds == true)
            {
                Take(next.Basket);
                if (_front.Count > 0 && !options.WithFront)
                    return;
                continue;
            }

            _isAllProven &= feeds is not null;
            if (_front.Count == 0 && ++_refusals == RefusalsBeforeAskingForAll && judge.FeedsWithAll() == false)
            {
                IsFirstProven = IsComplete = true;
                return;
            }

            tree.Grow(next.Node);
        }

        if (_isAllProven && _front.Count == 0)
            PriceBound = tree.LeastPrice;
        _isAllProven &= !tree.IsCutShort;
        if (_front.Count == 0)
            IsFirstProven = _isAllProven;
        IsComplete = _isAllProven;
    }

    /// <summary>What an option may cost when this one is the cheapest.</summary>
    private long Dearest(PricedBasket cheapest) => (long)decimal.Floor(cheapest.Price * (options.WithFront ? options.PriceRatio : 1));

    private void Take(PricedBasket found)
    {
        // Where something could be left out, what is left costs and weighs no more, so it has had its turn or comes to it.
        var least = scales.Of(Shrink(found.Basket));
        tree.LeaveOutMoreThan(least.Basket);
        if (!least.Basket.Equals(found.Basket) || !_front.TrueForAll(before => scales.IsWorthMore(least, before)))
            return;
        if (_front.Count == 0)
        {
            IsFirstProven = _isAllProven;
            tree.LeaveOutOver(Dearest(least));
        }

        tree.LeaveOutAlike(least);
        _front.Add(least);
    }

    /// <summary>The basket without what need not be in it.</summary>
    private Basket Shrink(Basket basket)
    {
        foreach (var offer in basket.Kinds.OrderByDescending(offer => scales.Prices[offer]).ToList())
        {
            while (basket.Counts[offer] > 0)
            {
                var less = basket.Without(offer);
                var feeds = judge.Feeds(less);
                if (feeds is null)
                    _isAllProven = false;
                if (feeds != true)
                    break;
                basket = less;
            }
        }

        return basket;
    }
}
