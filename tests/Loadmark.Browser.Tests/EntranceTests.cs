using System.Collections.Concurrent;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>How a browser gets in, and that what it was given serves no other page.</summary>
public sealed class EntranceTests(SharedBrowser browser, ServedPage served)
{
    [Fact]
    public async Task The_printed_address_opens_the_page_and_does_not_stay_in_the_bar()
    {
        await using var visit = await Visit.OpenAsStrangerAsync(browser.Browser, served.Program);
        await visit.Page.GotoAsync(served.Program.Entrance.ToString());
        await AssertInAsync(visit.Page);
        await visit.Page.GotoAsync("/gear");
        await Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Gear library", Level = 1 })).ToBeVisibleAsync();
        visit.AssertQuiet();
    }

    /// <summary>A file is from elsewhere for a browser, and its cookie a strict one.</summary>
    [Fact]
    public async Task The_file_that_the_browser_is_opened_with_leads_in()
    {
        await using var visit = await Visit.OpenAsStrangerAsync(browser.Browser, served.Program);
        await visit.Page.GotoAsync(new Uri(Path.Combine(served.Folder, $"loadmark-{served.Address.Port}.html")).ToString());
        await Expect(visit.Page).ToHaveURLAsync(served.Address.ToString()); // two pages lead on by themselves before it
        await AssertInAsync(visit.Page);
    }

    [Fact]
    public async Task A_browser_without_the_key_is_told_in_words_and_one_that_has_it_goes_on_from_there()
    {
        await using var visit = await Visit.OpenAsStrangerAsync(browser.Browser, served.Program);
        var answer = await visit.Page.GotoAsync("/gear");
        Assert.Equal(401, answer!.Status);
        await Expect(visit.Page.GetByText("Open the address that Loadmark printed when it was started")).ToBeVisibleAsync();
        Assert.Empty(await Axe.ViolationsAsync(visit.Page));

        Assert.True((await visit.Context.APIRequest.GetAsync(served.Program.Entrance.ToString())).Ok);
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "on to your rigs" }).ClickAsync();
        await AssertInAsync(visit.Page);
    }

    /// <summary>What another page can make a browser send: it is of the same site at another port of 127.0.0.1, and of another one at localhost.</summary>
    [Theory]
    [InlineData("127.0.0.1")]
    [InlineData("localhost")]
    public async Task Another_page_gets_nothing_from_a_browser_that_was_let_in(string host)
    {
        using var other = new OtherPage(
            $$"""
            <!DOCTYPE html><title>other</title><p>other</p>
            <img src="{{served.Address}}backup"><iframe src="{{served.Address}}"></iframe><link rel="stylesheet" href="{{served.Address}}scene.css">
            <script>
                const ask = (address, options) => fetch("{{served.Address}}" + address, { credentials: "include", ...options }).then(() => "answered", () => "refused");
                window.done = Promise.all([
                    ask("api/rigs"), ask("backup"), ask("api/read", { method: "POST", body: "9V" }),
                    new Promise(end => { const line = new WebSocket("ws://{{served.Address.Authority}}/_blazor"); line.onopen = () => end("open"); line.onerror = () => end("refused"); }),
                ]);
            </script>
            """);
        await using var visit = await Visit.OpenAsync(browser.Browser, served.Program);
        var answers = new ConcurrentBag<(string Path, int Status)>();
        visit.Context.Response += (_, answer) =>
        {
            if (new Uri(answer.Url).Authority == served.Address.Authority)
                answers.Add((new Uri(answer.Url).AbsolutePath, answer.Status));
        };
        await visit.Page.GotoAsync($"http://{host}:{other.Port}/");
        Assert.Equal(["refused", "refused", "refused", "refused"], await visit.Page.EvaluateAsync<string[]>("() => window.done"));
        await Expect(visit.Page.GetByText("other")).ToBeVisibleAsync();
        Assert.NotEmpty(answers); // what a browser keeps from the page altogether is no answer to it
        Assert.All(answers, static answer => Assert.Equal(403, answer.Status));

        await visit.Page.EvaluateAsync($"() => {{ location.href = '{served.Address}backup'; }}");
        await Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Not this way" })).ToBeVisibleAsync();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "on to your rigs" }).ClickAsync();
        await AssertInAsync(visit.Page);
    }

    private async Task AssertInAsync(IPage page)
    {
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "May I plug this in?" })).ToBeVisibleAsync();
        await Expect(page.Locator(".riglist li").First).ToBeVisibleAsync();
        Assert.Equal(served.Address.ToString(), page.Url);
    }
}
