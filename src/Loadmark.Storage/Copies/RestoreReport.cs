namespace Loadmark.Storage.Copies;

/// <summary>A backup that was put in the place of what was kept.</summary>
/// <param name="File">The backup's full path.</param>
/// <param name="Contents">What is kept now.</param>
/// <param name="Previous">The file that has what was kept before; null when nothing was kept before.</param>
/// <param name="WasOlder">Whether an older version of the program wrote it, so that it was brought forward.</param>
/// <param name="WasDamaged">Whether what was there before could not be opened, so that the file itself was set aside.</param>
public sealed record RestoreReport(string File, CopyContents Contents, string? Previous, bool WasOlder, bool WasDamaged);
