using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Ratings;

/// <summary>The voltages a nameplate gives, as one range.</summary>
internal static class NameplateVoltage
{
    /// <summary>
    /// From the lowest to the highest voltage printed: "9 or 18 V" and "9-18 V" both give 9 V to 18 V. Null when no
    /// low voltage is printed.
    /// </summary>
    public static QuantityRange<Volt>? Of(Nameplate? nameplate)
    {
        if (nameplate is null)
            return null;

        QuantityRange<Volt>? all = null;
        foreach (var mode in nameplate.Modes)
        {
            if (mode.Volts is not { } volts)
                continue;
            all = all is { } so ? new QuantityRange<Volt>(Volts.Min(so.Low, volts.Low), Volts.Max(so.High, volts.High)) : volts;
        }

        return all;
    }
}
