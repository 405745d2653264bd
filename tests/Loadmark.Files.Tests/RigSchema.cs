using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Tests;

/// <summary>The JSON Schema of rig files, written from the same table of keys that the reader goes by.</summary>
internal static class RigSchema
{
    /// <summary>The schema (JSON Schema, draft 7, which editors know best), with line ends of one character.</summary>
    public static string Write()
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
            json.WriteString("title", "Rig file");
            json.WriteString("description", "What draws, what gives, and what feeds what on an effects rig.");
            KeySchema.WriteTable(json, RigKeys.Rig);
            json.WriteStartObject("definitions");
            foreach (var table in RigKeys.Groups)
            {
                json.WriteStartObject(table.Name);
                KeySchema.WriteTable(json, table);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
