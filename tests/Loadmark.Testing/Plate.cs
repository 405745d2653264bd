using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Testing;

/// <summary>
/// Nameplates made by hand, so that a fault in the reader of labels is not taken for one in a rule. Currents in mA.
/// </summary>
public static class Plate
{
    public static Nameplate Dc(decimal volts, decimal? milliamps = null, decimal? watts = null) =>
        Of(SupplyForm.Direct, Mode(volts, volts, milliamps, watts));

    public static Nameplate Ac(decimal volts, decimal? milliamps = null) => Of(SupplyForm.Alternating, Mode(volts, volts, milliamps));

    /// <summary>"9-18V 300mA".</summary>
    public static Nameplate Range(decimal low, decimal high, decimal? milliamps = null, decimal? watts = null) =>
        Of(SupplyForm.Direct, Mode(low, high, milliamps, watts));

    /// <summary>"9V 500mA; 12V 400mA".</summary>
    public static Nameplate Modes(params (decimal Volts, decimal Milliamps)[] modes) =>
        Of(SupplyForm.Direct, [.. modes.Select(mode => Mode(mode.Volts, mode.Volts, mode.Milliamps))]);

    /// <summary>A label without a voltage: "300mA".</summary>
    public static Nameplate AmpsOnly(decimal milliamps) =>
        Of(SupplyForm.Direct, new Mode(null, new Figure<Amps>(new Amps(milliamps / 1000), Origin.Stated), null));

    public static Nameplate Mains(decimal low, decimal high, decimal lowHertz = 50, decimal highHertz = 60) => new($"{low}-{high}V~ {lowHertz}-{highHertz}Hz")
    {
        Mains = new MainsInput(
            new QuantityRange<Volt>(new Volts(low), new Volts(high)),
            new QuantityRange<Hertz>(new Frequency(lowHertz), new Frequency(highHertz)),
            Amps: null,
            Watts: null,
            default),
    };

    public static Nameplate Empty { get; } = new("");

    /// <summary>One set of figures; where watts stand without amps, amps are derived as the reader of labels does.</summary>
    public static Mode Mode(decimal low, decimal high, decimal? milliamps, decimal? watts = null)
    {
        Figure<Amps>? amps = milliamps is { } printed ? new Figure<Amps>(new Amps(printed / 1000), Origin.Stated) : null;
        if (amps is null && watts is { } power && low > 0)
            amps = new Figure<Amps>(new Amps(power / low), Origin.Derived);
        return new Mode(
            new QuantityRange<Volt>(new Volts(low), new Volts(high)),
            amps,
            watts is { } stated ? new Figure<Watts>(new Watts(stated), Origin.Stated) : null);
    }

    public static Nameplate Of(SupplyForm form, params ImmutableArray<Mode> modes) =>
        new($"{form} {string.Join("; ", modes.Select(mode => $"{mode.Volts} {mode.Amps} {mode.Watts}"))}")
        {
            Form = Field<SupplyForm>.Read(form, default),
            Modes = modes,
        };
}
