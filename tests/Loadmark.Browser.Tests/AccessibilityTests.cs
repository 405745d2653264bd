using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>
/// axe-core (Deque Systems, the package Deque.AxeCore.Commons) finds no violation of WCAG 2.2 A and AA, nor of its best practices, on any
/// page, with things opened, in light and in dark.
/// </summary>
public sealed class AccessibilityTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served), IClassFixture<ServedPage>
{
    private const string Everything = "Everything at once";

    // Looked at again and again: what an animation promises of its end it does not always keep.
    private const string Settled = "() => document.getAnimations().every(animation => animation.playState !== 'running')";

    public static TheoryData<string, string> Parts =>
        [.. from rig in (string[])[RigPages.Pit, Everything] from part in RigPages.Parts select (rig, part.Part)];

    [Theory]
    [MemberData(nameof(Parts))]
    public async Task Axe_finds_nothing_on_a_part_of_a_rig(string rig, string part)
    {
        var page = (await VisitAsync(new() { ColorScheme = ColorScheme.Light })).Page;
        await page.OpenPartAsync(rig == Everything ? await KeepAsync(StateRigs.Everything) : Served.AddressOf(rig), part);

        // Closed, the one rig has nothing that the other has not.
        string[] closed = rig == RigPages.Pit ? await Axe.ViolationsAsync(page) : [];
        await PartOpener.OpenAsync(page, part);
        AssertNone(closed.Concat(await InBothAsync(page)));
    }

    [Fact]
    public async Task Axe_finds_nothing_on_any_verdict()
    {
        var page = (await VisitAsync(new() { ColorScheme = ColorScheme.Light })).Page;
        var violations = new List<string>();
        foreach (var (verdict, rig) in StateRigs.Verdicts)
        {
            await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
            await page.OpenPartAsync(await KeepAsync(rig), "");
            await Expect(page.Verdict()).ToHaveTextAsync(verdict);
            violations.AddRange((await InBothAsync(page)).Select(violation => $"{verdict}: {violation}"));
        }

        AssertNone(violations);
    }

    [Fact]
    public async Task Axe_finds_nothing_on_the_list_of_rigs()
    {
        var page = (await VisitAsync(new() { ColorScheme = ColorScheme.Light })).Page;
        await page.OpenRigsAsync();
        await page.GetByLabel("Choose a file").SetInputFilesAsync(new FilePayload { Name = "bad.yaml", MimeType = "application/yaml", Buffer = "rig: 1\nx: 2\n"u8.ToArray() });
        await Expect(page.GetByText("bad.yaml is not a rig file that can be read")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Duplicate " + RigPages.Pit }).First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = $"Remove {RigPages.Pit}, copy" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Bring it back" })).ToBeVisibleAsync();
        await page.GetByLabel("The pedal says").FillAsync("drive: 9V 12mA\ntuner: 9V DC 30mA");
        await page.GetByLabel("The adaptor says").FillAsync("12V DC 500mA centre positive");
        await Expect(page.Locator(".answer-harm")).ToBeVisibleAsync();
        AssertNone(await InBothAsync(page));
    }

    [Fact]
    public async Task Axe_finds_nothing_on_the_gear_library()
    {
        var page = (await VisitAsync(new() { ColorScheme = ColorScheme.Light })).Page;
        var gear = await page.FillLibraryAsync();
        await page.GetByLabel("What is printed on the gear").FillAsync("chorus-1: 9V DC 45mA\ndrive-3: 9V DC 12mA");
        await page.GetByLabel("Choose a file").SetInputFilesAsync(new FilePayload { Name = "more.yaml", MimeType = "application/yaml", Buffer = "loads:\n  drive-3: { label: 9V DC 20mA }\n  NEW-1: { label: 9V DC 5mA }\n  BAD: { colour: red }\n"u8.ToArray() });
        await Expect(page.GetByText("1 that differ")).ToBeVisibleAsync();
        var list = await InBothAsync(page);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await page.OpenGearAsync(gear);
        AssertNone([.. list, .. await InBothAsync(page)]);
    }

    [Theory]
    [InlineData("/not-found", "There is no such page")]
    [InlineData("/rig/00000000-0000-0000-0000-000000000001", "This rig is not here")]
    public async Task Axe_finds_nothing_on_a_page_about_nothing(string address, string heading)
    {
        var page = (await VisitAsync(new() { ColorScheme = ColorScheme.Light })).Page;
        await page.GotoAsync(address);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = heading })).ToBeVisibleAsync();
        AssertNone(await InBothAsync(page));
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_new_rig()
    {
        var page = (await VisitAsync(new() { ColorScheme = ColorScheme.Light })).Page;
        var address = await page.ImportAsync("new.yaml", "rig: New\n"u8.ToArray());
        foreach (var (part, _) in RigPages.Parts.Where(static part => part.Part.Length > 0))
        {
            await page.OpenPartAsync(address, part);
            AssertNone(await InBothAsync(page));
        }
    }

    private async Task<string> KeepAsync(string rig)
    {
        using var kept = new StoredContent(Served.Program);
        return await kept.AddRigAsync(rig);
    }

    private static void AssertNone(IEnumerable<string> violations) =>
        Assert.True(!violations.Any(), string.Join(Environment.NewLine, violations.Distinct()));

    /// <summary>Colours that are still changing are nobody's.</summary>
    private static async Task SettleAsync(IPage page) => await page.WaitForFunctionAsync(Settled, null, new() { PollingInterval = 50 });

    private static async Task<List<string>> InBothAsync(IPage page)
    {
        await SettleAsync(page);
        var light = await Axe.ViolationsAsync(page);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await Expect(page.Locator("html.dark")).ToBeVisibleAsync();
        await SettleAsync(page);
        return [.. light, .. (await Axe.ColoursAsync(page)).Select(static violation => $"in the dark: {violation}")];
    }
}
