namespace Loadmark.Planning.Buying;

/// <summary>Prices, masses and spare capacity as whole numbers, without loss: the list has two decimals at the most.</summary>
internal sealed class Scales
{
    private const int Hundredths = 100;
    private const int Milli = 1000;
    private readonly List<OfferTerms> _offers;

    /// <summary>Finds the units.</summary>
    /// <param name="offers">The offers.</param>
    /// <param name="ownedSpare">The spare capacity with nothing bought, in watts.</param>
    /// <param name="options">The steps of mass and spare capacity.</param>
    public Scales(List<OfferTerms> offers, decimal ownedSpare, BuyOptions options)
    {
        _offers = offers;
        PriceUnits = offers.TrueForAll(static offer => offer.Offer.Price == decimal.Truncate(offer.Offer.Price)) ? 1 : Hundredths;
        MassUnits = offers.TrueForAll(static offer => offer.Offer.MassGrams is not { } mass || mass == decimal.Truncate(mass))
            ? 1
            : Hundredths;
        MassStep = Math.Max(1, (long)decimal.Ceiling(options.MassStepGrams * MassUnits));
        SpareStep = Math.Max(1, (long)decimal.Ceiling(options.SpareStep.Value));
        OwnedMilliwatts = (long)decimal.Floor(ownedSpare * Milli);
        Prices = [.. offers.Select(offer => (long)(offer.Offer.Price * PriceUnits))];
        Masses = [.. offers.Select(offer => offer.Offer.MassGrams is { } mass ? (long)(mass * MassUnits) : (long?)null)];
        Milliwatts = [.. offers.Select(static offer => (long)decimal.Floor(offer.SpareWatts * Milli))];
        UnknownMass = offers.Select((offer, index) => offer.Most * (Masses[index] ?? 0)).Sum() + 1;
    }

    /// <summary>Units of price in one of the user's money.</summary>
    public int PriceUnits { get; }

    /// <summary>Units of mass in one gram.</summary>
    public int MassUnits { get; }

    /// <summary>By how much lighter a dearer option must be to be worth a line, in units of mass.</summary>
    public long MassStep { get; }

    /// <summary>By how much more a dearer option must have to spare to be worth a line, in watts.</summary>
    public long SpareStep { get; }

    /// <summary>The prices of the offers.</summary>
    public long[] Prices { get; }

    /// <summary>The masses of the offers; null where not known.</summary>
    public long?[] Masses { get; }

    /// <summary>What each offer adds to the spare capacity, in milliwatts.</summary>
    public long[] Milliwatts { get; }

    /// <summary>The spare capacity with nothing bought, in milliwatts; negative where it does not suffice.</summary>
    public long OwnedMilliwatts { get; }

    /// <summary>Stands for a mass that is not known: heavier than any that is.</summary>
    public long UnknownMass { get; }

    /// <summary>A basket with its price, mass and spare capacity.</summary>
    public PricedBasket Of(Basket basket)
    {
        var kinds = basket.Kinds.ToArray();
        var isKnown = kinds.All(offer => Masses[offer] is not null);
        return new PricedBasket(
            basket,
            kinds.Sum(offer => Prices[offer] * basket.Counts[offer]),
            isKnown ? kinds.Sum(offer => Masses[offer]!.Value * basket.Counts[offer]) : UnknownMass,
            WholeWatts(OwnedMilliwatts + kinds.Sum(offer => Milliwatts[offer] * basket.Counts[offer])));
    }

    /// <summary>Whether one is lighter than another, or has more to spare, by at least a step.</summary>
    public bool IsWorthMore(PricedBasket one, PricedBasket other) =>
        one.Mass <= other.Mass - MassStep || one.Spare >= other.Spare + SpareStep;

    /// <summary>A basket's price in the user's money.</summary>
    public decimal PriceOf(Basket basket) => basket.Kinds.Sum(offer => _offers[offer].Offer.Price * basket.Counts[offer]);

    /// <summary>The fewest milliwatts that are so many whole watts.</summary>
    public static long MilliwattsOf(long watts) => watts * Milli;

    /// <summary>Milliwatts as whole watts, rounded down.</summary>
    public static long WholeWatts(long milliwatts) => (long)Math.Floor(milliwatts / (decimal)Milli);
}
