namespace Loadmark.Workshop.Asking;

/// <summary>"May I plug this in?": what the things say, and what they would be plugged into.</summary>
public sealed record PlugInQuestion
{
    /// <summary>What each thing that draws says, at least one, each as typed: a label, with a name or without.</summary>
    public required IReadOnlyList<string> Loads { get; init; }

    /// <summary>What each thing that gives says, as typed; empty where the question is what would do.</summary>
    public IReadOnlyList<string> Supplies { get; init; } = [];

    /// <summary>Whether all loads would hang on one lead with several plugs.</summary>
    public bool IsChain { get; init; }

    /// <summary>The mains where it would be, as typed, such as <c>230 V 50 Hz</c>; null where that is not told.</summary>
    public string? Mains { get; init; }
}
