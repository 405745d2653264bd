using System.Text.Json;

namespace Loadmark.Shapes;

/// <summary>A number of JSON, null where it is not known.</summary>
/// <param name="description">What it is, in which unit.</param>
internal sealed class JsonNumber(ValueDescription description) : JsonValue<decimal?>
{
    /// <inheritdoc/>
    public override ValueDescription Description => description;

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, decimal? value) => json.WriteFigure(value);
}
