using System.Text.RegularExpressions;
namespace Loadmark.Browser.Tests.House;

/// <summary>Opens on each part of a rig's page what can be opened, as somebody who uses it does.</summary>
internal static partial class PartOpener
{
    /// <summary>Opens it.</summary>
    /// <param name="page">The page, on that part.</param>
    /// <param name="part">The part, as in <see cref="RigPages.Parts"/>.</param>
    public static Task OpenAsync(IPage page, string part) => part switch
    {
        "" => OpenFindingAsync(page),
        "gear" => OpenGearAsync(page),
        "wire" => PickOutletAsync(page),
        "plan" => PlanAsync(page),
        "start" => SwitchOnAsync(page),
        "buy" => BuyAsync(page),
        "sheet" => ChooseSheetAsync(page),
        "accept" => MeasureAsync(page),
        "text" => RefuseTextAsync(page),
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "There is no such part."),
    };

    /// <summary>Opens a table or the like under its heading.</summary>
    public static async Task UnfoldAsync(IPage page, string summary)
    {
        await page.GetByText(summary, new() { Exact = true }).ClickAsync();
        await Expect(page.Locator("details[open]").Filter(new() { HasText = summary })).ToBeVisibleAsync();
    }

    private static async Task ChooseSheetAsync(IPage page)
    {
        await page.GetByLabel("Labels", new() { Exact = true }).UncheckAsync();
        await page.GetByLabel("Reels of cable that you have").FillAsync("25 m");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Open as PDF" })).ToBeVisibleAsync();
    }

    private static async Task MeasureAsync(IPage page)
    {
        await page.GetByLabel("Meter shows").FillAsync("12.5");
        await page.GetByRole(AriaRole.Button, new() { Name = "− centre negative" }).ClickAsync();
        await Expect(page.Locator(".measurecard [role=status]")).ToContainTextAsync("V.");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Throw it away" })).ToBeVisibleAsync();
    }

    private static async Task OpenFindingAsync(IPage page)
    {
        await page.Locator("button.finding").First.ClickAsync();
        await Expect(page.Locator(".opened dl")).ToBeVisibleAsync();
        await UnfoldAsync(page, "The outlets as a table");
    }

    private static async Task OpenGearAsync(IPage page)
    {
        await page.GetByLabel("Add loads: one label a line").FillAsync("extra-1: 9V DC 12mA centre negative sparkling\nno label at all");
        await Expect(page.GetByRole(AriaRole.List, new() { Name = "How the lines read" })).ToContainTextAsync("extra-1");
        foreach (var list in (string[])["Loads", "Supplies", "Leads on hand"])
        {
            var more = page.GetByRole(AriaRole.List, new() { Name = list }).GetByRole(AriaRole.Button, new() { NameRegex = AboutThing() }).First;
            if (await more.CountAsync() == 0)
                continue;
            await more.ClickAsync();
            await Expect(more).ToHaveAttributeAsync("aria-expanded", "true");
        }

        var outlet = page.GetByRole(AriaRole.Button, new() { NameRegex = AboutOutlet() }).First;
        await outlet.ClickAsync();
        await Expect(outlet).ToHaveAttributeAsync("aria-expanded", "true");
    }

    private static async Task PickOutletAsync(IPage page)
    {
        await page.GetByLabel("Outlet", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Index = 2 });
        await Expect(page.GetByRole(AriaRole.List, new() { Name = "Loads for " })).ToBeVisibleAsync();
        await UnfoldAsync(page, "Join two outlets in series or in parallel");
    }

    private static async Task PlanAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Plug in, in this order" })).ToBeVisibleAsync();
        await UnfoldAsync(page, "How good it is, and what is proven");
    }

    private static async Task SwitchOnAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Switch on", Exact = true }).ClickAsync();
        await Expect(page.Locator(".plotbox svg.scene")).ToHaveCountAsync(2);
        await UnfoldAsync(page, "The same as a table");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sample", Exact = true }).ClickAsync();
        await Expect(page.Locator("table.spread")).ToBeVisibleAsync();
        await UnfoldAsync(page, "What was assumed for want of figures");
    }

    private static async Task BuyAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it with the example list" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Choose supplies" }).ClickAsync();
        await Expect(page.Locator(".option button.finding").First).ToHaveAttributeAsync("aria-expanded", "true");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Put these into the rig, wired so" })).ToBeVisibleAsync();
    }

    private static async Task RefuseTextAsync(IPage page)
    {
        await page.GetByLabel("Text of the rig's file").FillAsync("rig: Bad\nloads:\n  drive-3: { colour: red }\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this text" }).ClickAsync();
        await Expect(page.GetByText("Nothing is changed yet:")).ToBeVisibleAsync();
    }

    /// <summary>The button that opens a thing, and closes it again.</summary>
    [GeneratedRegex("^(?:More|Less) about ", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex AboutThing();

    [GeneratedRegex("^(?:More|Less) about outlet ", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex AboutOutlet();
}
