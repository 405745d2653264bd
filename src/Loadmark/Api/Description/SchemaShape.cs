using System.Text.Json.Nodes;
using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>Makes the schemas of the document, in few words.</summary>
internal static class SchemaShape
{
    /// <summary>The schema of a text.</summary>
    public static OpenApiSchema Text(string about) => new() { Type = JsonSchemaType.String, Description = about };

    /// <summary>A text that is a moment.</summary>
    public static OpenApiSchema Moment(string about) => new() { Type = JsonSchemaType.String, Format = "date-time", Description = about };

    /// <summary>A text that is a UUID.</summary>
    public static OpenApiSchema Uuid(string about) => new() { Type = JsonSchemaType.String, Format = "uuid", Description = about };

    /// <summary>The schema of a text that is one of some words.</summary>
    public static OpenApiSchema Word(string about, params string[] words) =>
        new() { Type = JsonSchemaType.String, Description = about, Enum = Nodes(words) };

    /// <summary>A number, in the unit that the description names.</summary>
    public static OpenApiSchema Number(string about) => new() { Type = JsonSchemaType.Number, Description = about };

    /// <summary>A whole number from 0.</summary>
    public static OpenApiSchema Count(string about) =>
        new() { Type = JsonSchemaType.Integer, Format = "int64", Minimum = "0", Description = about };

    /// <summary>A whole number from 0, of 64 bits.</summary>
    public static OpenApiSchema Seed(string about) => new() { Type = JsonSchemaType.Integer, Minimum = "0", Description = about };

    /// <summary>True or false.</summary>
    public static OpenApiSchema Flag(string about) => new() { Type = JsonSchemaType.Boolean, Description = about };

    /// <summary>The schema of a list.</summary>
    public static OpenApiSchema List(string about, IOpenApiSchema items) =>
        new() { Type = JsonSchemaType.Array, Items = items, Description = about };

    /// <summary>A list of texts.</summary>
    public static OpenApiSchema Texts(string about) => List(about, Text("One of them."));

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

    private static List<JsonNode> Nodes(string[] words) => [.. words.Select(static word => (JsonNode)JsonValue.Create(word))];
}
