using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>
/// No part scrolls sideways, at three widths; and pictures of every part for people to look at, in light and dark, where LOADMARK_SCREENSHOTS
/// names a folder for them.
/// </summary>
public sealed class ScreenshotTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served), IClassFixture<ServedPage>
{
    private static readonly string? Folder = Environment.GetEnvironmentVariable("LOADMARK_SCREENSHOTS") is { Length: > 0 } asked ? asked : null;

    [Theory]
    [InlineData(1440, 900)]
    [InlineData(768, 1024)]
    [InlineData(390, 844)]
    public async Task Every_part_is_drawn_without_scrolling_sideways(int width, int height)
    {
        var page = (await VisitAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = ColorScheme.Light, ReducedMotion = ReducedMotion.Reduce })).Page;
        var wide = new List<string>();
        await page.OpenRigsAsync();
        await Expect(page.Locator(".rigsays .sev")).ToHaveCountAsync(await page.Locator(".riglist li").CountAsync());
        await ShootAsync(page, "rigs", width, wide);
        foreach (var (name, load, supply) in ((string, string, string)[])[
            ("yes", "my delay says 9V DC 300mA centre negative", "9V DC 2A centre negative"),
            ("if", "delay: 9V DC 300mA centre negative\ndrive: 9V 12mA\ntuner: 9V 30mA", "9V DC 2A centre negative"),
            ("find-out", "9V DC 300mA centre negative", "9V 1A"),
            ("no", "drive: 9V DC 12mA centre negative", "12V DC 500mA centre positive"),
            ("shop", "delay: 9V DC 300mA centre negative\npreamp: 18V DC 60mA centre negative", "")])
        {
            await page.GetByLabel("The pedal says").FillAsync(load);
            await page.GetByLabel("The adaptor says").FillAsync(supply);
            await Expect(page.Locator(".answer .says")).ToContainTextAsync(name switch { "yes" => "Yes, it", "if" => "Yes, if", "no" => "No:", "shop" => "It wants", _ => "Find out" });
            await ShootAsync(page, $"ask-{name}", width, wide);
        }

        var pit = await page.AddressOfAsync(RigPages.Pit);
        foreach (var (part, name) in RigPages.Parts)
        {
            await page.OpenPartAsync(pit, part);
            await PartOpener.OpenAsync(page, part);
            await ShootAsync(page, $"pit-{name.Replace(' ', '-').ToLowerInvariant()}", width, wide);
        }

        await page.OpenPartAsync(await page.AddressOfAsync(RigPages.Festival), "");
        await ShootAsync(page, "festival-findings", width, wide);
        var gear = await page.FillLibraryAsync();
        await ShootAsync(page, "gear-library", width, wide);
        await page.OpenGearAsync(gear);
        await ShootAsync(page, "gear-item", width, wide);
        Assert.True(wide.Count == 0, string.Join(Environment.NewLine, wide));
    }

    private static async Task ShootAsync(IPage page, string name, int width, List<string> wide)
    {
        await page.EvaluateAsync("() => scrollTo(0, 0)");
        wide.AddRange((await Layout.WideAsync(page)).Select(fault => $"{name}: {fault}"));
        if (Folder is null)
            return;
        foreach (var scheme in (ColorScheme[])[ColorScheme.Dark, ColorScheme.Light])
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await Expect(page.Locator("html.dark")).ToHaveCountAsync(scheme == ColorScheme.Dark ? 1 : 0);
            await page.ScreenshotAsync(new() { Path = Path.Combine(Folder, $"{name}-{width}-{scheme.ToString().ToLowerInvariant()}.png"), FullPage = true });
        }
    }
}
