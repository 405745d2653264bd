using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>From the list of rigs to a wiring that is taken, with a keyboard and nothing else.</summary>
public sealed class NewcomerTests(SharedBrowser browser, ServedPage served, ITestOutputHelper output) : PageTest(browser, served)
{
    [Fact]
    public async Task A_newcomer_enters_a_rig_and_has_it_wired_by_keyboard_alone()
    {
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        var walk = new KeyboardWalk(page);

        await walk.ToAsync(page.GetByLabel("A new rig"));
        await walk.TypeAsync("Matinee board");
        await walk.PressAsync("Enter");

        var loads = page.GetByLabel("Add loads: one label a line");
        await walk.ToAsync(loads);
        await walk.TypeAsync("drive-3: 9V DC 12mA centre negative\ndelay-2: 9V 300mA\ntuner-1: 9V DC 30mA\npreamp-1: 12V DC 6W");
        await Expect(page.GetByRole(AriaRole.List, new() { Name = "How the lines read" })).ToContainTextAsync("12 mA");
        await walk.ToAsync(page.GetByRole(AriaRole.Button, new() { Name = "Add 4 loads" }));
        await walk.PressAsync("Enter");
        await Expect(page.GetByLabel("Tag of preamp-1")).ToBeVisibleAsync();
        await Expect(loads).ToBeEmptyAsync();

        await walk.ToAsync(page.GetByLabel("Add supplies: a line, and a line for its outlets below it"));
        await walk.TypeAsync("brick: INPUT 100-240V~ 50/60Hz\n  1-4: 9 V 150 mA\n  5: 9 V 500 mA; 12 V 400 mA\n  6: 9 V 500 mA; 12 V 800 mA");
        await walk.ToAsync(page.GetByRole(AriaRole.Button, new() { Name = "Add 1 supply" }));
        await walk.PressAsync("Enter");
        await Expect(page.GetByLabel("Name of brick")).ToBeVisibleAsync();

        var parts = page.GetByRole(AriaRole.Navigation, new() { Name = "What to do" });
        await walk.ToAsync(parts.GetByRole(AriaRole.Link, new() { Name = "Plan" }), backwards: true);
        await walk.PressAsync("Enter");
        await page.WaitForPartAsync("plan");
        await walk.ToAsync(page.GetByRole(AriaRole.Button, new() { Name = "Plan", Exact = true }));
        await walk.PressAsync("Enter");
        var take = page.GetByRole(AriaRole.Button, new() { Name = "Take this wiring" });
        await Expect(take).ToBeVisibleAsync();
        await walk.ToAsync(take);
        await walk.PressAsync("Enter");

        await Expect(page.GetByText("This is how the rig is wired.")).ToBeVisibleAsync();
        await Expect(page.Verdict()).ToHaveTextAsync("Unsure");
        await walk.ToAsync(parts.GetByRole(AriaRole.Link, new() { Name = "Findings" }), backwards: true);
        await walk.PressAsync("Enter");
        await page.WaitForPartAsync("");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Findings" }).GetByText("Find out first: the polarity of preamp-1 is not known.")).ToBeVisibleAsync();

        output.WriteLine($"Tab was pressed {walk.Tabs} times: {string.Join("; ", walk.Steps.Select(static step => $"{step.Tabs} to {step.To}"))}");
        Assert.Empty(walk.Unseen);
    }
}
