namespace Loadmark.Planning.Cutting;

/// <summary>
/// The one place where lengths become whole numbers: micrometres, pieces and cuts rounded up and reels rounded down, so that what fits in
/// whole numbers fits in full.
/// </summary>
internal static class CuttingUnits
{
    /// <summary>The longest reel or piece: a thousand kilometres. Sums of thousands of them still fit in 62 bits.</summary>
    public const decimal MostMetres = 1_000_000m;

    /// <summary>
    /// A centimetre, in micrometres: offcuts that are not as much apart are equal, because to search for a millimetre is worth nobody's
    /// time (common practice, no source).
    /// </summary>
    public const long OffcutStep = 10_000;

    private const decimal PerMetre = 1_000_000m;

    /// <summary>
    /// A quotient's last digits are rounded (1 m ÷ 3 × 3 must be 1 m): what differs beyond this many decimals is equal.
    /// </summary>
    private const int Decimals = 12;

    /// <summary>What is taken from a reel, in micrometres, rounded up.</summary>
    public static long Taken(Metres length) => (long)decimal.Ceiling(Math.Round(length.Value, Decimals) * PerMetre);

    /// <summary>What a reel has, in micrometres, rounded down.</summary>
    public static long Had(Metres length) => (long)decimal.Floor(Math.Round(length.Value, Decimals) * PerMetre);

    /// <summary>A length that came about in whole micrometres.</summary>
    public static Metres Length(long micrometres) => new(micrometres / PerMetre);

    /// <summary>The greatest whole number that divides all of them; 1 of none.</summary>
    public static long CommonDivisor(IEnumerable<long> numbers)
    {
        var divisor = 0L;
        foreach (var number in numbers)
        {
            var (larger, smaller) = (divisor, number);
            while (smaller != 0)
                (larger, smaller) = (smaller, larger % smaller);
            divisor = larger;
        }

        return Math.Max(1, divisor);
    }
}
