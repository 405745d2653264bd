namespace Loadmark.Storage.Gear;

/// <summary>What became of a change of the library.</summary>
/// <param name="State">Whether it was done.</param>
/// <param name="Gear">
/// The piece as it is kept now: after the change, or in a conflict as the other one left it; of a tag that is taken, the piece that
/// has it; of a removed piece, what it was. Null when there is no such piece.
/// </param>
public sealed record GearOutcome(GearState State, StoredGear? Gear);
