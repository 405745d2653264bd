using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Library;

/// <summary>One piece of gear: a load, a supply or a lead. Exactly one of the three is there.</summary>
public sealed record GearPiece
{
    private GearPiece()
    {
    }

    /// <summary>The load; null when it is none.</summary>
    public Load? Load { get; private init; }

    /// <summary>The supply; null when it is none.</summary>
    public Supply? Supply { get; private init; }

    /// <summary>The lead; null when it is none.</summary>
    public Lead? Lead { get; private init; }

    /// <summary>Whether the piece is a load, a supply or a lead.</summary>
    public GearKind Kind => Load is not null ? GearKind.Load : Supply is not null ? GearKind.Supply : GearKind.Lead;

    /// <summary>The tag that a rig knows it by.</summary>
    public string Tag => Load?.Id ?? Supply?.Id ?? Lead!.Id;

    /// <summary>The piece's name for people; empty when it has none.</summary>
    public string Name => Load?.Name ?? Supply?.Name ?? "";

    /// <summary>
    /// What is printed on it, on one line; of a supply without a label what is printed at its first outlet. Empty when that is not known.
    /// </summary>
    public string Label
    {
        get
        {
            var label = Load?.Label ?? Supply?.Label ?? (Supply?.Outlets.Count > 0 ? Supply.Outlets[0].Label : null);
            return (label?.Text ?? "").ReplaceLineEndings(" ").Replace('\0', ' ').Trim();
        }
    }

    /// <summary>A load, with all of its figures its own; the board that it is on in a rig is none of them.</summary>
    /// <param name="load">The load.</param>
    public static GearPiece Of(Load load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return new GearPiece { Load = load with { FromLibrary = null, Board = null } };
    }

    /// <summary>
    /// A supply, with all of its figures its own; the board that it is on in a rig, and whether it is yet to be bought, are none of them.
    /// </summary>
    /// <param name="supply">The supply.</param>
    public static GearPiece Of(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return new GearPiece { Supply = supply with { FromLibrary = null, Board = null, ToBuy = false } };
    }

    /// <summary>A lead as a piece of gear.</summary>
    /// <param name="lead">The lead.</param>
    public static GearPiece Of(Lead lead)
    {
        ArgumentNullException.ThrowIfNull(lead);
        return new GearPiece { Lead = lead with { ToBuy = false } };
    }

    /// <summary>Everything that a rig has, loads first.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<GearPiece> AllOf(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return [.. rig.Loads.Items.Select(Of), .. rig.Supplies.Items.Select(Of), .. rig.Leads.Items.Select(Of)];
    }
}
