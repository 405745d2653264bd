using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>The shapes of a document, by their names.</summary>
/// <param name="document">The document.</param>
internal sealed class ShapeBook(OpenApiDocument document)
{
    /// <summary>Adds all shapes to a document.</summary>
    public static void AddTo(OpenApiDocument document)
    {
        var book = new ShapeBook(document);
        ReadShapes.AddTo(book);
        CheckShapes.AddTo(book);
        PlanShapes.AddTo(book);
        CircuitShapes.AddTo(book);
        KeptShapes.AddTo(book);
        GearShapes.AddTo(book);
    }

    /// <summary>Adds a shape.</summary>
    public void Add(string name, OpenApiSchema shape) => document.AddComponent(name, shape);

    /// <summary>A shape by its name.</summary>
    public IOpenApiSchema Of(string name) => new OpenApiSchemaReference(name, document);

    /// <summary>A shape by its name, or null.</summary>
    public IOpenApiSchema OfOrNull(string name) => new OpenApiSchema { OneOf = [Of(name), new OpenApiSchema { Type = JsonSchemaType.Null }] };
}
