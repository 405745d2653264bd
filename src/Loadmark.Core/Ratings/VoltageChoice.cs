using System.Collections.Immutable;

namespace Loadmark.Core.Ratings;

/// <summary>The best voltage that one setting of an outlet has for some loads, and how well it suits them.</summary>
/// <param name="Volts">The lowest voltage in the setting's range that reaches every load's lowest, as far as the range goes.</param>
/// <param name="IsUsable">Whether it is within 10 % of what every load is printed for.</param>
/// <param name="IsFine">Whether it is within 5 %.</param>
internal readonly record struct VoltageChoice(Volts Volts, bool IsUsable, bool IsFine)
{
    /// <summary>Chooses for the given loads.</summary>
    public static VoltageChoice Of(QuantityRange<Volt> range, ImmutableArray<WiredLoad> loads)
    {
        var volts = range.Low;
        foreach (var load in loads)
            volts = Quantity<Volt>.Max(volts, Quantity<Volt>.Min(load.Rating.Voltage.Value.Low, range.High));

        var isUsable = true;
        var isFine = true;
        foreach (var load in loads)
        {
            var fit = VoltageBand.Judge(volts, load.Rating);
            isUsable &= fit is not (VoltageFit.TooHigh or VoltageFit.TooLow or VoltageFit.Starved);
            isFine &= fit is VoltageFit.Fine;
        }

        return new VoltageChoice(volts, isUsable, isFine);
    }
}
