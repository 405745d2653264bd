using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>
/// What an outlet can give once its label, the figures typed beside it, its supply's label and the defaults are joined.
/// </summary>
public sealed class OutletRating
{
    private OutletRating(OutletRef reference, string name, Supply supply, Outlet outlet)
    {
        Reference = reference;
        Supply = supply;
        Outlet = outlet;
        Name = name;
    }

    /// <summary>The outlet's supply and id.</summary>
    public OutletRef Reference { get; }

    /// <summary>The outlet's name: <c>brick/5</c>.</summary>
    public string Name { get; }

    /// <summary>The outlet's supply as the rig file has it.</summary>
    public Supply Supply { get; }

    /// <summary>The outlet as the rig file has it.</summary>
    public Outlet Outlet { get; }

    /// <summary>The outlet's settings, at least one; of unknown voltage where nothing is printed.</summary>
    public ImmutableArray<OutletMode> Modes { get; private init; }

    /// <summary>
    /// Direct or alternating current. Where nothing is printed, direct: derived where a polarity is printed, assumed up to 9 V, else not
    /// known.
    /// </summary>
    public Figure<SupplyForm> Form { get; private init; }

    /// <summary>
    /// Its polarity. Where nothing is printed, centre negative: assumed of an outlet for 9 V on a supply with several, which are made for
    /// pedals; of an adaptor, or at other voltages, not known.
    /// </summary>
    public Figure<Polarity> Polarity { get; private init; }

    /// <summary>The outlet's plug. Where nothing is printed, 5.5x2.1: assumed of an outlet for 9 V, else not known.</summary>
    public Figure<Plug> Plug { get; private init; }

    /// <summary>
    /// The voltage with nothing drawn: as measured, else as its label or its supply's prints it, of whatever setting that is. Null where
    /// nothing tells.
    /// </summary>
    public Figure<Volts>? NoLoad { get; private init; }

    /// <summary>Whether the outlet's return is its own; not so, assumed, where nothing is stated.</summary>
    public Figure<bool> Isolated { get; private init; }

    /// <summary>Names the return the outlet is on; outlets with the same name share it.</summary>
    public string Return { get; private init; } = "";

    /// <summary>Figures that do not agree with one another.</summary>
    public ImmutableArray<Disagreement> Disagreements { get; private init; } = [];

    /// <summary>Joins what is known of an outlet.</summary>
    public static OutletRating Of(Supply supply, Outlet outlet)
    {
        var notes = new RatingNotes();
        var label = outlet.Label;
        foreach (var conflict in label.Conflicts)
            notes.Disagree("power", conflict, "The current counts.");

        var isolated = (
            outlet.Isolated ?? label.Isolated.Value ?? (
                outlet.Bank is null ? supply.IsolatedAsStated : false)) is { } stated
            ? new Figure<bool>(stated, Origin.Stated)
            : new Figure<bool>(false, Origin.Assumed);
        var reference = new OutletRef(supply.Id, outlet.Id);
        var name = string.Concat(reference.Supply, "/", reference.Outlet);
        var modes = JoinModes(label.Modes, supply.Label?.Modes ?? []);
        var polarity = Typed(outlet.Polarity, label.Polarity.Value ?? supply.Label?.Polarity.Value, "polarity", notes, PolarityText.Of);
        var form = FormOf(supply, outlet, modes, polarity?.Value);
        var isOrdinary = modes.Any(static mode => mode.Volts is { } volts && Conventions.IsOrdinary(volts));
        return new OutletRating(reference, name, supply, outlet)
        {
            Modes = modes,
            Form = form,
            Polarity = polarity ?? Conventions.Common(
                Gear.Polarity.CentreNegative,
                form is { Value: SupplyForm.Alternating }
                    || (isOrdinary && supply.Outlets.Count > 1 && !IsUnclear(static plate => plate.Polarity, LabelTopics.Polarity))),
            Plug = Typed(outlet.Plug, label.Plug.Value ?? supply.Label?.Plug.Value, "plug", notes, static plug => plug.Name)
                ?? Conventions.Common(Gear.Plug.Common, isOrdinary && !IsUnclear(static plate => plate.Plug, LabelTopics.Plug)),
            NoLoad = outlet.NoLoad is { } measured ? new Figure<Volts>(measured, Origin.Measured)
                : (label.NoLoad ?? supply.Label?.NoLoad) is { } printed ? new Figure<Volts>(printed, Origin.Stated)
                : null,
            Isolated = isolated,
            Return = isolated.Value ? name : outlet.Bank is { } bank ? $"{supply.Id}, bank {bank}" : supply.Id,
            Disagreements = notes.Disagreements,
        };

        bool IsUnclear<T>(Func<Nameplate, Field<T>> field, LabelTopics topic)
            where T : struct => Conventions.IsUnclear(label, field, topic) || Conventions.IsUnclear(supply.Label, field, topic);
    }

