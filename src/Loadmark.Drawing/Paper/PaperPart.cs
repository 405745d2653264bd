using System.Collections.Immutable;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>A part of a page: what it is, what it is drawn with, and the parts within it, in the order of reading.</summary>
public sealed record PaperPart
{
    /// <summary>What the part is.</summary>
    public required PaperTag Tag { get; init; }

    /// <summary>Where the part is; what it is drawn with and the parts within it do not reach out of it.</summary>
    public required Box Bounds { get; init; }

    /// <summary>What the part is drawn with, beneath its parts, in px of the page.</summary>
    public ImmutableArray<Shape> Shapes { get; init; } = [];

    /// <summary>The parts within the part.</summary>
    public ImmutableArray<PaperPart> Parts { get; init; } = [];

    /// <summary>A picture in words; empty for what is text itself.</summary>
    public string Alternative { get; init; } = "";

    /// <summary>The part and all within it, each before its parts.</summary>
    public IEnumerable<PaperPart> All() => Parts.SelectMany(static part => part.All()).Prepend(this);
}
