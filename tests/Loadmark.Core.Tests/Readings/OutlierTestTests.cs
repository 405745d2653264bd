using CsCheck;
using Loadmark.Core.Readings;

namespace Loadmark.Core.Tests.Readings;

public sealed class OutlierTestTests
{
    /// <summary>
    /// Eight readings of a mass spectrometer, of which the last is the outlier (NIST/SEMATECH e-Handbook of Statistical Methods, section
    /// 1.3.5.17.1, after Tietjen and Moore, 1972). There it is found by Grubbs' test; the modified z-score must find the same one.
    /// </summary>
    private static readonly double[] MassSpectrometer = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

    [Fact]
    public void Finds_the_outlier_of_the_handbook_and_no_other()
    {
        var scores = OutlierTest.Scores(MassSpectrometer);
        Assert.Equal([7], Enumerable.Range(0, 8).Where(index => Math.Abs(scores[index]) > OutlierTest.Limit));

        // Worked by hand from the formula of section 1.3.5.17: median 201.37, distances 0.55 0.58 0.55 0.81 1.18 1.84 2.06 44.20, MAD 0.995.
        Assert.Equal(0.6745 * 44.20 / 0.995, scores[7], 9);
        Assert.Equal(0.6745 * -2.06 / 0.995, scores[0], 9);
    }

    [Fact]
    public void Where_most_readings_are_equal_the_mean_distance_stands_in()
    {
        // MAD is 0. Mean distance 310/5 = 62; of a normal distribution that is √(2/π) standard deviations.
        var scores = OutlierTest.Scores([210, 210, 210, 210, 520]);
        Assert.Equal([0, 0, 0, 0, Math.Sqrt(2 / Math.PI) * 310 / 62], scores);
        Assert.True(scores[4] > OutlierTest.Limit);
        Assert.Equal([0, 0, 0, 0, 0], OutlierTest.Scores([210, 210, 210, 210, 210]));
    }

    [Fact]
    public void Few_readings_are_not_judged() => Assert.Empty(OutlierTest.Scores([210, 211, 212, 2110]));

    [Fact]
    public void Unit_and_zero_do_not_matter() => Gen.Int[-1000, 1000].Select(value => value / 8.0).Array[5, 20].Where(readings => readings.Distinct().Count() > readings.Length / 2 + 1).Sample(readings =>
    {
        var (scores, scaled) = (OutlierTest.Scores(readings), OutlierTest.Scores([.. readings.Select(reading => (1000 * reading) - 5e5)]));
        for (var index = 0; index < scores.Length; index++)
            Assert.Equal(scores[index], scaled[index], 1e-6 * (1 + Math.Abs(scores[index])));
    });
}
