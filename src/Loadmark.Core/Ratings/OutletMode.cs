using Loadmark.Core.Gear;

namespace Loadmark.Core.Ratings;

/// <summary>One setting of an outlet: a voltage with the current it can give there.</summary>
/// <param name="Volts">The voltage; a range for an adjustable outlet; null when nothing is printed.</param>
/// <param name="Limit">The most current; null when nothing tells.</param>
/// <param name="Power">The most power as printed; null when not printed.</param>
public readonly record struct OutletMode(QuantityRange<Volt>? Volts, Figure<Amps>? Limit, Watts? Power)
{
    /// <summary>The apparent power as printed; null when not printed. Of direct current it tells no limit.</summary>
    public VoltAmps? VoltAmps { get; init; }

    /// <summary>
    /// The most current at <paramref name="setting"/>: of one voltage the printed current, else what the power comes to; of a
    /// range the smaller of the two.
    /// </summary>
    /// <returns>Null when neither current nor power is printed.</returns>
    public Figure<Amps>? LimitAt(Volts setting)
    {
        if (Limit is not null && Volts is not { IsSingle: false })
            return Limit;
        if (Power is not { } watts || setting.Value <= 0)
            return Limit;

        var byPower = watts / setting;
        return Limit is { Origin: Origin.Stated } stated && stated.Value <= byPower ? stated : new Figure<Amps>(byPower, Origin.Derived);
    }
}
