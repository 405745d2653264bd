namespace Loadmark.Core.Ratings;

/// <summary>The shares by which a voltage may leave a load's printed range (common practice, no source).</summary>
public static class VoltageBand
{
    /// <summary>Up to this share outside the printed range nothing is said: 5 %.</summary>
    public const decimal Fine = 0.05m;

    /// <summary>Beyond this share outside the printed range it is too much: 10 %.</summary>
    public const decimal Allowed = 0.10m;

    /// <summary>Judges a voltage against the range a load is printed for; the ends of each band still count as inside.</summary>
    public static VoltageFit Judge(Volts volts, QuantityRange<Volt> printed)
    {
        if (printed.Contains(volts))
            return VoltageFit.Fine;
        if (volts > printed.High * (1 + Allowed))
            return VoltageFit.TooHigh;
        if (volts > printed.High * (1 + Fine))
            return VoltageFit.High;
        if (volts < printed.Low * (1 - Allowed))
            return VoltageFit.TooLow;
        return volts < printed.Low * (1 - Fine) ? VoltageFit.Low : VoltageFit.Fine;
    }
}
