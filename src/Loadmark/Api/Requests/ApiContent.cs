using Loadmark.Shapes;

namespace Loadmark.Api.Requests;

/// <summary>A body of a request or an answer.</summary>
/// <param name="MediaType">The body's media type.</param>
/// <param name="Value">What the body is.</param>
/// <param name="Example">The name of an example that is built in; null for none.</param>
internal sealed record ApiContent(string MediaType, ValueDescription Value, string? Example = null)
{
    /// <summary>The media type of JSON.</summary>
    public const string Json = "application/json";

    /// <summary>YAML (RFC 9512).</summary>
    public const string Yaml = "application/yaml";

    /// <summary>A table (RFC 4180).</summary>
    public const string Csv = "text/csv";

    /// <summary>The media type of plain text.</summary>
    public const string Plain = "text/plain";

    /// <summary>An object of JSON a line.</summary>
    public const string JsonLines = "application/x-ndjson";

    /// <summary>The media type of server-sent events.</summary>
    public const string Events = "text/event-stream";

    /// <summary>What a rig may come as. Generated clients take the first, and know how to write it.</summary>
    public static IReadOnlyList<ApiContent> Rig { get; } =
    [
        // Without a type: what may be an object or a text is "anything" to the generators, and a class with nothing in it when told in
        // full.
        new(
            Json,
            new ValueDescription(
                JsonKind.Any,
                "A rig file as an object of the same shape (schema/rig.schema.json), or a rig file's text, YAML or JSON, "
                + "in quotes as a text of JSON."),
            "board.rig.json"),
        Text(Yaml, "A rig file (docs/rig-file.md), in UTF-8.", "board.rig.yaml"),
    ];

    /// <summary>A body of JSON.</summary>
    /// <param name="value">What the body is written as.</param>
    /// <param name="example">The name of an example that is built in.</param>
    public static ApiContent Of<T>(JsonValue<T> value, string example) => new(Json, value.Description, example);

    /// <summary>A body of JSON with texts in it.</summary>
    /// <param name="shape">What the body is read as.</param>
    /// <param name="example">The name of an example that is built in.</param>
    public static ApiContent Of(BodyShape shape, string example) =>
        new(Json, new ValueDescription(JsonKind.Object, "") { Shape = shape }, example);

    /// <summary>A body that is a text.</summary>
    /// <param name="mediaType">The body's media type.</param>
    /// <param name="about">What the text is, in a sentence.</param>
    /// <param name="example">The name of an example that is built in; null for none.</param>
    public static ApiContent Text(string mediaType, string about, string? example = null) =>
        new(mediaType, new ValueDescription(JsonKind.Text, about), example);
}
