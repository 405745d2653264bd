namespace Loadmark.Storage.Copies;

/// <summary>A backup that was written and checked.</summary>
/// <param name="File">Its full path.</param>
/// <param name="Rigs">How many rigs are in it; removed ones, which are in it too, are not counted.</param>
/// <param name="Unreadable">How many rigs have a text that was damaged before; they are in it as they are.</param>
/// <param name="Bytes">How large it is.</param>
public sealed record BackupReport(string File, int Rigs, int Unreadable, long Bytes);
