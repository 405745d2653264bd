namespace Loadmark.Storage.Gear;

/// <summary>One change of a piece of gear.</summary>
/// <param name="Number">Counts up from 1, the adding; the piece's revision after the change.</param>
/// <param name="What">What it did, for people.</param>
/// <param name="Made">When (UTC).</param>
/// <param name="Before">What was said of the piece before; null before it was added, and while it was removed.</param>
/// <param name="After">What was said of it after; null when the change removed it.</param>
public sealed record GearChange(long Number, string What, DateTimeOffset Made, GearContent? Before, GearContent? After);
