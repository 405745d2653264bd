namespace Loadmark.Files.Merging;

/// <summary>A place that two edits changed, each to something else.</summary>
/// <param name="Place">Where.</param>
/// <param name="Base">What stood there before both, as a rig file writes it; null when nothing did.</param>
/// <param name="Ours">What our edit put there; null when it took it away.</param>
/// <param name="Theirs">What the other edit put there; null when it took it away.</param>
public sealed record MergeConflict(MergePlace Place, string? Base, string? Ours, string? Theirs);
