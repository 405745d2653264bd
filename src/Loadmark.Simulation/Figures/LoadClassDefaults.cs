using System.Collections.Immutable;
using Loadmark.Core.Gear;

namespace Loadmark.Simulation.Figures;

/// <summary>How loads of a class behave at their supply input, where the rig does not say. Common practice, no source.</summary>
/// <param name="Name">The class in words: "digital".</param>
/// <param name="InputFarads">Capacitance across the supply input, F.</param>
/// <param name="StartsShare">Share of the lowest printed voltage from which it starts.</param>
/// <param name="StopsShare">Share of it below which it drops out.</param>
/// <param name="DelaySeconds">How long its voltage must have sufficed without a break before it starts, s.</param>
public sealed record LoadClassDefaults(string Name, double InputFarads, double StartsShare, double StopsShare, double DelaySeconds)
{
    private const string Practice = "common practice, no source";

    /// <summary>
    /// Analog loads: the supply is smoothed, and the circuit works down to half of its voltage and a little under, with less headroom in
    /// its sound (<see cref="Core.Ratings.VoltageBand.Starved"/>).
    /// </summary>
    public static LoadClassDefaults Analog { get; } = new("analog", 100e-6, 0.45, 0.40, 0.010);

    /// <summary>
    /// Digital loads: a converter, and a supervisor that holds the processor in reset until the voltage has sufficed for a while.
    /// </summary>
    public static LoadClassDefaults Digital { get; } = new("digital", 220e-6, 0.85, 0.75, 0.100);

    /// <summary>Large digital loads.</summary>
    public static LoadClassDefaults LargeDigital { get; } = new("large digital", 470e-6, 0.85, 0.75, 0.100);

    /// <summary>Loads with a valve.</summary>
    public static LoadClassDefaults Valve { get; } = new("valve", 220e-6, 0.70, 0.60, 0.010);

    /// <summary>Loads whose kind tells nothing: the smaller capacitor, and thresholds between the two.</summary>
    public static LoadClassDefaults Unknown { get; } = new("kind not known", 100e-6, 0.80, 0.70, 0.100);

    /// <summary>The defaults of every class.</summary>
    public static ImmutableArray<LoadClassDefaults> All { get; } = [Analog, Digital, LargeDigital, Valve, Unknown];

    /// <summary>The defaults of the class as figures with their names.</summary>
    public ImmutableArray<CircuitDefault<double>> Figures => [Input, Starts, Stops, Delay];

    /// <summary>The capacitance as a figure.</summary>
    public CircuitDefault<double> Input =>
        new($"input capacitance, {Name}", InputFarads, $"{InputFarads * 1e6:0} µF", Practice, IsForStartUp: true);

    /// <summary>The starting threshold as a figure.</summary>
    public CircuitDefault<double> Starts =>
        new($"starts from, {Name}", StartsShare, $"{StartsShare * 100:0} % of the lowest printed voltage", Practice);

    /// <summary>The drop-out threshold as a figure.</summary>
    public CircuitDefault<double> Stops =>
        new($"drops out below, {Name}", StopsShare, $"{StopsShare * 100:0} % of the lowest printed voltage", Practice);

    /// <summary>The delay before each start as a figure.</summary>
    public CircuitDefault<double> Delay =>
        new($"starts after enough volts for, {Name}", DelaySeconds, $"{DelaySeconds * 1e3:0} ms", Practice, IsForStartUp: true);

    /// <summary>The defaults of a kind of load.</summary>
    /// <param name="kind">The kind; null where it is not given.</param>
    public static LoadClassDefaults Of(LoadKind? kind) => kind?.Class switch
    {
        LoadClass.Unknown when kind.IsDigital == false => Analog,
        LoadClass.AnalogDrive or LoadClass.AnalogModulation or LoadClass.ComplexAnalog => Analog,
        LoadClass.Digital => Digital,
        LoadClass.LargeDigital => LargeDigital,
        LoadClass.Valve => Valve,
        _ => Unknown,
    };
}
