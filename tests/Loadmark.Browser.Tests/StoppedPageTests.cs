using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>A page that has stopped for good says so, and the log tells of it without being asked for more.</summary>
public sealed class StoppedPageTests(SharedBrowser browser, ServedPage served) : IClassFixture<ServedPage>
{
    private const string Sentence = "This page has stopped. Your rigs are safe.";

    [Fact]
    public async Task A_page_that_stops_says_so_and_is_there_again_when_it_is_loaded_again()
    {
        await using var visit = await Visit.OpenAsync(browser.Browser, served.Program, new() { ViewportSize = new() { Width = 390, Height = 844 } });
        var page = visit.Page;
        await page.OpenRigsAsync();
        await Expect(page.GetByText(Sentence)).ToBeHiddenAsync();

        // What a browser's add-on that rewrites pages can do: the program's next drawing finds nothing to draw on.
        await page.EvaluateAsync("() => document.querySelector('#main').remove()");
        await page.GetByRole(AriaRole.Link, new() { Name = "Gear library" }).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = Sentence })).ToBeVisibleAsync();
        Assert.Empty(await Axe.ColoursAsync(page));
        Assert.True(await page.Locator("#blazor-error-ui").EvaluateAsync<bool>("notice => notice.getBoundingClientRect().right <= innerWidth"));
        Assert.Contains(served.Program.Errors, static line => line.Contains("error: Unhandled exception in circuit", StringComparison.Ordinal));

        await page.GetByRole(AriaRole.Link, new() { Name = "Load it again" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Gear library", Level = 1 })).ToBeVisibleAsync();
        await Expect(page.GetByText(Sentence)).ToBeHiddenAsync();
    }
}
