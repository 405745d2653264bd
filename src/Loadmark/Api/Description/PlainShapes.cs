using Microsoft.OpenApi;
using static Loadmark.Api.Description.Shape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of bodies that are texts, or may be. They stand where they are used: generators take a text that is referred to for an object.</summary>
internal static class PlainShapes
{
    /// <summary>A shape by its name.</summary>
    public static OpenApiSchema Of(string name) => name switch
    {
        "RigText" => Text("A rig file (docs/rig-file.md), in UTF-8."),

        // Without a type: what may be an object or a text is "anything" to the generators, and a class with nothing in it when told in full.
        "Rig" => new OpenApiSchema { Description = "A rig file as an object of the same shape (schema/rig.schema.json), or a rig file's text, YAML or JSON, in quotes as a text of JSON." },
        "LinesToRead" => Text("Labels to read, one a line."),
        "ReadingLines" => Text("One reading a line, each an object as Reading."),
        "Deck" => Text("A SPICE deck."),
        "Events" => Text("Server-sent events."),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "There is no such shape."),
    };
}
