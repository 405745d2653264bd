namespace Loadmark.Shapes;

/// <summary>What is told of a value of JSON to whoever reads it.</summary>
/// <param name="Kind">What sort of value it is.</param>
/// <param name="About">What it means, in a sentence, with its unit; empty for an object that describes itself.</param>
internal sealed record ValueDescription(JsonKind Kind, string About)
{
    /// <summary>Whether the value may be null, for what is not known.</summary>
    public bool OrNull { get; init; }

    /// <summary>Tells the words that a text may be, which only the description of answers asks for; null for any.</summary>
    public Func<IReadOnlyList<string>>? Words { get; init; }

    /// <summary>Of a list what each item is; null for anything else.</summary>
    public ValueDescription? Items { get; init; }

    /// <summary>Of a list how many items it always has; null where that varies, and for anything else.</summary>
    public int? Length { get; init; }

    /// <summary>Of a list the name that it is referred to by; empty where it is described in the place where it stands.</summary>
    public string Name { get; init; } = "";

    /// <summary>Of an object its shape; null for anything else.</summary>
    public IShape? Shape { get; init; }

    /// <summary>The name that the value is referred to by; empty where it is described in the place where it stands.</summary>
    public string ReferredTo => Shape?.Name ?? Name;
}
