using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Keys;

/// <summary>
/// A key that holds one field of a thing. Its row in the table is all that is said of the field: reading and writing, the library's figures
/// under a rig's own, merges, forms and tables go by it.
/// </summary>
/// <typeparam name="T">The thing, such as a load.</typeparam>
/// <param name="Name">The key as it is written.</param>
/// <param name="Form">What kind of value it takes.</param>
/// <param name="Description">What it means, with its default.</param>
internal abstract record FieldKey<T>(string Name, ValueForm Form, string Description) : Key(Name, Form, Description)
{
    /// <summary>What it is called, for people.</summary>
    public required string Title { get; init; }

    /// <summary>The name of its column in a table.</summary>
    public required string Column { get; init; }

    /// <summary>Other names that people have for that column, in lower case.</summary>
    public required IReadOnlyList<string> ColumnNames { get; init; }

    /// <summary>The row of a field.</summary>
    /// <typeparam name="TValue">The type of the field; its default says nothing.</typeparam>
    /// <param name="name">The key as it is written.</param>
    /// <param name="title">What it is called on a page.</param>
    /// <param name="kind">How its values are read and written.</param>
    /// <param name="get">The field of a thing.</param>
    /// <param name="set">A thing with another value of the field.</param>
    /// <param name="description">What it means, with its default.</param>
    /// <param name="examples">Values that show how it is written.</param>
    /// <param name="columns">Other names that people have for its column in a table, in lower case.</param>
    /// <param name="column">The name of that column; null where it is the key.</param>
    public static FieldKey<T> Of<TValue>(
        string name, string title, ValueKind<TValue> kind, Func<T, TValue> get, Func<T, TValue?, T> set, string description,
        IReadOnlyList<string>? examples = null, IReadOnlyList<string>? columns = null, string? column = null) =>
        new FieldRow<T, TValue>(name, kind, get, set, description)
        {
            Title = title,
            Words = kind.Words,
            Least = kind.Least,
            Most = kind.Most,
            Examples = examples ?? [],
            Column = column ?? name,
            ColumnNames = columns ?? [],
        };

    /// <summary>What is expected of its value, where something other than a text stands there.</summary>
    public abstract string Expected { get; }

    /// <summary>The field as a rig file spells it; null where nothing is said.</summary>
    public abstract string? TextOf(T thing);

    /// <summary>The thing with the field as a text says it; without the field, with an error, where the text cannot be read.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="text">The text; null for a key that says: there is none.</param>
    /// <param name="errors">Where faults go.</param>
    public abstract T Read(T thing, ScalarNode? text, ErrorList errors);

    /// <summary>The value of the field; null where nothing is said.</summary>
    public abstract object? ValueOf(T thing);

    /// <summary>The thing with another value of the field.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="value">The value, of the field's own type.</param>
    public abstract T With(T thing, object? value);
}
