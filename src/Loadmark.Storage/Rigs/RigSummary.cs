namespace Loadmark.Storage.Rigs;

/// <summary>One line of the list of kept rigs.</summary>
/// <param name="Id">What the store knows the rig by; stays the same through every edit.</param>
/// <param name="Name">The rig's name as it is now.</param>
/// <param name="Changed">When the last change was made (UTC).</param>
/// <param name="Revision">Grows with every change.</param>
public sealed record RigSummary(Guid Id, string Name, DateTimeOffset Changed, long Revision);
