using System.Text.Json.Nodes;
using Loadmark.Shapes;
using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>Makes the schemas of the document, in few words.</summary>
internal static class SchemaShape
{
    /// <summary>The schema of a value that is neither a list nor an object.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is one of those.</exception>
    public static OpenApiSchema Of(ValueDescription value) => value.Kind switch
    {
        JsonKind.Text => Text(value.About, value.Words),
        JsonKind.Moment => new() { Type = JsonSchemaType.String, Format = "date-time", Description = value.About },
        JsonKind.Uuid => new() { Type = JsonSchemaType.String, Format = "uuid", Description = value.About },
        JsonKind.Number => new() { Type = JsonSchemaType.Number, Description = value.About },
        JsonKind.Count => Count(value.About),
        JsonKind.Seed => new() { Type = JsonSchemaType.Integer, Minimum = "0", Description = value.About },
        JsonKind.Flag => new() { Type = JsonSchemaType.Boolean, Description = value.About },
        JsonKind.File => new() { Type = JsonSchemaType.String, Format = "binary", Description = value.About },
        JsonKind.Any => new() { Description = value.About },
        _ => throw new ArgumentOutOfRangeException(nameof(value), value.Kind, "There is no schema for it alone."),
    };

    /// <summary>The schema of a text.</summary>
    /// <param name="about">What the text is.</param>
    /// <param name="words">Tells the words that it may be; null for any.</param>
    public static OpenApiSchema Text(string about, Func<IReadOnlyList<string>>? words = null) => new()
    {
        Type = JsonSchemaType.String,
        Description = about,
        Enum = words is null ? null : [.. words().Select(static word => (JsonNode)JsonValue.Create(word))],
    };

    /// <summary>The schema of a whole number from 0.</summary>
    public static OpenApiSchema Count(string about) =>
        new() { Type = JsonSchemaType.Integer, Format = "int64", Minimum = "0", Description = about };

    /// <summary>The schema of a list.</summary>
    public static OpenApiSchema List(string about, IOpenApiSchema items) =>
        new() { Type = JsonSchemaType.Array, Items = items, Description = about };

    /// <summary>A list of as many items each time.</summary>
    public static OpenApiSchema Tuple(string about, int count, IOpenApiSchema items) =>
        new() { Type = JsonSchemaType.Array, Items = items, MinItems = count, MaxItems = count, Description = about };

    /// <summary>The same, or null for what is not known.</summary>
    public static OpenApiSchema OrNull(this OpenApiSchema schema)
    {
        schema.Type |= JsonSchemaType.Null;
        return schema;
    }

    /// <summary>The same word, or null: a schema that lists its values has to list null too.</summary>
    public static OpenApiSchema OrNullWord(this OpenApiSchema schema)
    {
        schema.Enum!.Add(JsonNullSentinel.JsonNull);
        return schema.OrNull();
    }

    /// <summary>The schema of an object.</summary>
    /// <param name="about">What it is.</param>
    /// <param name="members">Its members; a name with <c>?</c> at its end is not always there.</param>
    public static OpenApiSchema Object(string about, params (string Name, IOpenApiSchema Schema)[] members) => new()
    {
        Type = JsonSchemaType.Object,
        Description = about,
        Properties = members.ToDictionary(
            static member => member.Name.TrimEnd('?'), static member => member.Schema, StringComparer.Ordinal),
        Required = members.Where(static member => !member.Name.EndsWith('?')).Select(static member => member.Name)
            .ToHashSet(StringComparer.Ordinal),
    };
}
