using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Keys;

/// <summary>
/// A key that holds one field of a thing. Its row in the table is all that is said of the field: reading and writing, the library's figures
/// under a rig's own, merges, forms and tables go by it.
/// </summary>
/// <typeparam name="T">The thing, such as a load.</typeparam>
internal sealed record FieldKey<T> : Key
{
    private readonly ValueKind _kind;
    private readonly Func<T, object?> _get;
    private readonly Func<T, object?, T> _set;

    /// <summary>The row of a field.</summary>
    /// <param name="name">The key as it is written.</param>
    /// <param name="title">What it is called, for people.</param>
    /// <param name="kind">How its values are read and written.</param>
    /// <param name="get">The field of a thing; null where nothing is said.</param>
    /// <param name="set">A thing with another value of the field; null for one of which nothing is said.</param>
    /// <param name="description">What it means, with its default.</param>
    /// <param name="examples">Values that show how it is written.</param>
    /// <param name="columns">Other names that people have for its column in a table, in lower case.</param>
    /// <param name="column">The name of that column; null where it is the key.</param>
    public FieldKey(
        string name, string title, ValueKind kind, Func<T, object?> get, Func<T, object?, T> set, string description,
        IReadOnlyList<string>? examples = null, IReadOnlyList<string>? columns = null, string? column = null)
        : base(name, kind.Form, description)
    {
        (_kind, _get, _set) = (kind, get, set);
        (Words, Least, Most, Examples) = (kind.Words, kind.Least, kind.Most, examples ?? []);
        (Title, Column, ColumnNames) = (title, column ?? name, columns ?? []);
    }

    /// <summary>What the key is called, for people.</summary>
    public string Title { get; }

    /// <summary>The name of the key's column in a table.</summary>
    public string Column { get; }

    /// <summary>Other names that people have for that column, in lower case.</summary>
    public IReadOnlyList<string> ColumnNames { get; }

    /// <summary>What is expected of the key's value, where something other than a text stands there.</summary>
    public string Expected => _kind.Expected;

    /// <summary>The value of the field; null where nothing is said.</summary>
    public object? ValueOf(T thing) => _get(thing);

    /// <summary>The field as a rig file spells it; null where nothing is said.</summary>
    public string? TextOf(T thing) => _get(thing) is { } value ? _kind.Write(value) : null;

    /// <summary>The thing with another value of the field.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="value">The value, of the field's own type; null for none.</param>
    public T With(T thing, object? value) => _set(thing, value);

    /// <summary>The thing with the field as a text says it; without the field, with an error, where the text cannot be read.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="text">The text; null for a key that says: there is none.</param>
    /// <param name="errors">Where faults go.</param>
    public T Read(T thing, ScalarNode? text, ErrorList errors) => _set(thing, text is null ? null : _kind.Read(text, Name, errors));
}
