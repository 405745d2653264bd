namespace Loadmark.Core.Readings;

/// <summary>
/// Which of several readings stand apart from the rest, by their modified z-scores: 0.6745·(x − median)/MAD, where MAD is the median of the
/// distances from the median; one beyond 3.5 is called an outlier. Source: NIST/SEMATECH e-Handbook of Statistical Methods, section
/// 1.3.5.17, after B. Iglewicz and D. Hoaglin, "How to Detect and Handle Outliers" (1993).
/// </summary>
public static class OutlierTest
{
    /// <summary>A score beyond this, to either side, is an outlier's.</summary>
    public const double Limit = 3.5;

    /// <summary>
    /// The fewest readings that are judged. With fewer, a scale made of their own distances says little (common practice, no source).
    /// </summary>
    public const int Fewest = 5;

    /// <summary>The median distance from the median of a normal distribution, in standard deviations.</summary>
    private const double MadOfNormal = 0.6745;

    /// <summary>
    /// The modified z-score of each reading. Where more than half of the readings are equal the MAD is zero and says nothing; the mean
    /// distance from the median stands in for it then, which is √(2/π) standard deviations of a normal distribution (the mean of |x| under
    /// the normal density).
    /// </summary>
    /// <param name="readings">The readings, in any unit and order.</param>
    /// <returns>The scores in the order of the readings; empty when there are fewer than <see cref="Fewest"/> readings.</returns>
    public static double[] Scores(IReadOnlyList<double> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count < Fewest)
            return [];
        var median = Median([.. readings]);
        double[] distances = [.. readings.Select(reading => Math.Abs(reading - median))];
        var (perDistance, scale) = (MadOfNormal, Median([.. distances]));
        if (scale == 0)
            (perDistance, scale) = (Math.Sqrt(2 / Math.PI), distances.Average());
        return [.. readings.Select(reading => scale == 0 ? 0 : perDistance * (reading - median) / scale)];
    }

    /// <summary>The middle of several numbers, or the mean of the two in the middle.</summary>
    /// <param name="numbers">The numbers; they are put in order.</param>
    internal static double Median(double[] numbers)
    {
        Array.Sort(numbers);
        var middle = numbers.Length / 2;
        return numbers.Length % 2 == 1 ? numbers[middle] : (numbers[middle - 1] + numbers[middle]) / 2;
    }
}
