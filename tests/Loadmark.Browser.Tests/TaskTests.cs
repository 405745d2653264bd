using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>What people come for, done by mouse as they do it, with the clicks that it takes counted.</summary>
public sealed class TaskTests(SharedBrowser browser, ServedPage served, ITestOutputHelper output) : PageTest(browser, served)
{
    private const string Loads = """
        fuzz-1: 9V DC 5mA centre positive
        drive-3: 9V DC 12mA centre negative
        drive-4: 9V DC 18mA centre negative
        chorus-1: 9V DC 45mA centre negative
        phaser-2: 9V DC 25mA centre negative
        delay-2: 9V DC 300mA centre negative
        reverb-1: 9V DC 110mA centre negative
        tuner-1: 9V DC 30mA centre negative
        preamp-1: 12V DC 250mA centre negative
        looper-1: 9V DC 170mA centre negative
        """;

    private const string Supplies = """
        brick: isolated, INPUT 100-240V~ 50/60Hz
          1-6: 9 V DC 150 mA centre negative
          7-8: 9 V DC 500 mA centre negative; 12 V 400 mA
        row: isolated, INPUT 100-240V~ 50/60Hz
          1-4: 9 V DC 500 mA centre negative
        """;

    [Fact]
    public async Task Ten_loads_and_two_supplies_are_entered_planned_and_switched_on_in_at_most_15_clicks()
    {
        var page = (await VisitAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 } })).Page;
        await page.OpenRigsAsync();
        var hand = new CountedHand(page);
        ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
        ILocator Part(string name) => page.GetByRole(AriaRole.Navigation, new() { Name = "What to do" }).GetByRole(AriaRole.Link, new() { Name = name });

        await hand.ClickAsync(Button("Begin"));
        await hand.PasteAsync(page.GetByLabel("Add loads: one label a line"), Loads);
        await Expect(page.GetByRole(AriaRole.List, new() { Name = "How the lines read" })).ToContainTextAsync("looper-1");
        await hand.ClickAsync(Button("Add 10 loads"));
        await hand.PasteAsync(page.GetByLabel("Add supplies: a line, and a line for its outlets below it"), Supplies);
        await hand.ClickAsync(Button("Add 2 supplies"));
        await hand.ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = "Plan my wiring" }));
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Plug in, in this order" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Complementary).Or(page.Locator("main"))).ToContainTextAsync("fuzz-1");
        await hand.ClickAsync(page.GetByRole(AriaRole.Button, new() { Name = "Take this wiring" }));
        await Expect(page.GetByText("This is how the rig is wired.")).ToBeVisibleAsync();
        await hand.ClickAsync(Part("Switch on"));
        await hand.ClickAsync(Button("Switch on"));
        await Expect(page.Locator(".plotbox svg.scene")).ToHaveCountAsync(2);

        output.WriteLine($"{hand.Clicks} clicks and {hand.Pastes} texts pasted");
        Assert.InRange(hand.Clicks, 1, 15);
    }
}
