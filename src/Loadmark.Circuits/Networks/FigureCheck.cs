using Loadmark.Circuits.Devices;

namespace Loadmark.Circuits.Networks;

/// <summary>Finds the figures of a device that no real one can have: negative, zero where that means nothing, not finite.</summary>
internal static class FigureCheck
{
    /// <summary>The names of the figures at fault.</summary>
    public static IEnumerable<string> FaultsOf(Device device) => device switch
    {
        Resistor d => Positive((nameof(d.Ohms), d.Ohms)),
        Capacitor d => Positive((nameof(d.Farads), d.Farads)).Concat(NotNegative((nameof(d.SeriesOhms), d.SeriesOhms)))
            .Concat(Finite((nameof(d.InitialVolts), d.InitialVolts))),
        Diode d => Positive((nameof(d.SaturationAmps), d.SaturationAmps), (nameof(d.Emission), d.Emission))
            .Concat(NotNegative((nameof(d.SeriesOhms), d.SeriesOhms))),
        VoltageSource d => Shape(d.Waveform).Concat(Finite((nameof(d.SmallSignal), d.SmallSignal))),
        CurrentSource d => Shape(d.Waveform).Concat(Finite((nameof(d.SmallSignal), d.SmallSignal))),
        OutletDevice d => OfOutlet(d),
        LoadDevice d => OfLoad(d),
        Heater d => Positive(
            (nameof(d.ColdOhms), d.ColdOhms),
            (nameof(d.HotOhms), d.HotOhms),
            (nameof(d.RatedVolts), d.RatedVolts),
            (nameof(d.ThermalSeconds), d.ThermalSeconds))
            .Concat(d.HotOhms < d.ColdOhms ? [nameof(d.HotOhms)] : []),
        ResettableFuse d => Positive(
            (nameof(d.ColdOhms), d.ColdOhms),
            (nameof(d.ThresholdAmps), d.ThresholdAmps),
            (nameof(d.ThermalSeconds), d.ThermalSeconds),
            (nameof(d.Span), d.Span)),
        _ => [],
    };

    private static IEnumerable<string> OfOutlet(OutletDevice outlet)
    {
        var faults = Positive((nameof(outlet.SourceOhms), outlet.SourceOhms)).Concat(NotNegative(
            (nameof(outlet.Volts), outlet.Volts),
            (nameof(outlet.SoftStartSeconds), outlet.SoftStartSeconds),
            (nameof(outlet.DelaySeconds), outlet.DelaySeconds),
            (nameof(outlet.TripSeconds), outlet.TripSeconds)));
        if (outlet.Overload != OverloadBehaviour.None)
            faults = faults.Concat(Positive((nameof(outlet.LimitAmps), outlet.LimitAmps)));
        if (outlet.Overload == OverloadBehaviour.Foldback)
            faults = faults.Concat(Positive((nameof(outlet.ShortAmps), outlet.ShortAmps)))
                .Concat(outlet.ShortAmps > outlet.LimitAmps ? [nameof(outlet.ShortAmps)] : []);
        if (outlet.Overload == OverloadBehaviour.Hiccup)
            faults = faults.Concat(Positive((nameof(outlet.OffSeconds), outlet.OffSeconds)));
        return faults;
    }

    private static IEnumerable<string> OfLoad(LoadDevice load)
    {
        var draws = load.Law == LoadLaw.Resistance
            ? Positive((nameof(load.Draw), load.Draw), (nameof(load.BootDraw), load.BootDraw ?? 1))
            : NotNegative((nameof(load.Draw), load.Draw), (nameof(load.BootDraw), load.BootDraw ?? 0));
        return draws
            .Concat(NotNegative(
                (nameof(load.StartsAbove), load.StartsAbove),
                (nameof(load.StopsBelow), load.StopsBelow),
                (nameof(load.DelaySeconds), load.DelaySeconds),
                (nameof(load.BootSeconds), load.BootSeconds)))
            .Concat(Positive((nameof(load.FloorVolts), load.FloorVolts)))
            .Concat(load.StopsBelow > load.StartsAbove ? [nameof(load.StopsBelow)] : []);
    }

    private static IEnumerable<string> Shape(SourceWaveform waveform) =>
        waveform.Figures.All(double.IsFinite) && waveform.IsWellFormed ? [] : ["Waveform"];

    private static IEnumerable<string> Positive(params (string Name, double Value)[] figures) =>
        Failing(static value => double.IsFinite(value) && value > 0, figures);

    private static IEnumerable<string> NotNegative(params (string Name, double Value)[] figures) =>
        Failing(static value => double.IsFinite(value) && value >= 0, figures);

    private static IEnumerable<string> Finite(params (string Name, double Value)[] figures) => Failing(double.IsFinite, figures);

    private static IEnumerable<string> Failing(Predicate<double> holds, (string Name, double Value)[] figures)
    {
        foreach (var (name, value) in figures)
        {
            if (!holds(value))
                yield return name;
        }
    }
}
