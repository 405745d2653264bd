using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>What a supply can give in all and what mains it takes, from its typed figures and its label.</summary>
public sealed class SupplyRating
{
    private SupplyRating(Supply supply) => Supply = supply;

    /// <summary>The supply as the rig file has it.</summary>
    public Supply Supply { get; }

    /// <summary>What the supply can give over all outlets: typed, else as its label prints; null when nothing tells.</summary>
    public SupplyTotal? Total { get; private init; }

    /// <summary>The mains input: typed, else as its label prints; null when nothing tells.</summary>
    public MainsInput? Mains { get; private init; }

    /// <summary>
    /// Whether it holds its voltage: as stated; yes where it takes mains from 100 V to 240 V, which only switched-mode
    /// supplies do (common practice, no source); null when nothing tells. A narrower range does not tell, for "115/230 V"
    /// may be a transformer with a switch.
    /// </summary>
    public bool? Regulated { get; private init; }

    /// <summary>
    /// Whether it may be a plain transformer adaptor, which stands well over its printed voltage while little is drawn: nothing tells
    /// whether it is regulated, and its label shows one nominal mains voltage or one frequency, as transformers are made for, or a figure
    /// in VA, as they are rated in, and no sign of switching (common practice, no source). A supply whose outlets are stated to be isolated
    /// is none: each has a regulator of its own.
    /// </summary>
    public bool MayBeUnregulated { get; private init; }

    /// <summary>Figures that do not agree with one another.</summary>
    public ImmutableArray<Disagreement> Disagreements { get; private init; } = [];

    /// <summary>Joins what is known of a supply.</summary>
    public static SupplyRating Of(Supply supply)
    {
        var notes = new RatingNotes();
        var mains = JoinMains(supply.Mains?.Mains, supply.Label?.Mains, notes);
        var printed = PrintedTotal(supply);
        if (supply.Total is { } typed && printed is { } label && (Differ(typed.Amps, label.Amps) || Differ(typed.Watts, label.Watts)))
            notes.Disagree("total", $"typed {typed}, label {label}", "The typed figure counts.");

        var regulated = supply.Regulated ?? supply.Label?.Regulated.Value ?? PrintedRegulation(supply);
        var wide = mains is { Choices.IsEmpty: true, Volts: { } volts } && volts.Low.Value <= 100m && volts.High.Value >= 240m;
        return new SupplyRating(supply)
        {
            Total = supply.Total ?? printed,
            Mains = mains,
            Regulated = regulated ?? (wide ? true : null),
            MayBeUnregulated = regulated is null && !wide && (LooksLikeTransformer(mains) || PrintsVoltAmps(supply))
                && !(supply.Outlets.Count > 1 && supply.IsolatedAsStated is true),
            Disagreements = notes.Disagreements,
        };
    }

    /// <summary>Whether an input is printed for one nominal voltage or for one frequency; 220-240 V is one nominal voltage.</summary>
    private static bool LooksLikeTransformer(MainsInput? mains)
    {
        const decimal oneNominal = 1.2m;
        return mains is { Hertz.IsSingle: true } || mains is { Choices.IsEmpty: false }
            || (mains?.Volts is { Low.Value: > 0 } volts && volts.High <= volts.Low * oneNominal);
    }

    /// <summary>Whether the supply's label, one of its outlets' or the typed input has a figure in VA.</summary>
    private static bool PrintsVoltAmps(Supply supply)
    {
        if (supply.Label is { PrintsVoltAmps: true } || supply.Mains is { PrintsVoltAmps: true })
            return true;
        foreach (var outlet in supply.Outlets)
        {
            if (outlet.Label.PrintsVoltAmps)
                return true;
        }

        return false;
    }

    private static bool Differ<T>(T? typed, T? label)
        where T : struct =>
        typed is { } one && label is { } other && !EqualityComparer<T>.Default.Equals(one, other);

    /// <summary>The typed mains input, with what it leaves out taken from the label.</summary>
    private static MainsInput? JoinMains(MainsInput? typed, MainsInput? label, RatingNotes notes)
    {
        if (typed is null || label is null)
            return typed ?? label;
        if (Differ(typed.Volts, label.Volts))
            notes.Disagree("mains voltage", $"typed {typed.Volts}, label {label.Volts}", "The typed figure counts.");
        if (Differ(typed.Hertz, label.Hertz))
            notes.Disagree("mains frequency", $"typed {typed.Hertz}, label {label.Hertz}", "The typed figure counts.");
        return typed with { Volts = typed.Volts ?? label.Volts, Hertz = typed.Hertz ?? label.Hertz };
    }

    /// <summary>What the labels of the supply's outlets say of regulation; null when none says.</summary>
    private static bool? PrintedRegulation(Supply supply)
    {
        foreach (var outlet in supply.Outlets)
        {
            if (outlet.Label.Regulated.Value is { } printed)
                return printed;
        }

        return null;
    }

    /// <summary>
    /// A label on the supply itself that prints one output speaks for all its outlets together: in watts where it
    /// prints watts, else in amps. With one outlet it is that outlet's limit and nothing more.
    /// </summary>
    private static SupplyTotal? PrintedTotal(Supply supply)
    {
        if (supply.Label?.Total is { } printed)
            return printed;
        if (supply.Outlets.Count < 2 || supply.Label is not { Modes: [var mode] })
            return null;
        if (mode.Watts is { Origin: Origin.Stated } watts)
            return new SupplyTotal(null, watts.Value);
        return mode.Amps is { } amps ? new SupplyTotal(amps.Value, null) : null;
    }
}
