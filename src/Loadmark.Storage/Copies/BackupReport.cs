namespace Loadmark.Storage.Copies;

/// <summary>A backup that was written and checked.</summary>
/// <param name="File">The backup's full path.</param>
/// <param name="Contents">What is in it.</param>
/// <param name="Bytes">How large it is.</param>
public sealed record BackupReport(string File, CopyContents Contents, long Bytes);
