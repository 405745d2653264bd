using System.Text.Json.Nodes;
using NJsonSchema;

namespace Loadmark.Tests.Http;

/// <summary>The OpenAPI document as an independent validator (NJsonSchema) reads it: keys that a shape does not name are refused.</summary>
public sealed class DocumentShapes
{
    private readonly Dictionary<string, JsonSchema> _shapes;

    private DocumentShapes(JsonNode document, Dictionary<string, JsonSchema> shapes) => (Document, _shapes) = (document, shapes);

    /// <summary>The document.</summary>
    public JsonNode Document { get; }

    /// <summary>Each operation with its path and method.</summary>
    public IEnumerable<(string Path, string Method, JsonObject Operation)> Operations =>
        from path in Document["paths"]!.AsObject()
        from method in path.Value!.AsObject()
        select (path.Key, method.Key, method.Value!.AsObject());

    /// <summary>Reads a document.</summary>
    public static async Task<DocumentShapes> OfAsync(string text)
    {
        var document = JsonNode.Parse(text)!;
        var schemas = document["components"]!["schemas"]!.AsObject();
        var closed = JsonNode.Parse(schemas.ToJsonString().Replace("#/components/schemas/", "#/definitions/", StringComparison.Ordinal))!.AsObject();
        foreach (var schema in closed)
            Close(schema.Value);
        var shapes = new Dictionary<string, JsonSchema>(StringComparer.Ordinal);
        var names = closed.Select(static schema => schema.Key).ToList();
        var whole = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject(names.Select(static name => KeyValuePair.Create(name, (JsonNode?)new JsonObject { ["$ref"] = "#/definitions/" + name }))),
            ["definitions"] = closed,
        };
        var read = await JsonSchema.FromJsonAsync(whole.ToJsonString(), TestContext.Current.CancellationToken);
        foreach (var name in names)
            shapes[name] = read.Properties[name].ActualSchema;
        return new DocumentShapes(document, shapes);
    }

    /// <summary>Fails where a text is not JSON of a shape.</summary>
    public void AssertFits(string shape, string json)
    {
        var faults = _shapes[shape].Validate(json);
        Assert.True(faults.Count == 0, $"{shape}: {string.Join("; ", faults.Take(5))} in {json[..Math.Min(json.Length, 400)]}");
    }

    /// <summary>The shape that an operation answers a status with, in a media type.</summary>
    public string ShapeOf(string path, string method, int status, string mediaType) =>
        Document["paths"]![path]![method]!["responses"]![status.ToString()]!["content"]![mediaType]!["schema"]!["$ref"]!.GetValue<string>().Split('/')[^1];

    private static void Close(JsonNode? node)
    {
        if (node is JsonObject schema)
        {
            if (schema["properties"] is JsonObject && schema["additionalProperties"] is null)
                schema["additionalProperties"] = false;
            foreach (var inner in schema.ToList())
                Close(inner.Value);
        }
        else if (node is JsonArray list)
        {
            foreach (var inner in list)
                Close(inner);
        }
    }
}
