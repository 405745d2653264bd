using System.Text.Json;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Tests;

/// <summary>Writes the schema of keys.</summary>
internal static class KeySchema
{
    /// <summary>A number and then something, which is its unit; a bare number is what people forget the unit of.</summary>
    private const string FigurePattern = "^\\s*(\\+?\\s*[0-9.,]+\\s*[^0-9.,\\s]|[Aa][Ww][Gg])";

    private const string NumberPattern = "^\\s*\\+?\\s*[0-9.,]+(\\s*[^0-9.,\\s].*)?\\s*$";

    private const string SharePattern = "^\\s*[0-9]{0,2}([.,][0-9]*)?\\s*(%|[Pp]er ?cent)\\s*$";

    /// <summary>Writes type, properties and what is required of a group, into an object already begun.</summary>
    public static void WriteTable(Utf8JsonWriter json, KeyTable table)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        var required = table.Keys.Where(key => key is { IsRequired: true, Instead.Count: 0 }).ToList();
        if (required.Count > 0)
        {
            json.WriteStartArray("required");
            foreach (var key in required)
                json.WriteStringValue(key.Name);
            json.WriteEndArray();
        }

        foreach (var key in table.Keys.Where(static key => key is { IsRequired: true, Instead.Count: > 0 }))
        {
            json.WriteStartArray("anyOf");
            foreach (var name in (IEnumerable<string>)[key.Name, .. key.Instead])
            {
                json.WriteStartObject();
                WriteStrings(json, "required", [name]);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteStartObject("properties");
        foreach (var key in table.Keys)
        {
            json.WriteStartObject(key.Name);
            json.WriteString("description", key.Description);
            WriteValue(json, key);
            if (key.Examples.Count > 0)
                WriteStrings(json, "examples", key.Examples);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteValue(Utf8JsonWriter json, Key key)
    {
        switch (key.Form)
        {
            case ValueForm.Text:
                WriteTextTypes(json);
                break;
            case ValueForm.Figure:
                WriteStrings(json, "type", ["string", "null"]);
                json.WriteString("pattern", FigurePattern);
                break;
            case ValueForm.FigureOrNumber:
                WriteStrings(json, "type", ["number", "string", "null"]);
                json.WriteString("pattern", NumberPattern);
                break;
            case ValueForm.Word:
                WriteStrings(json, "enum", key.Words);
                break;
            case ValueForm.YesNo:
                json.WriteStartArray("enum");
                json.WriteBooleanValue(true);
                json.WriteBooleanValue(false);
                foreach (var word in (ReadOnlySpan<string>)["yes", "no", "on", "off"])
                    json.WriteStringValue(word);
                json.WriteEndArray();
                break;
            case ValueForm.Number:
                json.WriteString("type", "integer");
                json.WriteNumber("minimum", key.Least);
                json.WriteNumber("maximum", key.Most);
                break;
            case ValueForm.Share:
                WriteShare(json);
                break;
            case ValueForm.OneOrList:
                WriteOneOrList(json, key);
                break;
            case ValueForm.List:
                WriteStrings(json, "type", ["array", "null"]);
                json.WriteStartObject("items");
                WriteTextTypes(json);
                json.WriteEndObject();
                break;
            case ValueForm.GroupList:
                WriteStrings(json, "type", ["array", "null"]);
                json.WriteStartObject("items");
                WriteReference(json, key);
                json.WriteEndObject();
                break;
            default:
                WriteNamed(json, key);
                break;
        }
    }

    private static void WriteShare(Utf8JsonWriter json)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("pattern", SharePattern);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "number");
        json.WriteNumber("minimum", 0);
        json.WriteNumber("exclusiveMaximum", 1);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteOneOrList(Utf8JsonWriter json, Key key)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        WriteTextTypes(json);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "array");
        json.WriteNumber("minItems", key.Least);
        json.WriteStartObject("items");
        WriteTextTypes(json);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteNamed(Utf8JsonWriter json, Key key)
    {
        var textToo = key.Form == ValueForm.NamedTextsOrGroups;
        WriteStrings(json, "type", key is { IsRequired: true, Instead.Count: 0 } ? ["object"] : ["object", "null"]);
        if (key.Least > 0)
            json.WriteNumber("minProperties", key.Least);
        json.WriteStartObject("additionalProperties");
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        WriteReference(json, key);
        json.WriteEndObject();
        json.WriteStartObject();
        WriteStrings(json, "type", textToo ? key.MayBeEmpty ? ["string", "null"] : ["string"] : ["null"]);
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteReference(Utf8JsonWriter json, Key key) =>
        json.WriteString(
            "$ref", $"#/definitions/{key.Group?.Name ?? throw new InvalidOperationException($"The key '{key.Name}' has no group.")}");

    /// <summary>A text may look like a number: the program takes both for the text they are.</summary>
    private static void WriteTextTypes(Utf8JsonWriter json) => WriteStrings(json, "type", ["string", "number"]);

    private static void WriteStrings(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
