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
        json.WriteBoolean("wasDamaged", report.WasDamaged);
        json.WriteEndObject();
    });

    /// <summary>Writes the automatic backups, the last one first.</summary>
    public static void Write(Stream output, IReadOnlyList<KeptCopy> copies) => JsonFormat.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("backups");
        foreach (var copy in copies)
        {
            json.WriteStartObject();
            json.WriteString("file", copy.File);
            json.WriteString("made", copy.Made);
            json.WriteString("reason", JsonNamingPolicy.KebabCaseLower.ConvertName(copy.Reason.ToString()));
            json.WriteNumber("bytes", copy.Bytes);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });

    /// <summary>Writes the report of salvaging.</summary>
    public static void Write(Stream output, SalvageReport report) => JsonFormat.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteString("file", report.File);
        json.WriteString("aside", report.Aside);
        json.WriteNumber("rigs", report.Contents.Rigs);
        json.WriteNumber("gear", report.Contents.Gear);
        WriteWords(json, "lost", report.Lost.Items);
        WriteWords(json, "fromBackup", report.FromBackup.Items);
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

    private static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
