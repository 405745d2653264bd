using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>Paper, and people whom movement disturbs.</summary>
public sealed class MediaTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    // What moves by itself or glides, in seconds.
    private const string Moving = """
        () => [...document.querySelectorAll("body *")].filter(element => {
            const style = getComputedStyle(element);
            const longest = list => Math.max(...list.split(",").map(one => parseFloat(one) * (one.trim().endsWith("ms") ? 0.001 : 1)));
            return longest(style.transitionDuration) > 0.01 || (style.animationName !== "none" && longest(style.animationDuration) > 0.01);
        }).map(element => `${element.tagName.toLowerCase()}.${element.className.baseVal ?? element.className}`)
        """;

    // How bright a colour is, 0 to 1: relative luminance by WCAG 2.2.
    private const string Brightness = """
        element => {
            const style = getComputedStyle(element);
            const colour = element instanceof SVGElement ? (style.fill !== "none" ? style.fill : style.stroke) : style.color;
            const [r, g, b] = colour.match(/[\d.]+/g).slice(0, 3).map(value => value / 255).map(value => value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
            return 0.2126 * r + 0.7152 * g + 0.0722 * b;
        }
        """;

    [Fact]
    public async Task Nothing_moves_where_that_is_asked_for()
    {
        var page = (await VisitAsync(new() { ReducedMotion = ReducedMotion.Reduce })).Page;
        var address = Served.AddressOf(RigPages.Pit);
        foreach (var (part, _) in RigPages.Parts)
        {
            await page.OpenPartAsync(address, part);
            Assert.Empty(await page.EvaluateAsync<string[]>(Moving));
        }

        // The measure sees what glides where nobody asked for rest.
        await page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.NoPreference });
        Assert.NotEmpty(await page.EvaluateAsync<string[]>(Moving));
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Paper_shows_the_diagram_and_the_findings_and_no_controls(ColorScheme scheme)
    {
        var page = (await VisitAsync(new() { ColorScheme = scheme })).Page;
        await page.OpenPartAsync(Served.AddressOf(RigPages.Pit), "");
        await PartOpener.OpenAsync(page, "");
        await page.EmulateMediaAsync(new() { Media = Media.Print });

        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(RigPages.Pit);
        await Expect(page.Locator("section.drawing svg.scene")).ToBeVisibleAsync();
        await Expect(page.Locator(".findinglist .message").First).ToBeVisibleAsync();
        await Expect(page.Locator(".findinglist .sev").First).ToBeVisibleAsync();
        await Expect(page.Locator(".opened dd").First).ToBeVisibleAsync();
        await Expect(page.Locator("footer.cautions")).ToBeVisibleAsync();
        await Expect(page.Locator(".bar")).ToBeHiddenAsync();
        await Expect(page.Locator(".parts")).ToBeHiddenAsync();
        foreach (var control in await page.Locator(".button, input, select, textarea").AllAsync())
            await Expect(control).ToBeHiddenAsync();

        // Paper is white, whatever the screen was.
        foreach (var ink in await page.Locator(".findinglist .message, .opened dd, footer.cautions p, section.drawing svg.scene text").AllAsync())
            Assert.InRange(await ink.EvaluateAsync<double>(Brightness), 0, 0.2);
    }
}
