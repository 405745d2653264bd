namespace Loadmark.Planning.Buying;

/// <summary>
/// Puts together a basket that feeds everything as quickly as it can, so that there is an answer, if not the cheapest, however soon
/// the search has to end: what gives most of what is lacking for its price goes in first, and where that does not do, more is
/// asked for than must be.
/// </summary>
internal sealed class BasketGuess(OfferScreen offers, Scales scales, List<CoverCut> cuts, BasketJudge judge)
{
    private static readonly decimal[] Excesses = [1, 1.15m, 1.35m, 1.7m, 2.5m];

    /// <summary>A basket that feeds everything; null where none was found.</summary>
    public Basket? Find()
    {
        Basket? before = null;
        foreach (var excess in Excesses)
        {
            if (Fill(excess) is not { } basket)
                return null;
            if (!basket.Equals(before) && judge.Feeds(basket) == true)
                return basket;
            before = basket;
        }

        return null;
    }

    private Basket? Fill(decimal excess)
    {
        var counts = new int[offers.Useful.Count];
        var lacking = cuts.Select(cut => (double)(cut.Need * excess)).ToArray();
        while (Array.Exists(lacking, static rest => rest > 0))
        {
            var (best, most) = (-1, 0.0);
            for (var offer = 0; offer < counts.Length; offer++)
            {
                var worth = counts[offer] < offers.Useful[offer].Most ? Worth(offer, lacking) / Math.Max(1, scales.Prices[offer]) : 0;
                if (worth > most)
                    (best, most) = (offer, worth);
            }

            if (best < 0)
                return null;
            counts[best]++;
            for (var cut = 0; cut < lacking.Length; cut++)
                lacking[cut] -= cuts[cut].Worths[best];
        }

        return new Basket(counts);
    }

    /// <summary>What share of what is lacking an offer gives, added up.</summary>
    private double Worth(int offer, double[] lacking) =>
        lacking.Select((rest, cut) => rest > 0 ? Math.Min(rest, cuts[cut].Worths[offer]) / cuts[cut].Need : 0).Sum();
}
