using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Shapes;
using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>The shapes of a document, by their names.</summary>
/// <param name="document">The document.</param>
internal sealed class ShapeBook(OpenApiDocument document)
{
    private readonly Dictionary<string, object> _added = new(StringComparer.Ordinal);

    /// <summary>Adds all shapes to a document.</summary>
    /// <param name="document">The document.</param>
    /// <param name="operations">What the addresses take and answer.</param>
    public static void AddTo(OpenApiDocument document, IEnumerable<ApiOperation> operations)
    {
        var book = new ShapeBook(document);
        foreach (var content in operations.SelectMany(static operation => operation.Bodies.Concat(operation.Answers)))
            book.SchemaOf(content.Value);
        book.Of(ProgressJson.Progress);
        ProblemShapes.AddTo(book);
    }

    /// <summary>Adds a shape.</summary>
    public void Add(string name, OpenApiSchema shape) => document.AddComponent(name, shape);

    /// <summary>A shape that an answer is written by, or a body read by, with all that it refers to.</summary>
    /// <exception cref="InvalidOperationException">Another shape has its name.</exception>
    public IOpenApiSchema Of(IShape shape) => shape.Name.Length == 0 ? ObjectOf(shape) : Named(shape.Name, shape, () => ObjectOf(shape));

    /// <summary>The members of a shape, as an object of the document takes them.</summary>
    public IEnumerable<(string Name, IOpenApiSchema Schema)> MembersOf(IShape shape) =>
        shape.Members.Select(member => (member.IsRequired ? member.Name : member.Name + '?', SchemaOf(member.Value)));

    private static OpenApiSchema OrNull(IOpenApiSchema schema) =>
        new() { OneOf = [schema, new OpenApiSchema { Type = JsonSchemaType.Null }] };

    private OpenApiSchemaReference Named(string name, object what, Func<OpenApiSchema> schema)
    {
        if (_added.TryAdd(name, what))
            Add(name, schema());
        else if (_added[name] != what)
            throw new InvalidOperationException($"There are two shapes of the name {name}.");
        return new OpenApiSchemaReference(name, document);
    }

    private OpenApiSchema ObjectOf(IShape shape) => SchemaShape.Object(shape.About, [.. MembersOf(shape)]);

    private IOpenApiSchema SchemaOf(ValueDescription value)
    {
        if (value.Shape is { } shape)
            return value.OrNull ? OrNull(Of(shape)) : Of(shape);
        if (value.Name.Length > 0)
            return Named(value.Name, value, () => ListOf(value));
        var schema = value.Kind == JsonKind.List ? ListOf(value) : SchemaShape.Of(value);
        return !value.OrNull ? schema : value.Words is null ? schema.OrNull() : schema.OrNullWord();
    }

    private OpenApiSchema ListOf(ValueDescription list)
    {
        var items = SchemaOf(list.Items!);
        return list.Length is { } length ? SchemaShape.Tuple(list.About, length, items) : SchemaShape.List(list.About, items);
    }
}
