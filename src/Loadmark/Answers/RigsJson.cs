using System.Text.Json;
using Loadmark.Core.Checks;
using Loadmark.Shapes;
using Loadmark.Storage.Rigs;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>Writes rigs that are kept as JSON.</summary>
internal static class RigsJson
{
    /// <summary>Writes a list and a line end.</summary>
    public static void Write(Stream output, IReadOnlyList<RigSummary> rigs) => JsonFigures.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteList("rigs", rigs, static (writer, rig) =>
        {
            writer.WriteStartObject();
            WriteRig(writer, rig);
            writer.WriteString("changed", GearJson.Moment(rig.Changed));
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    });

    /// <summary>Writes the rigs that a piece of gear means something to, and a line end.</summary>
    public static void Write(Stream output, ShelfGear gear, IReadOnlyList<AffectedRig> rigs) => JsonFigures.WriteLine(output, json =>
    {
        json.WriteStartObject();
        GearJson.WriteGear(json, gear);
        json.WriteList("affected", rigs, Write);
        json.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter json, AffectedRig rig)
    {
        json.WriteStartObject();
        WriteRig(json, rig.Rig);
        json.WriteBoolean("takesFromLibrary", rig.TakesFromLibrary);
        GearJson.Write(json, rig.Differences);
        json.WriteString("verdictBefore", Word(rig.Before));
        json.WriteString("verdictAfter", Word(rig.After));
        json.WriteList("newFindings", AffectedFindings.New(rig), CheckJson.Finding.Write);
        json.WriteString("because", rig.Problem);
        json.WriteEndObject();
    }

    private static void WriteRig(Utf8JsonWriter json, RigSummary rig)
    {
        json.WriteString("id", rig.Id);
        json.WriteString("rig", rig.Name);
        json.WriteNumber("revision", rig.Revision);
    }

    private static string? Word(CheckResult? result) => result is null ? null : JsonWords.Of(result.Verdict);
}
