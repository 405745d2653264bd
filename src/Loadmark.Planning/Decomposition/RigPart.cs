using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Decomposition;

/// <summary>A part of a rig that has nothing to do with the rest; or a whole rig.</summary>
/// <param name="Rig">A rig of its own: its loads and supplies, its share of the leads, the pinned feeds among them.</param>
/// <param name="Loads">How many loads are to be fed.</param>
internal sealed record RigPart(Rig Rig, int Loads);
