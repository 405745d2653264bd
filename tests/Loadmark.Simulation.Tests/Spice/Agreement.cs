namespace Loadmark.Simulation.Tests.Spice;

/// <summary>How far two programs are apart in some quantity, at most, over many comparisons.</summary>
internal sealed class Agreement(string quantity, string unit)
{
    /// <summary>What is compared.</summary>
    public string Quantity => quantity;

    /// <summary>The unit of the difference.</summary>
    public string Unit => unit;

    /// <summary>How many values were compared.</summary>
    public long Compared { get; private set; }

    /// <summary>The largest difference.</summary>
    public double Largest { get; private set; }

    /// <summary>Where that was.</summary>
    public string Where { get; private set; } = "";

    /// <summary>Compares two values.</summary>
    public void Add(double difference, string where)
    {
        Compared++;
        if (!(Math.Abs(difference) <= Largest))
            (Largest, Where) = (Math.Abs(difference), where);
    }
}
