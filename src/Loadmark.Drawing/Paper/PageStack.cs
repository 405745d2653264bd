namespace Loadmark.Drawing.Paper;

/// <summary>Pages under one another, for kinds of file that have no pages.</summary>
internal sealed record PageStack(double Width, double Height, IReadOnlyList<(PaperPage Page, double Top)> Pages)
{
    private const double Gap = 12;

    /// <summary>Puts a document's pages under one another.</summary>
    public static PageStack Of(PaperDocument document)
    {
        var (width, bottom) = (0.0, -Gap);
        var pages = new List<(PaperPage Page, double Top)>();
        foreach (var page in document.Pages)
        {
            pages.Add((page, bottom + Gap));
            width = Math.Max(width, page.Size.Width);
            bottom += Gap + page.Size.Height;
        }

        return new PageStack(width, bottom, pages);
    }
}
