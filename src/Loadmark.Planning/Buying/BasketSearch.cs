namespace Loadmark.Planning.Buying;

/// <summary>
/// Goes through baskets in the order of price: the model proposes, the planner decides, and what it refuses is cut off. A basket
/// found is better than every later one in price, mass or spare capacity, so each stays.
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
            var (basket, isProven) = model.Next();
            _isAllProven &= isProven;
            if (basket is null)
            {
                if (_front.Count == 0)
                    IsFirstProven = _isAllProven;
                IsComplete = _isAllProven && (withFront || _front.Count == 0);
                return;
            }

            var priced = scales.Of(basket);
            if (_isAllProven && _front.Count == 0)
                PriceBound = priced.Price;
            switch (judge.Feeds(basket))
            {
                case true:
                    Take(priced);
                    break;
                case false:
                    model.LeaveOutUpTo(basket);
                    break;
                default:
                    _isAllProven = false;
                    model.LeaveOutUpTo(basket);
                    break;
            }

            if (_front.Count > 0 && !withFront)
                return;
        }
    }

    private void Take(PricedBasket found)
    {
        var least = scales.Of(Shrink(found.Basket));
        if (least.Basket.Kinds.Any())
            model.LeaveOutFrom(least.Basket);
        else
            model.LeaveOutOver(-1);
        if (_front.Exists(least.IsNoBetterThan))
            return;

        if (_front.Count == 0)
        {
            IsFirstProven = _isAllProven;
            model.LeaveOutOver((long)decimal.Floor(least.Price * priceRatio));
        }

        model.LeaveOutNoBetterThan(least);
        _front.RemoveAll(other => other.IsNoBetterThan(least));
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
