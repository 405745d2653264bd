namespace Loadmark.Files.Keys;

/// <summary>The keys of a group that says what a thing is.</summary>
/// <typeparam name="T">The thing.</typeparam>
/// <param name="Name">The group in the schema, such as <c>load</c>.</param>
/// <param name="What">The group in messages, such as "a load".</param>
/// <param name="Keys">The table's keys.</param>
internal sealed record FieldTable<T>(string Name, string What, params Key[] Keys) : KeyTable(Name, What, Keys)
{
    /// <summary>The keys that hold one field each.</summary>
    public IReadOnlyList<FieldKey<T>> Fields { get; } = [.. Keys.OfType<FieldKey<T>>()];

    /// <summary>How many fields something is said of.</summary>
    public int CountSaid(T thing) => Fields.Count(field => field.TextOf(thing) is not null);
}
