using Loadmark.Core.Gear;

namespace Loadmark.Core.Ratings;

/// <summary>The shares by which a voltage may leave a load's printed range (common practice, no source).</summary>
public static class VoltageBand
{
    /// <summary>Up to this share outside the printed range nothing is said: 5 %.</summary>
    public const decimal Fine = 0.05m;

    /// <summary>Beyond this share outside the printed range it is too much: 10 %.</summary>
    public const decimal Allowed = 0.10m;

    /// <summary>
    /// The share of its lowest printed voltage at which an analog load still runs, with less headroom in its sound: half.
    /// </summary>
    public const decimal Starved = 0.5m;

    /// <summary>
    /// Judges a voltage against what a load is printed for; of an analog load that gets too little, whether it still runs.
    /// </summary>
    /// <param name="volts">The voltage.</param>
    /// <param name="load">The load; whether it is digital counts where its kind tells.</param>
    public static VoltageFit Judge(Volts volts, LoadRating load)
    {
        var fit = Judge(volts, load.Voltage.Value);
        return fit == VoltageFit.TooLow && IsAnalog(load) && volts >= load.Voltage.Value.Low * Starved ? VoltageFit.Starved : fit;
    }

    /// <summary>Whether a load is known to be analog and without valves, whose heaters do not work cold.</summary>
    /// <param name="load">The load.</param>
    public static bool IsAnalog(LoadRating load) => load.IsDigital == false && load.Load.Kind?.Class != LoadClass.Valve;

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
