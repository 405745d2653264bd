using Loadmark.Core.Fits;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Figures;

/// <summary>
/// Every default of the circuit, in one place: what stands in where a rig does not say. Each one that is used shows among the
/// assumptions of a result. The same table with its reasons is docs/theory/rig-circuit.md.
/// </summary>
public static class CircuitDefaults
{
    private const string Practice = "common practice, no source";

    /// <summary>Resistivity of standard annealed copper at 20 °C, Ω·m (IEC 60028).</summary>
    public const double CopperOhmMetres = 1.7241e-8;

    /// <summary>
    /// The least resistance of a conductor in the circuit, Ω: what is given as less is computed as this. At 1 A it is 1 µV.
    /// </summary>
    public const double LeastOhms = 1e-6;

    /// <summary>
    /// The least resistance of a source, Ω: a stiffer one hides from the search that a circuit has no steady state. At 1 A it
    /// is 0.1 mV.
    /// </summary>
    public const double LeastSourceOhms = 1e-4;

    /// <summary>
    /// The least source resistance of an outlet that shares its loads with another, Ω: how two stiffer ones share is a matter
    /// of rounding. At 1 A it is 1 mV, and less than any contact has.
    /// </summary>
    public const double LeastSharingOhms = 1e-3;

    /// <summary>Source resistance of a regulated outlet: its regulator holds the voltage up to the limit.</summary>
    public static CircuitDefault<double> RegulatedSourceOhms { get; } =
        new(
            "source resistance of a regulated outlet",
            1e-3,
            "1 mΩ, next to nothing",
            "a regulator holds its voltage up to its limit; " + Practice);

    /// <summary>Source resistance of an unregulated outlet of which neither the current nor the resistance is known, Ω.</summary>
    public static CircuitDefault<double> UnregulatedSourceOhms { get; } =
        new("source resistance of an unregulated outlet", 10, "10 Ω", Practice);

    /// <summary>No-load voltage of an unregulated outlet, as a multiple of its printed voltage.</summary>
    public static CircuitDefault<double> NoLoadRatio { get; } = new(
        "no-load voltage of an unregulated outlet",
        (double)OpenVoltage.AssumedRatio,
        $"{OpenVoltage.AssumedRatio} × the printed one",
        Practice);

    /// <summary>How long an outlet's voltage takes to rise after switch-on, s.</summary>
    public static CircuitDefault<double> SoftStartSeconds { get; } = new(
        "rise of an outlet's voltage", 0.010, "10 ms", Practice, IsForStartUp: true);

    /// <summary>Current of a foldback outlet into a short circuit, as a share of its limit.</summary>
    public static CircuitDefault<double> FoldbackShare { get; } = new(
        "short-circuit current with foldback", 0.3, "30 % of the limit", Practice);

    /// <summary>How long a hiccup outlet holds its limit before it switches off, s.</summary>
    public static CircuitDefault<double> HiccupTripSeconds { get; } = new(
        "hiccup: at the limit before it switches off", 0.050, "50 ms", Practice, IsForStartUp: true);

    /// <summary>How long a hiccup outlet stays off before it tries again, s.</summary>
    public static CircuitDefault<double> HiccupOffSeconds { get; } = new(
        "hiccup: off before it tries again", 0.500, "500 ms", Practice, IsForStartUp: true);

    /// <summary>Trip current of a resettable fuse, as a multiple of its hold current, which is the outlet's limit.</summary>
    public static CircuitDefault<double> FuseTripRatio { get; } =
        new(
            "fuse: trip current",
            2,
            "2 × the hold current, the outlet's limit",
            "rule of thumb of makers of resettable fuses, 20 °C to 25 °C");

    /// <summary>Resistance of a cold resettable fuse times its hold current, V.</summary>
    public static CircuitDefault<double> FuseColdVolts { get; } =
        new(
            "fuse: cold resistance",
            0.08,
            "80 mV ÷ hold current",
            "data sheet of 0805 fuses: 0.7 Ω × 0.1 A, 0.4 Ω × 0.2 A, 0.25 Ω × 0.35 A");

    /// <summary>The current at which <see cref="FuseTestSeconds"/> holds, as a multiple of the hold current.</summary>
    public static CircuitDefault<double> FuseTestRatio { get; } = new(
        "fuse: test current", 5, "5 × the hold current", "customary test of makers of resettable fuses", IsForStartUp: true);

