using Microsoft.OpenApi;
using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>
/// The shapes of bodies that are texts, or may be. They stand where they are used: generators take a text that is referred to for an
/// object.
/// </summary>
internal static class PlainShapes
{
    /// <summary>A shape by its name.</summary>
    public static OpenApiSchema Of(string name) => name switch
    {
        "RigText" => Text("A rig file (docs/rig-file.md), in UTF-8."),

        // Without a type: what may be an object or a text is "anything" to the generators, and a class with nothing in it when told in
        // full.
        "Rig" => new OpenApiSchema { Description = "A rig file as an object of the same shape (schema/rig.schema.json), or a rig file's text, YAML or JSON, in quotes as a text of JSON." },
        "Gear" => new OpenApiSchema { Description = "A file of gear (docs/gear.md) as an object with loads, supplies or leads, each as in a rig file and with 'words' that it is filed under; or such a file's text in quotes as a text of JSON." },
        "GearText" => File("A file of gear (docs/gear.md) as YAML, in UTF-8."),
        "GearTable" => File("A file of gear (docs/gear.md) as a table, in UTF-8."),
        "LinesToRead" => Text("Labels to read, one a line."),
        "ReadingLines" => Text("One reading a line, each an object as Reading."),
        "Deck" => Text("A SPICE deck."),
        "Events" => Text("Server-sent events."),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "There is no such shape."),
    };

    /// <summary>Generators would take an answer that is a mere text for a text of JSON.</summary>
    private static OpenApiSchema File(string about) => new() { Type = JsonSchemaType.String, Format = "binary", Description = about };
}
