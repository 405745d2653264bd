using System.Text.Json;

namespace Loadmark.Shapes;

/// <summary>A list of JSON that stands alone.</summary>
/// <typeparam name="T">What is written as one of its items.</typeparam>
/// <param name="name">The name that the list is referred to by.</param>
/// <param name="about">What the list means.</param>
/// <param name="item">What each item is.</param>
internal sealed class JsonList<T>(string name, string about, JsonValue<T> item) : JsonValue<IEnumerable<T>>
{
    /// <inheritdoc/>
    public override ValueDescription Description { get; } = new(JsonKind.List, about) { Name = name, Items = item.Description };

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, IEnumerable<T> value)
    {
        json.WriteStartArray();
        foreach (var one in value)
            item.Write(json, one);
        json.WriteEndArray();
    }
}
