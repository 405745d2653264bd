namespace Loadmark.Planning.Buying;

/// <summary>
/// All baskets in the order of price, without their wiring: of that it knows only what every basket that feeds everything must
/// have. A basket grows by one supply at a time, and waits until nothing cheaper is left that it, or what may come of it, could
/// be; baskets of one price come the lighter first, of those the one with more to spare, and then the one of fewer supplies.
/// </summary>
internal sealed class BasketTree
{
    /// <summary>More than this many baskets in the making are not kept; the search then ends without a proof.</summary>
    private const int MostWaiting = 4_000_000;

    private readonly OfferScreen _offers;
    private readonly Scales _scales;
    private readonly SearchClock _clock;
    private readonly PriceBound _bound;
    private readonly double[] _pricePerMilliwatt;
    private readonly PriorityQueue<BasketNode, long> _waiting = new();
    private readonly PriorityQueue<(BasketNode Node, PricedBasket Basket), (long Mass, long Spare, int Supplies, string Counts)> _ready =
        new();
    private readonly List<Basket> _closed = [];
    private readonly List<PricedBasket> _listed = [];
    private long _mostPrice = long.MaxValue;

    /// <summary>Begins with nothing bought.</summary>
    /// <param name="offers">The offers.</param>
    /// <param name="scales">Their prices and masses.</param>
    /// <param name="cuts">What every basket that feeds everything must have.</param>
    /// <param name="clock">How long to search.</param>
    public BasketTree(OfferScreen offers, Scales scales, List<CoverCut> cuts, SearchClock clock)
    {
        (_offers, _scales, _clock) = (offers, scales, clock);
        _bound = new PriceBound(cuts, scales.Prices);
        _pricePerMilliwatt = new double[_bound.Order.Length + 1];
        _pricePerMilliwatt[^1] = double.PositiveInfinity;
        for (var place = _bound.Order.Length - 1; place >= 0; place--)
        {
            var offer = _bound.Order[place];
            var ratio = scales.Milliwatts[offer] == 0 ? double.PositiveInfinity : (double)scales.Prices[offer] / scales.Milliwatts[offer];
            _pricePerMilliwatt[place] = Math.Min(_pricePerMilliwatt[place + 1], ratio);
        }

        if (_bound.Least(_bound.Needs, null, 0) is { } least)
        {
            LeastPrice = least;
            _waiting.Enqueue(new BasketNode(null, 0, 0, 0, scales.OwnedMilliwatts), least);
        }
    }

    /// <summary>Whether the time, or the room for baskets, came to an end before the baskets did.</summary>
    public bool IsCutShort { get; private set; }

    /// <summary>No basket still to come costs less.</summary>
    public long LeastPrice { get; private set; }

    /// <summary>The next basket; null when none is left, or the search was cut short.</summary>
    /// <remarks>It is grown further, unless <see cref="LeaveOutMoreThan"/> says that nothing more is needed in it.</remarks>
    public (BasketNode Node, PricedBasket Basket)? Next()
    {
        while (true)
        {
            while (_waiting.TryPeek(out var node, out var price) && (_ready.Count == 0 || price == LeastPrice))
            {
                if (IsOver())
                    return null;
                _waiting.Dequeue();
                LeastPrice = Math.Max(LeastPrice, price);
                Look(node, price);
            }

            if (!_ready.TryDequeue(out var next, out _))
                return null;
            if (next.Basket.Price <= _mostPrice && !_closed.Exists(closed => IsMore(next.Basket.Basket, closed)))
            {
                if (IsWorthALine(next.Basket))
                    return next;
                Grow(next.Node);
            }
        }
    }

    /// <summary>Leaves out all that hold a basket and more.</summary>
    public void LeaveOutMoreThan(Basket basket) => _closed.Add(basket);

    /// <summary>Leaves out all that are not lighter than a basket, nor have more to spare, by at least a step.</summary>
    public void LeaveOutAlike(PricedBasket one) => _listed.Add(one);

