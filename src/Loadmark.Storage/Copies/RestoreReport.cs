namespace Loadmark.Storage.Copies;

/// <summary>A backup that was put in the place of what was kept.</summary>
/// <param name="File">The backup's full path.</param>
/// <param name="Rigs">How many rigs are kept now.</param>
/// <param name="Unreadable">How many rigs have a text that was damaged when the backup was made.</param>
/// <param name="Previous">The file that what was kept before was copied to; null when nothing was kept before.</param>
/// <param name="WasOlder">Whether an older version of the program wrote it, so that it was brought forward.</param>
public sealed record RestoreReport(string File, int Rigs, int Unreadable, string? Previous, bool WasOlder);
