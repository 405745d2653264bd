namespace Loadmark.Api.Requests;

/// <summary>A body of a request or an answer.</summary>
/// <param name="MediaType">The body's media type.</param>
/// <param name="Shape">The name of its shape in the document.</param>
/// <param name="Example">The name of an example that is built in; null for none.</param>
internal sealed record ApiContent(string MediaType, string Shape, string? Example = null)
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
    public static IReadOnlyList<ApiContent> Rig { get; } = [new(Json, "Rig", "board.rig.json"), new(Yaml, "RigText", "board.rig.yaml")];

    /// <summary>What one piece of gear may come as.</summary>
    public static IReadOnlyList<ApiContent> Gear { get; } = [new(Json, "Gear", "gear.json"), new(Yaml, "GearText", "gear.yaml")];
}
