using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>A question on the page is answered by a click, the verdict moves at once, and undo takes it back.</summary>
public sealed class QuestionTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    private const string Rig = """
        rig: Question board
        mains: 230 V 50 Hz
        loads:
          delay-2: { kind: digital, label: "9V DC 300mA 5.5x2.1" }
        supplies:
          wall:
            label: "INPUT 100-240V~ 50/60Hz OUTPUT 9V DC 2A centre negative 5.5x2.1"
            outlets: { 1: "" }
        wired:
          - { from: wall/1, to: delay-2 }

        """;

    [Fact]
    public async Task A_click_answers_and_the_verdict_moves()
    {
        var page = (await VisitAsync()).Page;
        await page.ImportAsync("question.rig.yaml", Encoding.UTF8.GetBytes(Rig));
        var part = page.GetByRole(AriaRole.Region, new() { Name = "One answer would settle this" });
        await Expect(page.Verdict()).ToHaveTextAsync("note", new() { IgnoreCase = true });

        await part.GetByRole(AriaRole.Button, new() { Name = "centre positive" }).ClickAsync();

        await Expect(page.Verdict()).ToHaveTextAsync("harm", new() { IgnoreCase = true });
        await Expect(page.Locator(".bar .verdict .says")).ToContainTextAsync("Do not plug in: delay-2 is centre positive");
        await Expect(page.Locator("#questions-title")).ToBeFocusedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Verdict()).ToHaveTextAsync("note", new() { IgnoreCase = true });

        await part.GetByRole(AriaRole.Button, new() { Name = "centre negative" }).ClickAsync();

        await Expect(page.Locator(".bar .verdict .says")).ToContainTextAsync("Safe to plug in. Volts, polarity and current fit; 300 mA of 2 A.");
    }
}
