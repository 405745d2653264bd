using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>A wiring that exists is entered as it is, an unsafe one too, and harm is said of it: by mouse in the diagram and by keys alone.</summary>
public sealed class WiringTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    private const string Rig = """
        rig: Wrong adaptor
        mains: 230 V 50 Hz
        loads:
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" }
        supplies:
          wall:
            label: "INPUT 100-240V~ 50/60Hz OUTPUT 12V DC 500mA centre positive"
            outlets: { 1: "" }

        """;

    private const string Harm = "Do not plug in: drive-3 gets 12 V from wall/1";

    [Fact]
    public async Task A_pointer_enters_what_harms_and_is_told_before_and_after()
    {
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("wrong.rig.yaml", Encoding.UTF8.GetBytes(Rig));
        await page.OpenPartAsync(address, "wire");
        await page.Locator("svg.scene g.part-outlet[data-subject='wall/1']").First.ClickAsync();
        var load = page.Locator("svg.scene g.part-load[data-subject='drive-3']").First;
        await Expect(load).ToHaveClassAsync(new System.Text.RegularExpressions.Regex(@"\bwarned\b", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)));
        await Expect(page.Locator(".target .sev-harm")).ToBeVisibleAsync();

        await load.ClickAsync();

        await Expect(page.Verdict()).ToHaveTextAsync("harm", new() { IgnoreCase = true });
        await Expect(page.Locator(".bar .verdict .says")).ToContainTextAsync(Harm);
        await Expect(page.GetByText("Entered as it is plugged.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Verdict()).ToHaveTextAsync("open", new() { IgnoreCase = true });
    }

    [Fact]
    public async Task Keys_alone_enter_what_harms_and_take_it_back()
    {
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("wrong.rig.yaml", Encoding.UTF8.GetBytes(Rig));
        await page.OpenPartAsync(address, "wire");
        var place = page.GetByLabel("Where drive-3 is plugged in");
        for (var key = 0; key < 40 && !await place.EvaluateAsync<bool>("field => field === document.activeElement"); key++)
            await page.Keyboard.PressAsync("Tab");
        await Expect(place).ToBeFocusedAsync();

        await page.Keyboard.PressAsync("ArrowDown");

        await Expect(page.Locator(".bar .verdict .says")).ToContainTextAsync(Harm);
        await Expect(page.Locator(".pluggedsays .sev-harm")).ToBeVisibleAsync();
        await Expect(place).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(page.Verdict()).ToHaveTextAsync("open", new() { IgnoreCase = true });
    }
}
