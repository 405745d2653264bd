namespace Loadmark.Workshop.Library;

/// <summary>How far the looking for rigs that a change means something to has come.</summary>
/// <param name="Done">How many rigs were looked at.</param>
/// <param name="Rigs">How many there are to look at.</param>
public sealed record AffectedProgress(int Done, int Rigs);
