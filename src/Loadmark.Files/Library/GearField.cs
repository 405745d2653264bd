namespace Loadmark.Files.Library;

/// <summary>One thing that is said of a piece of gear.</summary>
/// <param name="Key">The key of the rig file; of an outlet or a bank with its id: <c>outlet 5</c>.</param>
/// <param name="Value">What is said, as a rig file spells it, on one line.</param>
public sealed record GearField(string Key, string Value);
