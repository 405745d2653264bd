using Loadmark.Simulation.Spreading;

namespace Loadmark.Simulation.Tests.Spreading;

/// <summary>Interval, quantiles and random numbers against published values.</summary>
public sealed class StatisticsTests
{
    /// <summary>R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3: the score interval of Wilson, 95 % (values from memory).</summary>
    [Theory]
    [Trait("Source", "Newcombe 1998, table I, method 3, from memory")]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void The_interval_is_that_of_Wilson(int held, int samples, double low, double high)
    {
        var chance = new Chance(held, samples);
        Assert.Equal(low, chance.Low, 5e-5);
        Assert.Equal(high, chance.High, 5e-5);
    }

    /// <summary>The ends are where the score statistic is the deviate: (p̂ − p)² = z²·p·(1 − p)/n (Wilson 1927; NIST e-Handbook 7.2.4.1).</summary>
    [Fact]
    public void The_ends_of_the_interval_solve_the_equation_of_Wilson()
    {
        for (var held = 0; held <= 40; held++)
        {
            var chance = new Chance(held, 40);
            foreach (var end in new[] { chance.Low, chance.High })
            {
                if (end is > 0 and < 1)
                    Assert.Equal(1.959963984540054 * 1.959963984540054 * end * (1 - end) / 40, (chance.Share - end) * (chance.Share - end), 1e-12);
            }
        }
    }

    /// <summary>Type 7 is the default of R's quantile(): quantile(1:10, c(.05, .5, .95)) is 1.45, 5.5, 9.55 by (n − 1)·p + 1.</summary>
    [Fact]
    public void Quantiles_are_of_type_7()
    {
        double[] values = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
        Assert.Equal(1.45, Quantile.Of(values, 0.05), 1e-12);
        Assert.Equal(5.5, Quantile.Of(values, 0.5), 1e-12);
        Assert.Equal(9.55, Quantile.Of(values, 0.95), 1e-12);
        Assert.Equal(3, Quantile.Of([3], 0.95));
        Assert.Equal(double.PositiveInfinity, Quantile.Of([1, double.PositiveInfinity, double.PositiveInfinity], 0.95));
    }

    /// <summary>The first numbers of SplitMix64 from state 1234567, as its public-domain C source gives them (from memory).</summary>
    [Fact]
    [Trait("Source", "splitmix64.c, from memory")]
    public void Random_numbers_are_those_of_SplitMix64()
    {
        var random = new SampleRandom(1234567);
        ulong[] published = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        Assert.All(published, number => Assert.Equal(number, random.Next()));
    }

    /// <summary>Shares of neighbouring samples are spread evenly: χ² of 20 classes, 19 degrees of freedom; over 43.8 one time in a thousand.</summary>
    [Fact]
    public void First_numbers_of_samples_are_spread_evenly()
    {
        var classes = new int[20];
        for (var sample = 0; sample < 20_000; sample++)
            classes[(int)(20 * SampleRandom.Of(7, sample).NextShare())]++;
        Assert.True(classes.Sum(static count => (count - 1000.0) * (count - 1000.0) / 1000) < 43.8);
    }
}
