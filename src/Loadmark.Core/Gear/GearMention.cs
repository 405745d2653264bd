namespace Loadmark.Core.Gear;

/// <summary>A piece of gear that a rig has among its loads, supplies or leads.</summary>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Tag">The id that the rig knows it by.</param>
public sealed record GearMention(GearKind Kind, string Tag);
