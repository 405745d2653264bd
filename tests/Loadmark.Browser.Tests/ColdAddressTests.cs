using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>
/// Every address of the page, opened with nothing opened before it (a bookmark, a second tab, a link in a mail), with something behind it and
/// with nothing, is a page that answers.
/// </summary>
public sealed class ColdAddressTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served), IClassFixture<ServedPage>
{
    private const float Longest = 20_000;

    /// <summary>Longer than the page needs for everything else, so that whatever waits for the script waits for it last.</summary>
    private static readonly TimeSpan Late = TimeSpan.FromMilliseconds(500);

    public static TheoryData<string> Names => [.. ColdAddresses.All.Select(NameOf)];

    [Fact]
    public void Every_route_of_the_page_is_opened_cold()
    {
        Assert.Contains("/", PageRoutes.All);
        Assert.Equal(PageRoutes.All.Order(StringComparer.Ordinal), ColdAddresses.All.Select(static address => address.Route).Distinct().Order(StringComparer.Ordinal));
    }

    /// <summary>The script comes late, as from a slow disk: whatever the page does on its way in then overtakes it.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public async Task An_address_opened_cold_is_alive(string name) =>
        await AssertAliveAsync(ColdAddresses.All.Single(one => NameOf(one) == name), Late);

    [Fact]
    public async Task A_rig_without_loads_opened_cold_is_alive_five_times_of_five()
    {
        var cold = ColdAddresses.All.Single(static one => NameOf(one) == "/rig/{Id:guid}: no loads");
        for (var time = 0; time < 5; time++)
            await AssertAliveAsync(cold, TimeSpan.Zero);
    }

    private async Task AssertAliveAsync(ColdAddress cold, TimeSpan late)
    {
        using var kept = new StoredContent(Served.Program, async () => (await VisitAsync()).Page);
        var address = await cold.PrepareAsync(kept);
        var page = (await VisitAsync(new() { ColorScheme = ColorScheme.Light })).Page;
        page.SetDefaultTimeout(Longest);
        await page.RouteAsync("**/loadmark.js", async route =>
        {
            await Task.Delay(late);
            await route.ContinueAsync();
        });
        await page.GotoAsync(address);
        await Expect(page.Locator("#main:not([aria-busy])")).ToHaveCountAsync(1);
        await Expect(page.Locator("#main h1[tabindex], #main [data-begin]").First).ToBeFocusedAsync();
        await page.EvaluateAsync("() => window.isTheSamePage = true");

        // The choice goes to the program, and comes back from it.
        await page.GetByLabel("Light or dark").SelectOptionAsync("dark");
        await Expect(page.Locator("html.dark")).ToHaveCountAsync(1, new() { Timeout = Longest });
        await cold.UseAsync(page);
        Assert.True(await page.EvaluateAsync<bool>("() => window.isTheSamePage === true"), "The page was loaded again on the way.");
        await Expect(page.Locator("#blazor-error-ui")).ToBeHiddenAsync();
    }

    private static string NameOf(ColdAddress address) => $"{address.Route}: {address.Name}";
}
