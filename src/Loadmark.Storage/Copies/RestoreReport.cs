namespace Loadmark.Storage.Copies;

/// <summary>A backup that was put in the place of what was kept.</summary>
/// <param name="File">The backup's full path.</param>
/// <param name="Contents">What is kept now.</param>
/// <param name="Previous">The file that what was kept before was copied to; null when nothing was kept before.</param>
/// <param name="WasOlder">Whether an older version of the program wrote it, so that it was brought forward.</param>
public sealed record RestoreReport(string File, CopyContents Contents, string? Previous, bool WasOlder);
