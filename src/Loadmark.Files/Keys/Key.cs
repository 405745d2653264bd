namespace Loadmark.Files.Keys;

/// <summary>One key of the rig file.</summary>
/// <param name="Name">The key as it is written.</param>
/// <param name="Form">What kind of value it takes.</param>
/// <param name="Description">What it means, with its default; shown by editors.</param>
internal record Key(string Name, ValueForm Form, string Description)
{
    /// <summary>The words the key takes; empty unless it takes fixed ones.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The keys of the groups in it; null when it holds none.</summary>
    public KeyTable? Group { get; init; }

    /// <summary>Whether the key must be there.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Other keys, beside any of which it need not be there; empty for none.</summary>
    public IReadOnlyList<string> Instead { get; init; } = [];

    /// <summary>The smallest number, or the fewest entries.</summary>
    public int Least { get; init; }

    /// <summary>The largest number; 0 for no bound.</summary>
    public int Most { get; init; }

    /// <summary>Whether an entry of the key may hold nothing, as in <c>1:</c>.</summary>
    public bool MayBeEmpty { get; init; }

    /// <summary>Values that show how it is written.</summary>
    public IReadOnlyList<string> Examples { get; init; } = [];
}
