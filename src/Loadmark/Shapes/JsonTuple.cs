using System.Text.Json;

namespace Loadmark.Shapes;

/// <summary>A list of JSON that always has as many numbers.</summary>
/// <param name="about">What it means.</param>
/// <param name="length">How many there are.</param>
/// <param name="items">What each is.</param>
internal sealed class JsonTuple(string about, int length, ValueDescription items) : JsonValue<IReadOnlyList<decimal?>>
{
    /// <inheritdoc/>
    public override ValueDescription Description { get; } = new(JsonKind.List, about) { Items = items, Length = length };

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, IReadOnlyList<decimal?> value)
    {
        json.WriteStartArray();
        for (var index = 0; index < value.Count; index++)
            json.WriteFigure(value[index]);
        json.WriteEndArray();
    }
}
