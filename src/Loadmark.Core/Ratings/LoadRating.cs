using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>
/// What a load needs once its label, the figures typed beside it and the defaults are joined: a typed figure wins over
/// the label, the label over a default, and every figure knows which it was.
/// </summary>
public sealed class LoadRating
{
    private LoadRating(Load load) => Load = load;

    /// <summary>The load as the rig file has it.</summary>
    public Load Load { get; }

    /// <summary>The load's tag.</summary>
    public string Id => Load.Id;

    /// <summary>Whether it takes direct or alternating current; direct where nothing is printed.</summary>
    public Figure<SupplyForm> Form { get; private init; }

    /// <summary>The lowest and the highest voltage it is printed for; 9 V, assumed, where nothing is printed.</summary>
    public Figure<QuantityRange<Volt>> Voltage { get; private init; }

    /// <summary>The printed, derived or assumed current; null when nothing tells.</summary>
    public Figure<Amps>? Rated { get; private init; }

    /// <summary>What it draws when it runs: measured if that is given, else the rated current; null when nothing tells.</summary>
    public Figure<Amps>? Running { get; private init; }

    /// <summary>What it draws while it starts: as given, else the running current; never less than that. Null when nothing tells.</summary>
    public Figure<Amps>? Starting { get; private init; }

    /// <summary>How long starting takes; null when not given.</summary>
    public Seconds? StartDuration => Load.Start?.Duration;

    /// <summary>Whether a starting current was given, so that <see cref="Starting"/> is more than the running one repeated.</summary>
    public bool StartIsGiven => Load.Start is not null;

    /// <summary>The class whose figures stand in for a missing current; null when none had to.</summary>
    public ClassFigures? StandIn { get; private init; }

    /// <summary>The polarity it wants; centre negative, assumed, where nothing is printed.</summary>
    public Figure<Polarity> Polarity { get; private init; }

    /// <summary>The plug it takes; 5.5x2.1, assumed, where nothing is printed.</summary>
    public Figure<Plug> Plug { get; private init; }

    /// <summary>The side of its supply that is its ground; negative unless the rig says otherwise.</summary>
    public GroundSide Ground => Load.Ground ?? GroundSide.Negative;

    /// <summary>Whether it is digital: true, false, or null when its kind does not tell.</summary>
    public bool? IsDigital => Load.Kind?.IsDigital;

    /// <summary>
    /// How its current follows its voltage: as given, else constant power for digital loads, a resistance for valves,
    /// constant current for all others.
    /// </summary>
    public DrawLaw DrawLaw => Load.Draws ?? Load.Kind?.Class switch
    {
        LoadClass.Digital or LoadClass.LargeDigital => DrawLaw.Power,
        LoadClass.Valve => DrawLaw.Resistance,
        _ => DrawLaw.Current,
    };

    /// <summary>Figures that do not agree with one another.</summary>
    public ImmutableArray<Disagreement> Disagreements { get; private init; } = [];

    /// <summary>Figures that were computed.</summary>
    public ImmutableArray<Derivation> Derivations { get; private init; } = [];

    /// <summary>Joins what is known of a load.</summary>
    public static LoadRating Of(Load load)
    {
        var notes = new RatingNotes();
        var voltage = ReadVoltage(load, notes);
        var rated = ReadRated(load, voltage, notes);

        ClassFigures? standIn = null;
        if (rated is null && load.Kind is { } kind && ClassFigures.Of(kind.Class) is { } figures)
        {
            standIn = figures;
            rated = new Figure<Amps>(figures.StandIn, Origin.Assumed);
        }

        var running = load.Run is { } run ? new Figure<Amps>(run, Origin.Measured) : rated;
        if (load.Run is { } measured && rated is { IsAssumed: false } printed && measured > printed.Value)
            notes.Disagree("current", $"runs at {measured}, printed {printed.Value}", "The running figure counts.");

        // A start figure below the running one cannot be: the load would draw less while it boots than ever after.
        var starting = running;
        if (load.Start is { } start)
        {
            if (running is { IsAssumed: false } runs && start.Current < runs.Value)
                notes.Disagree("starting current", $"starts at {start.Current}, runs at {runs.Value}", "The larger counts.");
            starting = running is { } floor && floor.Value > start.Current ? floor : new Figure<Amps>(start.Current, Origin.Stated);
        }

        return new LoadRating(load)
        {
            Form = ReadForm(load, notes),
            Voltage = voltage,
            Rated = rated,
            Running = running,
            Starting = starting,
            StandIn = load.Run is null ? standIn : null,
            Polarity = Typed(load.Polarity, load.Label?.Polarity.Value, Gear.Polarity.CentreNegative, "polarity", notes, PolarityText.Of),
            Plug = Typed(load.Plug, load.Label?.Plug.Value, Gear.Plug.Common, "plug", notes, static plug => plug.Name),
            Disagreements = notes.Disagreements,
            Derivations = notes.Derivations,
        };
    }

