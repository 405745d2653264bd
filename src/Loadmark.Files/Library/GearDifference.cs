namespace Loadmark.Files.Library;

/// <summary>One thing that is said otherwise of a piece of gear than before.</summary>
/// <param name="Key">The key of the rig file; of an outlet or a bank with its id: <c>outlet 5</c>.</param>
/// <param name="Before">What was said; null when nothing was.</param>
/// <param name="After">What is said; null when nothing is.</param>
public sealed record GearDifference(string Key, string? Before, string? After);
