namespace Loadmark.Simulation.Spreading;

/// <summary>How often something held among samples, and what that says of its probability.</summary>
/// <remarks>
/// The score interval of E. B. Wilson, "Probable inference, the law of succession, and statistical inference", Journal of the
/// American Statistical Association 22 (1927) 209; NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1.
/// </remarks>
public readonly record struct Chance
{
    /// <summary>The standard normal deviate of a two-sided interval of 95 %.</summary>
    private const double Deviate = 1.959963984540054;

    /// <summary>Takes how often something held among samples.</summary>
    /// <param name="held">In how many samples it held.</param>
    /// <param name="samples">Of how many, no fewer.</param>
    public Chance(int held, int samples)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(held);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(held, samples);
        (Held, Samples) = (held, samples);
    }

    /// <summary>In how many samples it held.</summary>
    public int Held { get; }

    /// <summary>Of how many.</summary>
    public int Samples { get; }

    /// <summary>The share of the samples in which it held; 0 without samples.</summary>
    public double Share => Samples == 0 ? 0 : (double)Held / Samples;

    /// <summary>The low end of the 95 % interval of the probability, 0 to 1.</summary>
    public double Low => Held == 0 ? 0 : Math.Max(0, End(-1));

    /// <summary>The high end of the 95 % interval of the probability, 0 to 1.</summary>
    public double High => Held == Samples ? 1 : Math.Min(1, End(1));

    private double End(int side)
    {
        var (count, square) = ((double)Samples, Deviate * Deviate);
        var centre = Share + (square / (2 * count));
        var half = Deviate * Math.Sqrt((Share * (1 - Share) / count) + (square / (4 * count * count)));
        return (centre + (side * half)) / (1 + (square / count));
    }
}