    private static Figure<QuantityRange<Volt>> ReadVoltage(Load load, RatingNotes notes)
    {
        var typed = NameplateVoltage.Of(load.Voltage);
        var printed = NameplateVoltage.Of(load.Label);
        if (typed is { } one && printed is { } other && one != other)
            notes.Disagree("voltage", $"typed {one}, label {other}", "The typed figure counts.");

        return (typed ?? printed) is { } stated
            ? new Figure<QuantityRange<Volt>>(stated, Origin.Stated)
            : new Figure<QuantityRange<Volt>>(QuantityRange<Volt>.Single(ClassFigures.CommonVoltage), Origin.Assumed);
    }

    private static Figure<SupplyForm> ReadForm(Load load, RatingNotes notes)
    {
        var typed = load.Voltage?.Form.Value;
        var printed = load.Label?.Form.Value;
        return Typed(typed, printed, SupplyForm.Direct, "kind of current", notes, static form => form == SupplyForm.Direct ? "d.c." : "a.c.");
    }

    private static Figure<Amps>? ReadRated(Load load, Figure<QuantityRange<Volt>> voltage, RatingNotes notes)
    {
        Figure<Amps>? printed = null;
        Watts? printedWatts = null;
        var printedVolts = voltage.Value.Low;
        if (load.Label is { } label)
        {
            foreach (var conflict in label.Conflicts)
                notes.Disagree("power", conflict, "The current counts.");

            foreach (var mode in label.Modes)
            {
                if (AmpsOf(mode) is { } amps)
                {
                    if (printed is { } most && amps.Value <= most.Value)
                        continue;
                    printed = amps;
                    printedWatts = mode.Watts?.Value;
                    printedVolts = mode.Volts?.Low ?? printedVolts;
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
            else if (printed is not { Origin: Origin.Stated } && printedWatts is { } labels && PowerDisagrees(labels, voltage.Value, typed) is { } contrary)
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
            return FromPower(typedWatts, voltage, notes);
        }

        if (printed is { Origin: Origin.Derived } derived && load.Voltage is null && printedWatts is { } from)
            notes.Derive("current", $"{from} ÷ {printedVolts} = {derived.Value}");
        else if (printedWatts is { } alone && (printed is null || (printed is { Origin: Origin.Derived } && load.Voltage is not null)))
            return FromPower(alone, voltage, notes);

        return printed;
    }

    /// <summary>The current of one mode; computed at its lowest voltage where only watts are printed, the safe side for a supply.</summary>
    private static Figure<Amps>? AmpsOf(Mode mode) =>
        mode is { Amps: { Origin: Origin.Derived }, Watts: { } watts, Volts: { Low.Value: > 0 } volts }
            ? new Figure<Amps>(watts.Value / volts.Low, Origin.Derived)
            : mode.Amps;

    private static Figure<Amps>? FromPower(Watts watts, Figure<QuantityRange<Volt>> voltage, RatingNotes notes)
    {
        if (voltage.Value.Low.Value <= 0)
            return null;

        // The lowest voltage gives the highest current: the safe side for a supply.
        var amps = watts / voltage.Value.Low;
        notes.Derive("current", $"{watts} ÷ {voltage.Value.Low} = {amps}");
        return new Figure<Amps>(amps, voltage.IsAssumed ? Origin.Assumed : Origin.Derived);
    }

    /// <summary>The working where a power is over 10 % away from what the current comes to at every voltage of the range; else null.</summary>
    private static string? PowerDisagrees(Watts watts, QuantityRange<Volt> volts, Amps amps)
    {
        const decimal allowed = 0.10m;
        var product = new QuantityRange<Watt>(volts.Low * amps, volts.High * amps);
        return watts < product.Low * (1 - allowed) || watts > product.High * (1 + allowed) ? $"{watts}, but {volts} × {amps} = {product}" : null;
    }

    private static Figure<T> Typed<T>(T? typed, T? printed, T common, string what, RatingNotes notes, Func<T, string> text)
        where T : struct
    {
        if (typed is { } one && printed is { } other && !EqualityComparer<T>.Default.Equals(one, other))
            notes.Disagree(what, $"typed {text(one)}, label {text(other)}", "The typed one counts.");
        return (typed ?? printed) is { } stated ? new Figure<T>(stated, Origin.Stated) : new Figure<T>(common, Origin.Assumed);
    }
}