    /// <summary>Time to trip at that current, s.</summary>
    public static CircuitDefault<double> FuseTestSeconds { get; } =
        new(
            "fuse: time to trip at 5 × the hold current",
            1.5,
            "1.5 s",
            "data sheet of 0805 fuses: 0.1 A hold, 1.5 s at 0.5 A",
            IsForStartUp: true);

    /// <summary>Resistance in series with an input capacitor, Ω.</summary>
    public static CircuitDefault<double> InputSeriesOhms { get; } = new(
        "series resistance of an input capacitor", 0.1, "0.1 Ω", Practice, IsForStartUp: true);

    /// <summary>How long a load takes to start whose starting draw is given without a time, s.</summary>
    public static CircuitDefault<double> StartSeconds { get; } = new("duration of the start", 1, "1 s", Practice, IsForStartUp: true);

    /// <summary>Resistance of a cold valve heater, as a share of the hot one.</summary>
    public static CircuitDefault<double> HeaterColdShare { get; } =
        new("cold resistance of a heater", 0.2, "1/5 of the hot one", Practice, IsForStartUp: true);

    /// <summary>Thermal time constant of a valve heater, s.</summary>
    public static CircuitDefault<double> HeaterSeconds { get; } = new(
        "thermal time constant of a heater", 3, "3 s", Practice, IsForStartUp: true);

    /// <summary>Length of a chain's tail that gives none, m: as any other lead.</summary>
    public static CircuitDefault<double> TailMetres { get; } = new(
        "tail of a chain", (double)Lead.CommonLength.Value, Lead.CommonLength.ToString(), Practice);

    /// <summary>Distance of a chain's plugs where none is given, m.</summary>
    public static CircuitDefault<double> PitchMetres { get; } = new(
        "pitch of a chain", (double)Lead.CommonPitch.Value, Lead.CommonPitch.ToString(), Practice);

    /// <summary>A measured draw, give or take this share of it.</summary>
    public static CircuitDefault<double> MeasuredDrawShare { get; } = new(
        "spread of a measured draw", 0.02, "±2 %, a bench meter and its reading", Practice);

    /// <summary>The least that a load draws, as a share of the printed current.</summary>
    public static CircuitDefault<double> RatedDrawLeast { get; } = new(
        "spread of a printed draw", 0.5, "from half of it up to it", Practice);

    /// <summary>The voltage of a regulated outlet, give or take this share.</summary>
    public static CircuitDefault<double> OutletTolerance { get; } = new("spread of a regulated outlet's voltage", 0.05, "±5 %", Practice);

    /// <summary>The voltage of an unregulated outlet, give or take this share: it follows the mains.</summary>
    public static CircuitDefault<double> UnregulatedTolerance { get; } =
        new("spread of an unregulated outlet's voltage", 0.10, "±10 %, as the mains", "EN 50160, supply voltage within ±10 %, from memory");

    /// <summary>The length of a lead that is given, give or take this share.</summary>
    public static CircuitDefault<double> LengthTolerance { get; } = new("spread of a length that is given", 0.10, "±10 %", Practice);

    /// <summary>A length that is not given lies between the common one divided by this and multiplied by this.</summary>
    public static CircuitDefault<double> AssumedLengthRatio { get; } = new(
        "spread of a length that is not given", 2, "from half the common one to twice it", Practice);

    /// <summary>All of them with name, value and source, for the documentation and its test.</summary>
    public static IReadOnlyList<(string Name, string Text, string Source)> All =>
    [
        .. new[]
        {
            RegulatedSourceOhms, UnregulatedSourceOhms, NoLoadRatio, SoftStartSeconds, FoldbackShare, HiccupTripSeconds, HiccupOffSeconds,
            FuseTripRatio, FuseColdVolts, FuseTestRatio, FuseTestSeconds, InputSeriesOhms, StartSeconds, HeaterColdShare, HeaterSeconds,
            TailMetres, PitchMetres, MeasuredDrawShare, RatedDrawLeast, OutletTolerance, UnregulatedTolerance, LengthTolerance,
            AssumedLengthRatio,
        }.Select(static figure => (figure.Name, figure.Text, figure.Source)),
        .. LoadClassDefaults.All.SelectMany(static defaults => defaults.Figures)
        .Select(static figure => (figure.Name, figure.Text, figure.Source)),
    ];
}
