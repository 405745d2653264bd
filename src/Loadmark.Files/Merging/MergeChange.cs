namespace Loadmark.Files.Merging;

/// <summary>One thing that an edit changed.</summary>
/// <param name="Place">Where.</param>
/// <param name="Before">What stood there, as a rig file writes it; null when nothing did.</param>
/// <param name="After">What stands there after it; null when nothing does.</param>
public sealed record MergeChange(MergePlace Place, string? Before, string? After);
