namespace Loadmark.Reference.Laws;

/// <summary>
/// The textbook steps that the worked examples are put together from. Every product and quotient of two quantities in
/// them is an operator of the program; only sums of like quantities and plain ratios are done here.
/// </summary>
public static class Networks
{
    /// <summary>Resistances one after the other: their sum.</summary>
    public static Ohms Series(params IEnumerable<Ohms> resistances) =>
        resistances.Aggregate(Ohms.Zero, (sum, resistance) => sum + resistance);

    /// <summary>
    /// Resistances side by side, by way of the currents that one volt drives through them: R = 1 V ÷ Σ (1 V ÷ Rᵢ).
    /// </summary>
    public static Ohms Parallel(params IEnumerable<Ohms> resistances)
    {
        var probe = new Volts(1);
        return probe / resistances.Aggregate(Amps.Zero, (sum, resistance) => sum + (probe / resistance));
    }

    /// <summary>The power a current turns into heat in a resistance: P = I·(I·R).</summary>
    public static Watts Heat(Amps current, Ohms resistance) => current * (current * resistance);

    /// <summary>The current at which a resistance takes a power, found by halving: the program has no square roots of quantities.</summary>
    public static Amps CurrentForHeat(Watts power, Ohms resistance)
    {
        var (low, high) = (Amps.Zero, new Amps(1000));
        for (var step = 0; step < 80; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = Heat(middle, resistance) < power ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>What a device rated in watts at a voltage is as a resistance: R = V ÷ (P ÷ V).</summary>
    public static Ohms Rated(Watts power, Volts voltage) => voltage / (power / voltage);

    /// <summary>R = ρ·L/A of a conductor.</summary>
    /// <param name="ohmMetres">The resistivity ρ in Ω·m.</param>
    /// <param name="length">The length L.</param>
    /// <param name="area">The cross-section A.</param>
    public static Ohms Conductor(decimal ohmMetres, Metres length, SquareMetres area) =>
        new(ohmMetres * length.Value / area.Value);
}
