using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Keys;

/// <summary>The row of one field: what its values are, and how a thing has it.</summary>
/// <typeparam name="T">The thing.</typeparam>
/// <typeparam name="TValue">The type of the field; its default says nothing.</typeparam>
/// <param name="Name">The key as it is written.</param>
/// <param name="Kind">How its values are read and written.</param>
/// <param name="Get">The field of a thing.</param>
/// <param name="Set">A thing with another value of the field.</param>
/// <param name="Description">What it means, with its default.</param>
internal sealed record FieldRow<T, TValue>(
    string Name, ValueKind<TValue> Kind, Func<T, TValue> Get, Func<T, TValue?, T> Set, string Description)
    : FieldKey<T>(Name, Kind.Form, Description)
{
    /// <inheritdoc/>
    public override string Expected => Kind.Expected;

    /// <inheritdoc/>
    public override string? TextOf(T thing) => Kind.Write(Get(thing));

    /// <inheritdoc/>
    public override T Read(T thing, ScalarNode? text, ErrorList errors) =>
        Set(thing, text is null ? default : Kind.Read(text, Name, errors));

    /// <inheritdoc/>
    public override object? ValueOf(T thing) => Get(thing);

    /// <inheritdoc/>
    public override T With(T thing, object? value) => Set(thing, (TValue?)value);
}
