using System.Collections.Immutable;

namespace Loadmark.Drawing.Paper;

/// <summary>Pages that belong together.</summary>
public sealed record PaperDocument
{
    /// <summary>What the document is called.</summary>
    public required string Title { get; init; }

    /// <summary>What the document is about, in a sentence.</summary>
    public required string Subject { get; init; }

    /// <summary>When it was made; equal pages with an equal time make equal files.</summary>
    public required DateTimeOffset Made { get; init; }

    /// <summary>The pages, at least one.</summary>
    public required ImmutableArray<PaperPage> Pages { get; init; }

    /// <summary>The language of the words, as BCP 47 has it.</summary>
    public string Language { get; init; } = "en-GB";
}
