using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>"May I plug this in?" on the first screen, with the keys and clicks that it takes.</summary>
public sealed class AskTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    [Fact]
    public async Task The_first_question_takes_two_fields_and_no_click_and_its_chain_two_more_lines()
    {
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        await Expect(page.GetByLabel("The pedal says")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("My delay says 9V DC 300mA centre negative");
        var answer = page.GetByRole(AriaRole.Status).Filter(new() { HasText = "300" });
        await Expect(page.Locator(".answer")).ToContainTextAsync("It wants a regulated supply with 9 V d.c., centre negative, 350 mA or more.");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByLabel("The adaptor says")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("9V 2A centre negative");
        await Expect(answer).ToContainTextAsync("Yes, it is safe to plug in. Volts, polarity and current fit; 300 mA of 2 A.");
        await Expect(page.Locator(".points > div")).ToHaveCountAsync(7);
        await Expect(page.GetByText("Is so much current too much?")).ToBeVisibleAsync();

        await page.Keyboard.PressAsync("Shift+Tab");
        await Expect(page.GetByLabel("The pedal says")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("\ndrive: 9V DC 12mA ctr neg\ntuner: 9V DC 30mA ctr neg");
        await Expect(page.GetByLabel("The pedal says")).ToHaveValueAsync("My delay says 9V DC 300mA centre negative\ndrive: 9V DC 12mA ctr neg\ntuner: 9V DC 30mA ctr neg");
        await Expect(page.Locator(".answer")).ToContainTextAsync("Yes, if none of them is digital");
        await Expect(page.Locator(".points")).ToContainTextAsync("300 mA + 12 mA + 30 mA = 342 mA of 2 A");
    }

    [Fact]
    public async Task Harm_is_said_and_looks_like_harm_and_the_question_is_kept_as_a_rig()
    {
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        await page.Keyboard.TypeAsync("drive: 9V DC 12mA centre negative");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("12V DC 500mA centre positive");
        await Expect(page.Locator(".answer.answer-harm")).ToContainTextAsync("No: the drive is made for 9 V and the adaptor gives 12 V");
        await Expect(page.Locator(".answer .told")).ToContainTextAsync("centre positive");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it as a rig" }).ClickAsync();
        await Expect(page.Verdict()).ToHaveTextAsync("Harm");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "drive on adaptor" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task What_cannot_be_read_is_said_while_it_is_typed()
    {
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        await page.Keyboard.TypeAsync("my delay");
        await Expect(page.Locator(".answer")).ToContainTextAsync("Find out first: what voltage is the delay made for?");
        await page.Keyboard.TypeAsync(" 3 frogs");
        await Expect(page.Locator(".answer .wrong")).ToContainTextAsync("'my delay 3 frogs' cannot be used: it says no voltage, current or power");
        await page.GetByLabel("The pedal says").FillAsync("my delay 9V 300mA");
        await Expect(page.Locator(".answer")).ToContainTextAsync("It wants a regulated supply with 9 V d.c., centre negative, 350 mA or more.");
        await page.GetByLabel("The adaptor says").FillAsync("9V 1A");
        await Expect(page.Locator(".answer.answer-unsure")).ToContainTextAsync("Find out first: is the adaptor centre negative or centre positive?");
    }
}
