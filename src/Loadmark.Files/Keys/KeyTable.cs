namespace Loadmark.Files.Keys;

/// <summary>The keys of one kind of group, such as a load.</summary>
/// <param name="Name">The group in the schema, such as <c>load</c>.</param>
/// <param name="What">The group in messages, such as "a load".</param>
/// <param name="Keys">The table's keys.</param>
internal record KeyTable(string Name, string What, params Key[] Keys)
{
    /// <summary>The key that a text alone, in the place of the group, is the value of; null where a text alone says nothing.</summary>
    public string? TextKey { get; init; }

    /// <summary>Whether the table has a key of that name.</summary>
    public bool Has(string name)
    {
        foreach (var key in Keys)
        {
            if (key.Name == name)
                return true;
        }

        return false;
    }
}
