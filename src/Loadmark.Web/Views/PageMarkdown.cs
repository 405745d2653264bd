using System.Globalization;
using Markdig;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Loadmark.Web.Views;

/// <summary>Markdown of the documentation as the page shows it: what is HTML in it is shown as text.</summary>
internal static class PageMarkdown
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <summary>Takes a text apart.</summary>
    /// <param name="markdown">The text.</param>
    public static MarkdownDocument Read(string markdown)
    {
        var document = Markdown.Parse(markdown, Pipeline);

        // Another page of the documentation is not at hand here: of a link to one, and of a picture, the words stay.
        foreach (var link in document.Descendants<LinkInline>().Where(static link => link.IsImage || !IsElsewhere(link.Url)).ToList())
            link.ReplaceBy(new ContainerInline(), copyChildren: true);
        return document;
    }

    /// <summary>Writes blocks as HTML.</summary>
    /// <param name="blocks">Blocks of a document that was read here.</param>
    public static string ToHtml(IEnumerable<Block> blocks)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var renderer = new HtmlRenderer(text);
        Pipeline.Setup(renderer);
        foreach (var block in blocks)
            renderer.Render(block);
        return text.ToString().Trim();
    }

    private static bool IsElsewhere(string? address) => address?.StartsWith("https://", StringComparison.Ordinal) == true;
}
