using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates;

/// <summary>One set of figures that belong together on a nameplate: a voltage with its current or power.</summary>
/// <param name="Volts">The voltage, a range where the label gives one; null when not printed.</param>
/// <param name="Amps">The current, the highest where the label gives a range; null when neither printed nor derived.</param>
/// <param name="Watts">The power; null when neither printed nor derived. Of alternating current it is never derived.</param>
public readonly record struct Mode(QuantityRange<Volt>? Volts, Figure<Amps>? Amps, Figure<Watts>? Watts)
{
    /// <summary>
    /// The apparent power: as printed in VA, whatever the kind of current; derived as V·I for alternating current only. Null when neither.
    /// </summary>
    public Figure<VoltAmps>? VoltAmps { get; init; }

    /// <summary>The lowest current where the label gives a range ("20-50 mA"); null otherwise.</summary>
    public Amps? AmpsFrom { get; init; }

    /// <summary>The frequency of an alternating low voltage where printed; null otherwise.</summary>
    public QuantityRange<Hertz>? Hertz { get; init; }

    /// <summary>Where the voltage is printed; null when it is not.</summary>
    public Place? VoltsPlace { get; init; }

    /// <summary>Where the current is printed; null when it is not.</summary>
    public Place? AmpsPlace { get; init; }

    /// <summary>Where the power, in watts or else in VA, is printed; null when it is not.</summary>
    public Place? WattsPlace { get; init; }
}
