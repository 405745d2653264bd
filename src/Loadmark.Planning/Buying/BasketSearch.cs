namespace Loadmark.Planning.Buying;

/// <summary>
/// Goes through baskets in the order of price: the model proposes, the planner decides, and what it refuses is cut off. The first
/// that feeds everything is the cheapest; each later one is lighter or has more to spare than all before it, or it is passed over.
/// </summary>
internal sealed class BasketSearch(MasterModel model, BasketJudge judge, Scales scales, bool withFront, decimal priceRatio)
{
    private readonly List<PricedBasket> _front = [];
    private bool _isAllProven = true;

    /// <summary>The baskets worth choosing between, the cheapest first.</summary>
    public IReadOnlyList<PricedBasket> Front => _front;

    /// <summary>Whether nothing cheaper than the first one feeds everything, or nothing at all where there is none.</summary>
    public bool IsFirstProven { get; private set; }

    /// <summary>Whether there are no others.</summary>
    public bool IsComplete { get; private set; }

    /// <summary>What everything costs at the least as far as it is proven, in units of the scale.</summary>
    public long PriceBound { get; private set; }

    /// <summary>Searches until all are found, or the time is over.</summary>
    public void Run()
    {
        while (true)
        {
            if (Best(model.Cheapest, _front.Count == 0) is not { } cheapest)
            {
                if (_front.Count == 0)
                    IsFirstProven = _isAllProven;
                IsComplete = _isAllProven && (withFront || _front.Count == 0);
                return;
            }

            // Of the baskets at this price the lightest, and of those the one with most to spare.
            var lightest = Best(() => model.Lightest(cheapest.Price), false) ?? cheapest;
            Take(Best(() => model.MostToSpare(lightest.Price, lightest.Mass), false) ?? lightest);
            if (_front.Count > 0 && !withFront)
                return;
        }
    }

    /// <summary>The first basket that the model proposes and the planner does not refuse; null when there is none left.</summary>
    private PricedBasket? Best(Func<(Basket? Basket, bool IsProven)> propose, bool setsBound)
    {
        while (true)
        {
            var (basket, isProven) = propose();
            _isAllProven &= isProven;
            if (basket is null)
                return null;
            var priced = scales.Of(basket);
            if (_isAllProven && setsBound)
                PriceBound = priced.Price;
            var feeds = judge.Feeds(basket);
            if (feeds == true)
                return priced;
            _isAllProven &= feeds is not null;
            model.LeaveOutUpTo(basket);
        }
    }

    private void Take(PricedBasket found)
    {
        var least = scales.Of(Shrink(found.Basket));
        if (least.Basket.Kinds.Any())
            model.LeaveOutFrom(least.Basket);
        else
            model.LeaveOutOver(-1);
        if (!_front.TrueForAll(before => scales.IsWorthMore(least, before)))
            return;

        if (_front.Count == 0)
        {
            IsFirstProven = _isAllProven;
            model.LeaveOutOver((long)decimal.Floor(least.Price * priceRatio));
        }

        model.LeaveOutAlike(least);
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
