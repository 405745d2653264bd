using Loadmark.Shapes;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>What became of gear that was to be taken into the library, or out of it, as JSON.</summary>
internal static class ImportJson
{
    private static JsonShape<TakenRow> Row { get; } = new JsonShape<TakenRow>("GearRow", "One piece of the file.")
        .Count(
            "line", static taken => taken.Row.Line > 0 ? taken.Row.Line : null,
            "The line of the file, from 1; null where it is not of a file.", Presence.OrNull)
        .Word("kind", static taken => taken.Row.Kind, JsonWords.Of, "What sort of thing it is; null where that cannot be told.")
        .Text("tag", static taken => taken.Row.Tag, "Its tag as typed; empty where it has none.")
        .Word("state", static taken => taken.Row.State, JsonWords.Of, "What it is to the library.")
        .Flag("taken", static taken => taken.IsTaken, "Whether it was taken.")
        .Include(GearJson.Differences, static taken => taken.Row.Differences)
        .Text("because", static taken => taken.Row.Refusal, "Why it cannot be taken; null where it can.", Presence.OrNull);

    /// <summary>What became of a file.</summary>
    public static JsonShape<ImportedGear> Taken { get; } = new JsonShape<ImportedGear>(
            "GearTaken", "What became of a file of gear, or would become.")
        .Count("added", static file => file.Result.Added.Length, "Pieces that are new in the library now.")
        .Count("changed", static file => file.Result.Changed.Length, "Pieces of which the library says something else now.")
        .Count(
            "left", static file => file.Result.Left.Length,
            "Pieces of which it says something else than the file, and that were left as they are.")
        .Count("same", static file => file.Count(ImportState.Same), "Pieces of which it says all of it already.")
        .Count("refused", static file => file.Count(ImportState.Refused), "Pieces that cannot be taken.")
        .Count(
            "overtaken", static file => file.Result.Overtaken.Length,
            "Pieces that somebody else changed in between; they were not taken.")
        .List(
            "rows", static file => file.Preview.Rows.Select(row => new TakenRow(row, file.Took(row))), Row,
            "The pieces, in the order of the file.")
        .Texts("leftOut", static file => file.LeftOut, "Columns of a table that are not taken, each with why.");

    /// <summary>Writes the rows and a line end.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="preview">The rows.</param>
    /// <param name="result">What was done with them.</param>
    /// <param name="leftOut">The columns that were not taken, each with why.</param>
    public static void Write(Stream output, ImportPreview preview, ImportResult result, IReadOnlyList<string> leftOut) =>
        JsonFormat.WriteLine(output, Taken, new ImportedGear(preview, result, leftOut));

    /// <summary>Writes what was exported and a line end.</summary>
    public static void WriteExport(Stream output, string file, int count) => JsonFormat.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteString("file", file);
        json.WriteNumber("gear", count);
        json.WriteEndObject();
    });
}
