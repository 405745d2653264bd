using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>
/// The rated current of a load, of what is typed and what is printed: a current, or a power at a voltage. The current that is stated counts
/// for more than one that is computed.
/// </summary>
internal static class RatedDraw
{
    /// <summary>The rated current of a load; null where nothing tells it.</summary>
    /// <param name="load">The load.</param>
    /// <param name="voltage">Its voltage.</param>
    /// <param name="fed">The voltage it is fed; null for the highest current at any that is printed.</param>
    /// <param name="notes">Takes what contradicts itself, and what is computed.</param>
    public static Figure<Amps>? Of(Load load, Figure<QuantityRange<Volt>> voltage, Volts? fed, RatingNotes notes)
    {
        Figure<Amps>? printed = null;
        Watts? printedWatts = null;
        VoltAmps? printedVoltAmps = null;
        var at = At(voltage.Value, fed);
        var printedVolts = at;
        if (load.Label is { } label)
        {
            foreach (var conflict in label.Conflicts)
                notes.Disagree("power", conflict, "The current counts.");

            var suits = fed is { } setting && label.Modes.Any(mode => SuitsAt(mode, setting));
            foreach (var mode in label.Modes)
            {
                if (suits && !SuitsAt(mode, fed!.Value))
                    continue;
                if (AmpsOf(mode, fed) is { } amps)
                {
                    if (printed is { } most && amps.Value <= most.Value)
                        continue;
                    printed = amps;
                    printedWatts = mode.Watts?.Value;
                    printedVoltAmps = amps.Origin == Origin.Derived && mode.Watts is null ? mode.VoltAmps?.Value : null;
                    printedVolts = mode.Volts is { } range ? At(range, fed) : printedVolts;
                }
                else if (printed is null && mode.Watts is { Origin: Origin.Stated } watts)
                {
                    printedWatts = watts.Value;
                }
            }
        }

        if (load.Current is { } typed)
        {
            if (printed is { Origin: Origin.Stated } other && other.Value != typed)
                notes.Disagree("current", $"typed {typed}, label {other.Value}", "The typed figure counts.");
            else if (printed is not { Origin: Origin.Stated } && printedWatts is { } labels
                && PowerDisagrees(labels, voltage.Value, typed) is { } contrary)
                notes.Disagree("power", $"label {contrary}", "The typed current counts.");
            if (load.Watts is { } power && PowerDisagrees(power, voltage.Value, typed) is { } working)
                notes.Disagree("power", working, "The current counts.");
            return new Figure<Amps>(typed, Origin.Stated);
        }

        if (load.Watts is { } typedWatts)
        {
            if (printed is { Origin: Origin.Stated } amps)
            {
                // The label's current stands: it is closer to what the load draws than a computed one.
                if (PowerDisagrees(typedWatts, voltage.Value, amps.Value) is { } working)
                    notes.Disagree("power", working, "The label's current counts.");
                return amps;
            }

            if (printedWatts is { } labels && labels != typedWatts)
                notes.Disagree("power", $"typed {typedWatts}, label {labels}", "The typed figure counts.");
            return FromPower(typedWatts, at, voltage.IsAssumed, notes);
        }

        if (printed is { Origin: Origin.Derived } derived && load.Voltage is null && printedWatts is { } from)
            notes.Derive("current", $"{from} ÷ {printedVolts} = {derived.Value}");
        else if (printed is { Origin: Origin.Derived } fromVoltAmps && printedVoltAmps is { } apparent)
            notes.Derive("current", $"{apparent} ÷ {printedVolts} = {fromVoltAmps.Value}");
        else if (printedWatts is { } alone && (printed is null || (printed is { Origin: Origin.Derived } && load.Voltage is not null)))
            return FromPower(alone, at, voltage.IsAssumed, notes);

        return printed ?? MostOf(load.Label?.AmbiguousAmps);
    }

    /// <summary>
    /// The voltage to compute a current at: the one it is fed within its range, else the lowest, the safe side for a supply.
    /// </summary>
    private static Volts At(QuantityRange<Volt> printed, Volts? fed) =>
        fed is { } setting ? Volts.Min(Volts.Max(setting, printed.Low), printed.High) : printed.Low;

    private static bool SuitsAt(Mode mode, Volts fed) => mode.Volts is { } volts && VoltageBand.Judge(fed, volts) == VoltageFit.Fine;

    /// <summary>
    /// The current of one mode; computed where only watts or only VA are printed. From VA it is exact for alternating current, and the most
    /// it can be for direct current: the safe side for a supply.
    /// </summary>
    private static Figure<Amps>? AmpsOf(Mode mode, Volts? fed) => mode switch
    {
        { Amps: { Origin: Origin.Derived }, Watts: { } watts, Volts: { Low.Value: > 0 } volts } =>
            new Figure<Amps>(watts.Value / At(volts, fed), Origin.Derived),
        {
            Amps: null or { Origin: Origin.Derived },
            Watts: null,
            VoltAmps: { Origin: Origin.Stated } apparent,
            Volts: { Low.Value: > 0 } volts,
        } =>
            new Figure<Amps>(apparent.Value / At(volts, fed), Origin.Derived),
        _ => mode.Amps,
    };

    /// <summary>The highest way to take a current that can be read in several ways, the safe side for a supply.</summary>
    private static Figure<Amps>? MostOf(Field<Amps>? unclear) =>
        unclear is { State: FieldState.Ambiguous } field ? new Figure<Amps>(field.Candidates.Max(), Origin.Assumed) : null;

    private static Figure<Amps>? FromPower(Watts watts, Volts volts, bool isAssumed, RatingNotes notes)
    {
        if (volts.Value <= 0)
            return null;

        var amps = watts / volts;
        notes.Derive("current", $"{watts} ÷ {volts} = {amps}");
        return new Figure<Amps>(amps, isAssumed ? Origin.Assumed : Origin.Derived);
    }

    /// <summary>
    /// The working where a power is over 10 % away from what the current comes to at every voltage of the range; else null.
    /// </summary>
    private static string? PowerDisagrees(Watts watts, QuantityRange<Volt> volts, Amps amps)
    {
        const decimal allowed = 0.10m;
        var product = new QuantityRange<Watt>(volts.Low * amps, volts.High * amps);
        return watts < product.Low * (1 - allowed) || watts > product.High * (1 + allowed)
            ? $"{watts}, but {volts} × {amps} = {product}"
            : null;
    }
}
