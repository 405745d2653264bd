using System.Globalization;
using System.Text.Json;
using Loadmark.Shapes;
using Loadmark.Storage.Rigs;

namespace Loadmark.Api.Keeping;

/// <summary>Writes kept rigs as JSON.</summary>
internal static class KeptRigJson
{
    /// <summary>Writes the list.</summary>
    public static void Write(Stream output, IReadOnlyList<RigSummary> rigs) => JsonFigures.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteList("rigs", rigs, static (json, rig) =>
        {
            json.WriteStartObject();
            WriteHead(json, rig.Id, rig.Name, rig.Revision, rig.Changed);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    });

    /// <summary>Writes one rig and a line end.</summary>
    public static void Write(Stream output, StoredRig rig) => JsonFigures.WriteLine(output, json => Write(json, rig));

    /// <summary>Writes one rig as an object.</summary>
    public static void Write(Utf8JsonWriter json, StoredRig rig)
    {
        json.WriteStartObject();
        WriteHead(json, rig.Id, rig.Name, rig.Revision, rig.Changed);
        json.WriteString("text", rig.Text);
        json.WriteString("undo", rig.UndoWhat);
        json.WriteString("redo", rig.RedoWhat);
        json.WriteEndObject();
    }

    private static void WriteHead(Utf8JsonWriter json, Guid id, string name, long revision, DateTimeOffset changed)
    {
        json.WriteString("id", id);
        json.WriteString("name", name);
        json.WriteNumber("revision", revision);
        json.WriteString("changed", changed.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture));
    }
}
