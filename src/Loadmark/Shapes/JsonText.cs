using System.Text.Json;

namespace Loadmark.Shapes;

/// <summary>A text of JSON.</summary>
/// <param name="about">What it means.</param>
/// <param name="words">Tells the words that it may be; null for any.</param>
internal sealed class JsonText(string about, Func<IReadOnlyList<string>>? words = null) : JsonValue<string>
{
    /// <summary>What an item of a list of texts is.</summary>
    public static JsonText Item { get; } = new("One of them.");

    /// <inheritdoc/>
    public override ValueDescription Description { get; } = new(JsonKind.Text, about) { Words = words };

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, string value) => json.WriteStringValue(value);
}