    private static Figure<SupplyForm> FormOf(Supply supply, Outlet outlet, ImmutableArray<OutletMode> modes, Polarity? polarity)
    {
        if ((outlet.Label.Form.Value ?? supply.Label?.Form.Value) is { } stated)
            return new Figure<SupplyForm>(stated, Origin.Stated);

        var isUnclear = Conventions.IsUnclear(outlet.Label, static label => label.Form, LabelTopics.Form)
            || Conventions.IsUnclear(supply.Label, static label => label.Form, LabelTopics.Form);
        var isLow = modes.All(static mode => mode.Volts is { } volts && volts.High <= ClassDraw.CommonVoltage * (1 + VoltageBand.Fine));
        return Conventions.Form(isUnclear, polarity, isLow);
    }

    /// <summary>Joins what is known of an outlet of a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="reference">Which outlet.</param>
    /// <exception cref="ArgumentException">The rig has no such outlet.</exception>
    public static OutletRating Of(Rig rig, OutletRef reference)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(reference);
        var supply = rig.Supplies.Items.FirstOrDefault(supply => supply.Id == reference.Supply);
        var outlet = supply?.Outlets.Items.FirstOrDefault(outlet => outlet.Id == reference.Outlet);
        return outlet is null ? throw new ArgumentException($"The rig has no outlet {reference}.", nameof(reference)) : Of(supply!, outlet);
    }

    /// <summary>The voltages of the outlet's modes, of a range both ends, each once; empty where none is known.</summary>
    public IEnumerable<Volts> Settings =>
        Modes.Select(static mode => mode.Volts).OfType<QuantityRange<Volt>>().SelectMany(static volts => new[] { volts.Low, volts.High })
            .Distinct();

    /// <summary>
    /// Whether it may be set to <paramref name="setting"/>: a mode gives it, or a mode's voltage is not known.
    /// </summary>
    public bool CanBeSetTo(Volts setting)
    {
        foreach (var mode in Modes)
        {
            if (mode.Volts is not { } volts || volts.Contains(setting))
                return true;
        }

        return false;
    }

    /// <summary>The mode whose voltage is, or whose range holds, <paramref name="setting"/>; null when there is none.</summary>
    public OutletMode? ModeAt(Volts setting)
    {
        foreach (var mode in Modes)
        {
            if (mode.Volts is { } volts && volts.Contains(setting))
                return mode;
        }

        return null;
    }

    private static ImmutableArray<OutletMode> JoinModes(ImmutableArray<Mode> own, ImmutableArray<Mode> supplys)
    {
        var from = own.IsEmpty ? supplys : own;
        if (from.IsEmpty)
            return [default];

        var modes = ImmutableArray.CreateBuilder<OutletMode>(from.Length);
        foreach (var mode in from)
        {
            var twin = own.IsEmpty ? null : Twin(mode, supplys);
            var volts = mode.Volts ?? twin?.Volts;
            var watts = mode.Watts is { Origin: Origin.Stated } printed ? printed.Value : (Watts?)null;
            var limit = LimitOf(mode);
            if (limit is null && watts is { } power && volts is { High.Value: > 0 } at)
                limit = new Figure<Amps>(power / at.High, Origin.Derived);
            if (limit is null && twin is { } other)
            {
                limit = LimitOf(other);
                watts ??= other.Watts is { Origin: Origin.Stated } theirs ? theirs.Value : null;
            }

            var apparent = mode.VoltAmps ?? (mode is { Amps: null, Watts: null } ? twin?.VoltAmps : null);
            modes.Add(new OutletMode(volts, limit, watts) { VoltAmps = apparent is { Origin: Origin.Stated } said ? said.Value : null });
        }

        return modes.MoveToImmutable();
    }

    /// <summary>
    /// The current of a mode. From VA it is computed at the highest voltage, where it is lowest: the safe side for a supply.
    /// </summary>
    private static Figure<Amps>? LimitOf(Mode mode) =>
        mode is { Amps.Origin: Origin.Derived, Watts: null, VoltAmps: { Origin: Origin.Stated } apparent, Volts: { High.Value: > 0 } volts }
            ? new Figure<Amps>(apparent.Value / volts.High, Origin.Derived)
            : mode.Amps;

    /// <summary>What the supply's own label prints for the same voltage: where an outlet's label is short, it says the rest.</summary>
    private static Mode? Twin(Mode mode, ImmutableArray<Mode> supplys)
    {
        foreach (var candidate in supplys)
        {
            if (mode.Volts is null ? supplys.Length == 1 : candidate.Volts == mode.Volts)
                return candidate;
        }

        return null;
    }

    /// <summary>What is typed, else what is printed; null when neither is.</summary>
    private static Figure<T>? Typed<T>(T? typed, T? printed, string what, RatingNotes notes, Func<T, string> text)
        where T : struct
    {
        if (typed is { } one && printed is { } other && !EqualityComparer<T>.Default.Equals(one, other))
            notes.Disagree(what, $"typed {text(one)}, label {text(other)}", "The typed one counts.");
        return (typed ?? printed) is { } stated ? new Figure<T>(stated, Origin.Stated) : null;
    }
}