    /// <summary>Leaves out all that cost more.</summary>
    public void LeaveOutOver(long price) => _mostPrice = Math.Min(_mostPrice, price);

    /// <summary>Goes on to the baskets with one supply more.</summary>
    public void Grow(BasketNode node)
    {
        var (counts, lacking) = Unfold(node);
        for (var place = node.Place; place < _bound.Order.Length; place++)
        {
            var offer = _bound.Order[place];
            if (counts[offer] >= _offers.Useful[offer].Most)
                continue;
            var mass = _scales.Masses[offer] is { } own && node.Mass < _scales.UnknownMass ? node.Mass + own : _scales.UnknownMass;
            var more = new BasketNode(node, place, node.Price + _scales.Prices[offer], mass, node.Milliwatts + _scales.Milliwatts[offer]);
            if (LeastOf(more, lacking, offer) is { } price && price <= _mostPrice)
                _waiting.Enqueue(more, Math.Max(price, LeastPrice));
        }
    }

    private void Look(BasketNode node, long price)
    {
        var (counts, lacking) = Unfold(node);
        if (_listed.Count > 0)
        {
            // There may be more to ask of it than when it was put here.
            if (LeastOf(node, lacking, null) is not { } now || now > _mostPrice)
                return;
            if (now > price)
            {
                _waiting.Enqueue(node, now);
                return;
            }
        }

        if (Array.Exists(lacking, static rest => rest > 0))
        {
            Grow(node);
            return;
        }

        var basket = new PricedBasket(new Basket(counts), node.Price, node.Mass, Scales.WholeWatts(node.Milliwatts));
        if (node.Price > LeastPrice)
            _waiting.Enqueue(node, node.Price);
        else if (!_closed.Exists(closed => IsMore(basket.Basket, closed)))
            _ready.Enqueue(
                (node, basket),
                (basket.Mass, -basket.Spare, counts.Sum(), string.Join(',', counts.Select(static count => $"{9999 - count}"))));
    }

    /// <summary>What a node, or what comes of it, costs at the least; null where nothing does that is worth having.</summary>
    private long? LeastOf(BasketNode node, long[] lacking, int? without)
    {
        if (_bound.Least(lacking, without, node.Place) is not { } rest)
            return null;
        var spare = SpareWanted(node) - node.Milliwatts;
        if (spare <= 0)
            return node.Price + rest;
        if (double.IsPositiveInfinity(_pricePerMilliwatt[node.Place]))
            return null;
        return node.Price + Math.Max(rest, (long)Math.Ceiling((spare * _pricePerMilliwatt[node.Place] * (1 - 1e-9)) - 1e-6));
    }

    /// <summary>What baskets of that mass or more must have to spare to be worth a line, in milliwatts.</summary>
    private long SpareWanted(BasketNode node)
    {
        var wanted = long.MinValue / 2;
        foreach (var listed in _listed)
        {
            if (node.Mass > listed.Mass - _scales.MassStep)
                wanted = Math.Max(wanted, Scales.MilliwattsOf(listed.Spare + _scales.SpareStep));
        }

        return wanted;
    }

    private bool IsWorthALine(PricedBasket basket) => _listed.TrueForAll(before => _scales.IsWorthMore(basket, before));

    private static bool IsMore(Basket basket, Basket than) => basket.Holds(than) && !basket.Equals(than);

    private (int[] Counts, long[] Lacking) Unfold(BasketNode node)
    {
        var counts = new int[_bound.Order.Length];
        var lacking = _bound.Needs;
        for (var at = node; at.Parent is not null; at = at.Parent)
        {
            counts[_bound.Order[at.Place]]++;
            _bound.Take(lacking, _bound.Order[at.Place]);
        }

        return (counts, lacking);
    }

    private bool IsOver()
    {
        IsCutShort |= _waiting.Count > MostWaiting || _clock.IsOver;
        return IsCutShort;
    }
}
