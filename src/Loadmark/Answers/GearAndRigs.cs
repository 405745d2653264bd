using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>A piece of gear, and the rigs that it means something to.</summary>
/// <param name="Gear">The piece.</param>
/// <param name="Rigs">The rigs, in the order in which they are told.</param>
internal sealed record GearAndRigs(LibraryGear Gear, IReadOnlyList<AffectedRig> Rigs);
