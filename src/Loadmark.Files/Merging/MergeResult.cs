using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>Two edits of one rig, brought together.</summary>
/// <param name="Rig">The rig with both; at each conflict with the side that was chosen.</param>
/// <param name="Conflicts">Where both changed the same to something else, in the order of the rig.</param>
/// <param name="Ours">All that our edit changed.</param>
/// <param name="Theirs">All that the other edit changed.</param>
public sealed record MergeResult(Rig Rig, ValueList<MergeConflict> Conflicts, ValueList<MergeChange> Ours, ValueList<MergeChange> Theirs);
