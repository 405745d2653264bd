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

    /// <summary>
    /// Whether it takes direct or alternating current. Where nothing is printed, direct: derived where a polarity is printed, assumed for
    /// an ordinary pedal of 9 V, else not known.
    /// </summary>
    public Figure<SupplyForm> Form { get; private init; }

    /// <summary>
    /// Whether the load's label says that either kind of current suits it ("9 V AC/DC"), and nothing typed says otherwise.
    /// </summary>
    public bool TakesEitherForm => Load.Voltage?.Form.Value is null && Load.Label?.Form.State == FieldState.Ambiguous;

    /// <summary>Whether the load's current can be read in several ways and the highest of them stands in.</summary>
    public bool DrawIsUnclear =>
        Load.Run is null && StandIn is null && Rated is { IsAssumed: true } && Load.Label?.AmbiguousAmps.State == FieldState.Ambiguous;

    /// <summary>
    /// Whether it draws another current at another of its printed voltages, as far as its label tells. Costs a rating at
    /// each of them.
    /// </summary>
    public bool DrawVaries
    {
        get
        {
            if (!FollowsVoltage)
                return false;

            var high = Of(Load, Voltage.Value.High).Running;
            return Of(Load, Voltage.Value.Low).Running != high
                || (Load.Label?.Modes.Any(mode => mode.Volts is { } volts && Of(Load, volts.Low).Running != high) ?? false);
        }
    }

    /// <summary>Whether the current the load draws depends on which of its printed voltages it is fed.</summary>
    internal bool FollowsVoltage => Load.Current is null && Load.Run is null
        && (Load.Label is { Modes.Length: > 1 } || Voltage.Value is { IsSingle: false });

    /// <summary>
    /// The lowest and the highest voltage it is printed for; not known, with 9 V to compute with, where nothing is printed.
    /// </summary>
    public Figure<QuantityRange<Volt>> Voltage { get; private init; }

    /// <summary>The printed, derived or assumed current; null when nothing tells.</summary>
    public Figure<Amps>? Rated { get; private init; }

    /// <summary>What the load draws when it runs: measured if that is given, else the rated current; null when nothing tells.</summary>
    public Figure<Amps>? Running { get; private init; }

    /// <summary>
    /// What the load draws while it starts: as given, else the running current; never less than that. Null when nothing tells.
    /// </summary>
    public Figure<Amps>? Starting { get; private init; }

    /// <summary>How long starting takes; null when not given.</summary>
    public Seconds? StartDuration => Load.Start?.Duration;

    /// <summary>Whether a starting current was given, so that <see cref="Starting"/> is more than the running one repeated.</summary>
    public bool StartIsGiven => Load.Start is not null;

    /// <summary>The class whose figures stand in for a missing current; null when none had to.</summary>
    public ClassDraw? StandIn { get; private init; }

    /// <summary>
    /// The polarity it wants. Where nothing is printed, centre negative: assumed for an ordinary pedal of 9 V, else not known.
    /// </summary>
    public Figure<Polarity> Polarity { get; private init; }

    /// <summary>The plug the load takes. Where nothing is printed, 5.5x2.1: assumed for an ordinary pedal of 9 V, else not known.</summary>
    public Figure<Plug> Plug { get; private init; }

    /// <summary>
    /// The side of its supply that is its ground. Where nothing is typed or printed, negative: assumed, but not known of a load that is
    /// centre positive, which old circuits with positive ground are.
    /// </summary>
    public Figure<GroundSide> Ground { get; private init; }

    /// <summary>
    /// Whether nothing tells its voltage, its kind of current or its polarity: whoever feeds it has to read its label first.
    /// </summary>
    public bool IsBlank => !Voltage.IsKnown && !Form.IsKnown && !Polarity.IsKnown;

    /// <summary>Whether the load is digital: true, false, or null when its kind does not tell.</summary>
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

    /// <summary>The figures that were computed because they are not printed, each with its arithmetic.</summary>
    public ImmutableArray<Derivation> Derivations { get; private init; } = [];

    /// <summary>Joins what is known of a load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="fed">
    /// The voltage it is fed, where that is known: a label with a current for each voltage, or with watts, then gives the
    /// current at that voltage. Null gives the highest current it may draw at any printed voltage, the safe side.
    /// </param>
    public static LoadRating Of(Load load, Volts? fed = null)
    {
        var notes = new RatingNotes();
        var voltage = ReadVoltage(load, notes);
        var rated = RatedDraw.Of(load, voltage, fed, notes);

        ClassDraw? standIn = null;
        if (rated is null && load.Kind is { } kind && ClassDraw.Of(kind.Class) is { } figures)
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

        var isOrdinary = voltage.IsKnown && Conventions.IsOrdinary(voltage.Value);
        var form = ReadForm(load, isOrdinary, notes);
        var polarity = ReadPolarity(load, form, isOrdinary, notes);
        return new LoadRating(load)
        {
            Form = form,
            Voltage = voltage,
            Rated = rated,
            Running = running,
            Starting = starting,
            StandIn = load.Run is null ? standIn : null,
            Polarity = polarity,
            Plug = ReadPlug(load, isOrdinary, notes),
            Ground = ReadGround(load, polarity, notes),
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
            : new Figure<QuantityRange<Volt>>(QuantityRange<Volt>.Single(ClassDraw.CommonVoltage), Origin.Unknown);
    }

    private static Figure<SupplyForm> ReadForm(Load load, bool isOrdinary, RatingNotes notes)
    {
        var stated = Typed(
            load.Voltage?.Form.Value, load.Label?.Form.Value, "kind of current", notes, static form => form == SupplyForm.Direct
                ? "d.c."
                : "a.c.");
        if (stated is { } figure)
            return figure;

        // A load for either kind takes direct current too.
        var takesEither = load.Label?.Form.State == FieldState.Ambiguous;
        return takesEither
            ? new Figure<SupplyForm>(SupplyForm.Direct, Origin.Assumed)
            : Conventions.Form(
                Conventions.IsUnclear(load.Label, static label => label.Form, LabelTopics.Form),
                load.Polarity ?? load.Label?.Polarity.Value,
                isOrdinary);
    }

    private static Figure<Polarity> ReadPolarity(Load load, Figure<SupplyForm> form, bool isOrdinary, RatingNotes notes)
    {
        if (Typed(load.Polarity, load.Label?.Polarity.Value, "polarity", notes, PolarityText.Of) is { } stated)
            return stated;

        // What takes alternating current takes it either way round.
        var takesAlternating = form is { Value: SupplyForm.Alternating } || load.Label?.Form.State == FieldState.Ambiguous;
        var isUnclear = Conventions.IsUnclear(load.Label, static label => label.Polarity, LabelTopics.Polarity);
        return Conventions.Common(Gear.Polarity.CentreNegative, takesAlternating || (isOrdinary && !isUnclear));
    }

    private static Figure<Plug> ReadPlug(Load load, bool isOrdinary, RatingNotes notes) =>
        Typed(load.Plug, load.Label?.Plug.Value, "plug", notes, static plug => plug.Name)
        ?? Conventions.Common(
            Gear.Plug.Common, isOrdinary && !Conventions.IsUnclear(load.Label, static label => label.Plug, LabelTopics.Plug));

    private static Figure<GroundSide> ReadGround(Load load, Figure<Polarity> polarity, RatingNotes notes) =>
        Typed(load.Ground, load.Label?.Ground.Value, "ground", notes, static side => side == GroundSide.Positive ? "positive" : "negative")
        ?? Conventions.Common(
            GroundSide.Negative,
            polarity.Value == Gear.Polarity.CentreNegative
                && !Conventions.IsUnclear(load.Label, static label => label.Ground, LabelTopics.Ground));

    /// <summary>What is typed, else what is printed; null when neither is.</summary>
    private static Figure<T>? Typed<T>(T? typed, T? printed, string what, RatingNotes notes, Func<T, string> text)
        where T : struct
    {
        if (typed is { } one && printed is { } other && !EqualityComparer<T>.Default.Equals(one, other))
            notes.Disagree(what, $"typed {text(one)}, label {text(other)}", "The typed one counts.");
        return (typed ?? printed) is { } stated ? new Figure<T>(stated, Origin.Stated) : null;
    }
}
