using Loadmark.Shapes;
using Loadmark.Workshop.Restoring;

namespace Loadmark.Answers;

/// <summary>What pictures of a sheet gave back, in JSON.</summary>
internal static class RestoredSheetJson
{
    /// <summary>Writes what was restored, or why nothing was.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="restored">What was found.</param>
    /// <param name="file">The file that it was written to; null where it was not.</param>
    public static void Write(Stream output, RestoredSheet restored, string? file) => JsonFormat.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteString("rig", restored.Reading?.Rig?.Name);
        json.WriteString("version", restored.Version);
        json.WriteString("file", file);
        if (file is null)
            json.WriteString("text", restored.Text);
        json.WriteNumber("codes", restored.Found?.Count ?? 0);
        json.WriteStartArray("found");
        foreach (var number in restored.Found?.Found ?? [])
            json.WriteNumberValue(number);
        json.WriteEndArray();
        json.WriteStartArray("missing");
        foreach (var number in restored.Found?.Missing ?? [])
            json.WriteNumberValue(number);
        json.WriteEndArray();
        json.WriteStartArray("errors");
        if (restored.Complaint is { } complaint)
            json.WriteStringValue(complaint);
        foreach (var fault in restored.Reading?.Errors ?? [])
            json.WriteStringValue($"{fault}");
        json.WriteEndArray();
        json.WriteEndObject();
    });
}
