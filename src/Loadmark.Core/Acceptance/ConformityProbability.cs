namespace Loadmark.Core.Acceptance;

/// <summary>
/// How probable it is that a value is within limits, where what is known of it is a normal distribution about a reading:
/// Φ((high − y)/u) − Φ((low − y)/u). Source: JCGM 106:2012, 7.4 and 7.5 (the numbers of the clauses are from memory).
/// </summary>
public static class ConformityProbability
{
    /// <summary>Up to here the series is as exact as a double holds it; beyond it the continued fraction ends sooner.</summary>
    private const double SeriesEnd = 3;

    private const int Terms = 200;

    /// <summary>The probability, 0 to 1.</summary>
    /// <param name="low">The lower limit; null for none.</param>
    /// <param name="high">The upper limit; null for none.</param>
    /// <param name="reading">The reading, y.</param>
    /// <param name="standardUncertainty">u, zero or more, in the unit. At zero it is 1 within the limits and 0 outside.</param>
    public static double Of<TUnit>(Quantity<TUnit>? low, Quantity<TUnit>? high, Quantity<TUnit> reading, double standardUncertainty)
        where TUnit : struct, IUnit
    {
        if (standardUncertainty == 0)
            return (low is null || reading >= low) && (high is null || reading <= high) ? 1 : 0;
        double? from = low is { } least ? (double)(least - reading).Value / standardUncertainty : null;
        double? to = high is { } most ? (double)(most - reading).Value / standardUncertainty : null;

        // Above the mean the difference is taken on the other side, where both are small and nothing is lost.
        return from > 0
            ? Below(-from.Value) - (to is { } end ? Below(-end) : 0)
            : (to is { } up ? Below(up) : 1) - (from is { } down ? Below(down) : 0);
    }

    /// <summary>
    /// Φ(z), the share of a standard normal distribution below z, to about 1e-14. Source: M. Abramowitz and I. A. Stegun, Handbook of
    /// Mathematical Functions, 26.2.11 (series) and 26.2.14 (continued fraction); the numbers are from memory.
    /// </summary>
    /// <param name="z">Any number.</param>
    public static double Below(double z)
    {
        var size = Math.Abs(z);
        var density = Math.Exp(-size * size / 2) / Math.Sqrt(2 * Math.PI);
        double above;
        if (size <= SeriesEnd)
        {
            var (term, sum) = (size, size);
            for (var n = 1; n < Terms && term > sum * 1e-17; n++)
            {
                term *= size * size / ((2 * n) + 1);
                sum += term;
            }

            above = 0.5 - (density * sum);
        }
        else
        {
            var fraction = size;
            for (var n = Terms; n > 0; n--)
                fraction = size + (n / fraction);
            above = density / fraction;
        }

        return z > 0 ? 1 - above : above;
    }
}
