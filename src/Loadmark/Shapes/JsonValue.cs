using System.Text.Json;

namespace Loadmark.Shapes;

/// <summary>Writes things of one type as values of JSON, and tells what such a value is.</summary>
/// <typeparam name="T">The things' type.</typeparam>
internal abstract class JsonValue<T>
{
    /// <summary>What such a value is.</summary>
    public abstract ValueDescription Description { get; }

    /// <summary>Writes one value.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="value">The thing.</param>
    public abstract void Write(Utf8JsonWriter json, T value);
}
