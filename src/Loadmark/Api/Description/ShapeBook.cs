using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Api.Monitoring;
using Loadmark.Shapes;
using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>The shapes of a document, by their names.</summary>
/// <param name="document">The document.</param>
internal sealed class ShapeBook(OpenApiDocument document)
{
    private readonly Dictionary<string, IShape> _added = new(StringComparer.Ordinal);

    /// <summary>Adds all shapes to a document.</summary>
    public static void AddTo(OpenApiDocument document)
    {
        var book = new ShapeBook(document);
        foreach (var body in RequestBodies.All)
            book.Add(body.Name, BodyOf(body));
        book.Add("Readings", SchemaShape.List("One reading for each text, in the order given.", book.Of(NameplateJson.Reading)));
        book.Of(AskJson.Answer);
        book.Of(CheckJson.Check);
        book.Of(CheckJson.Fault);
        book.Of(BuyJson.Purchases);
        book.Of(SimulationJson.SteadyState);
        book.Of(SimulationJson.FirstSeconds);
        book.Of(StoredRigJson.List);
        book.Of(StoredRigJson.Rig);
        book.Of(ProgressJson.Progress);
        book.Of(HealthJson.Health);
        book.Of(GearJson.List);
        book.Of(GearJson.Shown);
        book.Of(GearJson.MeasuredLoad);
        book.Of(ImportJson.Taken);
        book.Of(RigsJson.AllAffected);
        ProblemShapes.AddTo(book);
    }

    /// <summary>Adds a shape.</summary>
    public void Add(string name, OpenApiSchema shape) => document.AddComponent(name, shape);

    /// <summary>A shape that an answer is written by, with all that it refers to.</summary>
    /// <exception cref="InvalidOperationException">Another shape has its name.</exception>
    public IOpenApiSchema Of(IShape shape)
    {
        if (shape.Name.Length == 0)
            return ObjectOf(shape);
        if (_added.TryAdd(shape.Name, shape))
            Add(shape.Name, ObjectOf(shape));
        else if (_added[shape.Name] != shape)
            throw new InvalidOperationException($"There are two shapes of the name {shape.Name}.");
        return new OpenApiSchemaReference(shape.Name, document);
    }

    /// <summary>The members of a shape, as an object of the document takes them.</summary>
    public IEnumerable<(string Name, IOpenApiSchema Schema)> MembersOf(IShape shape) =>
        shape.Members.Select(member => (member.IsRequired ? member.Name : member.Name + '?', SchemaOf(member.Value)));

    private static OpenApiSchema BodyOf(BodyShape body) => SchemaShape.Object(body.Text, [.. body.Members.Select(static member =>
        member.IsOptional ? ($"{member.Name}?", SchemaOf(member).OrNull()) : (member.Name, (IOpenApiSchema)SchemaOf(member)))]);

    private static OpenApiSchema SchemaOf(BodyMember member) =>
        member.IsList ? SchemaShape.Texts(member.Text) : SchemaShape.Text(member.Text);

    private static OpenApiSchema OrNull(IOpenApiSchema schema) =>
        new() { OneOf = [schema, new OpenApiSchema { Type = JsonSchemaType.Null }] };

    private OpenApiSchema ObjectOf(IShape shape) => SchemaShape.Object(shape.About, [.. MembersOf(shape)]);

    private IOpenApiSchema SchemaOf(ValueDescription value)
    {
        if (value.Shape is { } shape)
            return value.OrNull ? OrNull(Of(shape)) : Of(shape);
        var schema = value.Kind switch
        {
            JsonKind.Text when value.Words is { } words => SchemaShape.Word(value.About, [.. words()]),
            JsonKind.Text => SchemaShape.Text(value.About),
            JsonKind.Moment => SchemaShape.Moment(value.About),
            JsonKind.Uuid => SchemaShape.Uuid(value.About),
            JsonKind.Number => SchemaShape.Number(value.About),
            JsonKind.Count => SchemaShape.Count(value.About),
            JsonKind.Seed => SchemaShape.Seed(value.About),
            JsonKind.Flag => SchemaShape.Flag(value.About),
            JsonKind.List when value.Length is { } length => SchemaShape.Tuple(value.About, length, SchemaOf(value.Items!)),
            JsonKind.List => SchemaShape.List(value.About, SchemaOf(value.Items!)),
            _ => throw new InvalidOperationException($"There is no schema for {value.Kind}."),
        };
        return !value.OrNull ? schema : value.Words is null ? schema.OrNull() : schema.OrNullWord();
    }
}
