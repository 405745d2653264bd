using System.Text.Json;
using Loadmark.Shapes;
using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;

namespace Loadmark.Answers;

/// <summary>What became of a backup, in JSON.</summary>
internal static class CopyJson
{
    /// <summary>Writes a backup's report.</summary>
    public static void Write(Stream output, BackupReport report) => JsonFormat.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteString("file", report.File);
        json.WriteNumber("rigs", report.Contents.Rigs);
        json.WriteNumber("gear", report.Contents.Gear);
        json.WriteNumber("unreadableRigs", report.Contents.Unreadable);
        json.WriteNumber("bytes", report.Bytes);
        json.WriteEndObject();
    });

    /// <summary>Writes the report of restoring.</summary>
    public static void Write(Stream output, RestoreReport report) => JsonFormat.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteString("file", report.File);
        json.WriteNumber("rigs", report.Contents.Rigs);
        json.WriteNumber("gear", report.Contents.Gear);
        json.WriteNumber("unreadableRigs", report.Contents.Unreadable);
        json.WriteString("previous", report.Previous);
        json.WriteBoolean("wasOlder", report.WasOlder);
        json.WriteEndObject();
    });

    /// <summary>Writes why there is none.</summary>
    public static void Write(Stream output, StorageException fault) => JsonFormat.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteString("fault", JsonNamingPolicy.KebabCaseLower.ConvertName(fault.Fault.ToString()));
        json.WriteString("message", fault.Message);
        json.WriteEndObject();
    });
}
