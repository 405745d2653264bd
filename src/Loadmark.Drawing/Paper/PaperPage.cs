using System.Collections.Immutable;

namespace Loadmark.Drawing.Paper;

/// <summary>A page of paper.</summary>
/// <param name="Size">The paper.</param>
/// <param name="Parts">What stands on it, in the order of reading.</param>
public sealed record PaperPage(PaperSize Size, ImmutableArray<PaperPart> Parts)
{
    /// <summary>All parts of the page, each before the parts within it.</summary>
    public IEnumerable<PaperPart> All() => Parts.SelectMany(static part => part.All());
}
