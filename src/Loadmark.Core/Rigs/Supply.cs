using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Rigs;

/// <summary>A power unit with its outlets, as the rig file has it.</summary>
public sealed record Supply
{
    /// <summary>The name the rig knows it by, such as <c>brick</c>; unique among the rig's supplies.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// What the gear library says of it, where the rig file takes it from there; null when the rig file says all of it. As of
    /// <see cref="Load.FromLibrary"/>.
    /// </summary>
    public Supply? FromLibrary { get; init; }

    /// <summary>A name for people; null when it has none besides its id.</summary>
    public string? Name { get; init; }

    /// <summary>The reading of the supply's label; null when no label was typed.</summary>
    public Nameplate? Label { get; init; }

    /// <summary>Whether each outlet has a return of its own; null when not given, which is taken as no, the safe side.</summary>
    public bool? Isolated { get; init; }

    /// <summary>The same, or where it is not given what the label says; null where neither tells.</summary>
    public bool? IsolatedAsStated => Isolated ?? Label?.Isolated.Value;

    /// <summary>What the supply can give over all outlets; null when not given.</summary>
    public SupplyTotal? Total { get; init; }

    /// <summary>The supply's outlets, in the order of the file.</summary>
    public ValueList<Outlet> Outlets { get; init; }

    /// <summary>Groups of outlets with a limit of their own.</summary>
    public ValueList<Bank> Banks { get; init; }

    /// <summary>What the supply's outlets do when overloaded; null when not given, which is taken as a current limit.</summary>
    public OverloadWay? Overload { get; init; }

    /// <summary>Whether the supply holds its voltage whatever is drawn; null when not given.</summary>
    public bool? Regulated { get; init; }

    /// <summary>
    /// The board the supply belongs to: a plan feeds loads of that board from it, or of none, unless it is told otherwise. Null when not
    /// given: then it may feed any load. Of the rig, not of the gear: the gear library does not keep it.
    /// </summary>
    public string? Board { get; init; }

    /// <summary>Whether the supply is yet to be bought: nobody has it. Of the rig, not of the gear.</summary>
    public bool ToBuy { get; init; }

    /// <summary>The mains input typed beside the label, read like a label ("100-240 V"); null when none was.</summary>
    public Nameplate? Mains { get; init; }
}
