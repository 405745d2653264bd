using System.Text.Json;
using Loadmark.Shapes;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>Writes what became of gear that was to be taken into the library as JSON.</summary>
internal static class ImportJson
{
    /// <summary>Writes the rows and a line end.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="preview">The rows.</param>
    /// <param name="result">What was done with them.</param>
    /// <param name="leftOut">The columns that were not taken, each with why.</param>
    public static void Write(Stream output, ImportPreview preview, ImportResult result, IReadOnlyList<string> leftOut) => JsonFigures.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteNumber("added", result.Added.Length);
        json.WriteNumber("changed", result.Changed.Length);
        json.WriteNumber("left", result.Left.Length);
        json.WriteNumber("same", preview.Rows.Count(static row => row.State == ImportState.Same));
        json.WriteNumber("refused", preview.Rows.Count(static row => row.State == ImportState.Refused));
        json.WriteNumber("overtaken", result.Overtaken.Length);
        json.WriteList("rows", preview.Rows, (writer, row) => Write(writer, row, result));
        json.WriteTexts("leftOut", leftOut);
        json.WriteEndObject();
    });

    /// <summary>Writes what was exported and a line end.</summary>
    public static void WriteExport(Stream output, string file, int count) => JsonFigures.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteString("file", file);
        json.WriteNumber("gear", count);
        json.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter json, ImportRow row, ImportResult result)
    {
        json.WriteStartObject();
        if (row.Line > 0)
            json.WriteNumber("line", row.Line);
        else
            json.WriteNull("line");
        json.WriteString("kind", row.Kind is { } kind ? JsonWords.Of(kind) : null);
        json.WriteString("tag", row.Tag);
        json.WriteString("state", row.State switch
        {
            ImportState.New => "new",
            ImportState.Same => "same",
            ImportState.Differs => "differs",
            _ => "refused",
        });
        json.WriteBoolean("taken", result.Added.Contains(row) || result.Changed.Contains(row));
        GearJson.Write(json, row.Differences);
        json.WriteString("because", row.Refusal);
        json.WriteEndObject();
    }
}
