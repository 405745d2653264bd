namespace Loadmark.Planning.Problem;

/// <summary>
/// The one place where amps and watts become whole numbers: millionths, draws rounded up and limits rounded down, so
/// that a plan that holds in whole numbers holds in full.
/// </summary>
internal static class MicroUnits
{
    /// <summary>
    /// A quotient's last digits are rounded (6 W ÷ 9 V × 9 V must be 6 W): what differs beyond this many decimals is equal,
    /// as it is for the rules.
    /// </summary>
    private const int Decimals = 12;

    /// <summary>A million amps or watts: far beyond any rig, and sums of thousands of them still fit in 62 bits.</summary>
    private const decimal Most = 1_000_000m;

    /// <summary>A draw in millionths, rounded up; a million units at the most.</summary>
    /// <param name="amount">Amps or watts, not negative.</param>
    public static long Draw(decimal amount) => (long)decimal.Ceiling(Math.Round(Math.Min(amount, Most), Decimals) * 1_000_000m);

    /// <summary>An amount that nothing is held against, in millionths, rounded to the nearest.</summary>
    /// <param name="amount">Amps or watts, not negative.</param>
    public static long Nearest(decimal amount) => (long)Math.Round(Math.Min(amount, Most) * 1_000_000m);

    /// <summary>A limit in millionths, rounded down; always less than a draw that was too large to hold.</summary>
    /// <param name="amount">Amps or watts, not negative.</param>
    public static long Limit(decimal amount) => (long)decimal.Floor(Math.Round(Math.Min(amount, Most - 1), Decimals) * 1_000_000m);
}
