using Loadmark.Core.Rigs;

namespace Loadmark.Storage.Copies;

/// <summary>What could still be read of a damaged database.</summary>
/// <param name="File">The file that it is in now.</param>
/// <param name="Aside">The name that the damaged file has now; null where it was left where it is.</param>
/// <param name="Contents">What was saved.</param>
/// <param name="Lost">What was not, each in words; empty where everything was.</param>
/// <param name="FromBackup">What was taken from an automatic backup instead, each in words with the time of the backup.</param>
public sealed record SalvageReport(
    string File, string? Aside, CopyContents Contents, ValueList<string> Lost, ValueList<string> FromBackup);
