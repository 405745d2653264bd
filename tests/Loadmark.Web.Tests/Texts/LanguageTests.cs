using System.Resources;
using System.Text.RegularExpressions;
using Bunit;
using Loadmark.Web.Pages;
using Loadmark.Web.Parts;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Localization;
using Microsoft.Extensions.Logging.Abstractions;

namespace Loadmark.Web.Tests.Texts;

/// <summary>Another language is a file: with every text of it put between ⟦ and ⟧, what people read on the page is between them.</summary>
public sealed partial class LanguageTests : PageTest
{
    [Fact]
    public void The_pages_own_file_is_found_by_its_texts()
    {
        var texts = Services.GetRequiredService<IStringLocalizer<PageText>>();
        Assert.All(PageTexts.Listed(), text => Assert.False(texts[text.Name].ResourceNotFound, text.Name));
        Assert.True(texts["no such text"].ResourceNotFound);
    }

    [Fact]
    public async Task Headings_buttons_and_labels_are_in_the_other_language()
    {
        Translate();
        var view = await OpenAsync(SmallRig.Text);
        AssertTranslated(Show<FindingsPanel>(view));
        AssertTranslated(Show<GearPanel>(view));
        AssertTranslated(Show<WirePanel>(view));
        AssertTranslated(Show<PlanPanel>(view));
        AssertTranslated(Show<BuyPanel>(view));
        AssertTranslated(Show<StartPanel>(view));
        AssertTranslated(Show<FilePanel>(view));
        AssertTranslated(Render<RigsPage>());
        AssertTranslated(Render<MeterBar>());
    }

    [Fact]
    public async Task Figures_and_tags_are_put_into_the_other_languages_sentences()
    {
        Translate();
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        Assert.NotNull(part.Find("[aria-label='⟦Tag of drive-3⟧']"));
        part.Find("#enter-loads").Input("A-1: 9V 12mA\nA-2: 9V 12mA");
        Assert.Equal("⟦Add 2 loads⟧", part.FindAll(".entry .row > button")[0].TextContent);
        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] .more").ClickAsync(new()));
        await part.InvokeAsync(() => part.FindAll("button").First(button => button.TextContent == "⟦Duplicate⟧").ClickAsync(new()));
        Assert.Contains("drive-3", view.Session.Kept!.UndoWhat, StringComparison.Ordinal);
    }

    [GeneratedRegex("[A-Za-z]{3,}", RegexOptions.None, 1000)]
    private static partial Regex Words();

    [GeneratedRegex("⟦[^⟦⟧]*⟧", RegexOptions.None, 1000)]
    private static partial Regex Translated();

    private static void AssertTranslated<T>(IRenderedComponent<T> part)
        where T : IComponent
    {
        var spoken = part.FindAll("h1, h2, h3, legend, label, button, th[scope=col], summary, caption, dt")
            .Where(element => element.QuerySelector(".what") is null && !element.ClassList.Contains("finding")) // figures and findings speak for the rig
            .Where(element => !element.ClassList.Contains("check") || element.ParentElement!.ClassList.Contains("feedhead")) // a supply's name
            .ToList();
        Assert.NotEmpty(spoken);
        Assert.All(spoken, element => Assert.DoesNotMatch(Words(), Translated().Replace(string.Concat(Pieces(element)), "")));
    }

    /// <summary>The texts of an element, without those of choices in it.</summary>
    private static IEnumerable<string> Pieces(AngleSharp.Dom.INode node) => node switch
    {
        AngleSharp.Dom.IElement { LocalName: "option" or "textarea" } => [],
        AngleSharp.Dom.IText text => [text.Data],
        _ => node.ChildNodes.SelectMany(Pieces),
    };

    /// <summary>Puts a translator's file in place of the page's own.</summary>
    private void Translate()
    {
        var folder = Directory.CreateDirectory(Kept + ".texts").FullName;
        var file = Path.Combine(folder, "PageText.qps-ploc.resx");
        PageTexts.Write(file, PageTexts.All().Select(static text => (text, $"⟦{text}⟧")));
        using (var writer = new ResourceWriter(Path.Combine(folder, "PageText.resources")))
        {
            foreach (var (name, value) in PageTexts.Read(file).DistinctBy(static text => text.Name.ToUpperInvariant()))
                writer.AddResource(name, value);
        }

        Services.AddSingleton<IStringLocalizer<PageText>>(new StringLocalizer<PageText>(new FileTexts(folder)));
    }

    private sealed class FileTexts(string folder) : IStringLocalizerFactory
    {
        public IStringLocalizer Create(Type resourceSource) => new ResourceManagerStringLocalizer(
            ResourceManager.CreateFileBasedResourceManager("PageText", folder, null), resourceSource.Assembly, "PageText", new ResourceNamesCache(), NullLogger.Instance);

        public IStringLocalizer Create(string baseName, string location) => Create(typeof(PageText));
    }
}
