using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>One rig in two tabs: the second edit is told of the first, and neither is lost.</summary>
public sealed class TwoTabsTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    private const string Start = "rig: Two tabs\nloads:\n  drive-3: { label: 9V DC 12mA }\n  delay-2: { label: 9V DC 300mA }\n";
    private const string Notice = "This rig was also edited in another window.";

    [Theory]
    [InlineData("Keep this one", "delay-2: { label: 9V DC 250mA }")]
    [InlineData("Take the other window's", "drive-3: { label: 9V DC 15mA }")]
    [InlineData("Keep both edits", "drive-3: { label: 9V DC 15mA }\n  delay-2: { label: 9V DC 250mA }")]
    public async Task The_second_edit_is_told_of_the_first(string choice, string kept)
    {
        var visit = await VisitAsync();
        var (first, second) = (visit.Page, await visit.Context.NewPageAsync());
        var address = await first.ImportAsync("two.rig.yaml", Encoding.UTF8.GetBytes(Start));
        await first.OpenPartAsync(address, "gear");
        await second.OpenPartAsync(address, "gear");

        // While something is typed and not kept, nothing that is new is put over it.
        await second.GetByLabel("Label of delay-2").FillAsync("9V DC 250mA");
        await CommitAsync(first, "drive-3", "9V DC 15mA");
        await Expect(first.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
        await second.GetByLabel("Label of delay-2").PressAsync("Enter");
        await Expect(second.GetByRole(AriaRole.Alert).Filter(new() { HasText = Notice })).ToBeVisibleAsync();

        var between = Encoding.UTF8.GetString(await first.ExportAsync());
        Assert.Contains("15mA", between, StringComparison.Ordinal);
        Assert.DoesNotContain("250mA", between, StringComparison.Ordinal);
        await Expect(second.GetByLabel("Label of delay-2")).ToHaveValueAsync("9V DC 250mA");

        await second.GetByRole(AriaRole.Button, new() { Name = choice }).ClickAsync();
        await Expect(second.GetByText(Notice)).ToBeHiddenAsync();
        Assert.Contains(kept, Encoding.UTF8.GetString(await second.ExportAsync()), StringComparison.Ordinal);

        // What does not count is one step back: the other window's edit, or else this one's.
        await second.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(second.GetByLabel("Label of drive-3")).ToHaveValueAsync(choice == "Keep this one" ? "9V DC 15mA" : "9V DC 12mA");
        await Expect(second.GetByLabel("Label of delay-2")).ToHaveValueAsync(choice == "Keep this one" ? "9V DC 300mA" : "9V DC 250mA");
    }

    [Fact]
    public async Task What_one_window_does_is_seen_in_the_other_and_can_be_undone_there()
    {
        var visit = await VisitAsync();
        var (first, second) = (visit.Page, await visit.Context.NewPageAsync());
        var address = await first.ImportAsync("live.rig.yaml", Encoding.UTF8.GetBytes(Start));
        await first.OpenPartAsync(address, "gear");
        await second.OpenPartAsync(address, "gear");

        await CommitAsync(first, "drive-3", "9V DC 15mA");

        await Expect(second.GetByLabel("Label of drive-3")).ToHaveValueAsync("9V DC 15mA");
        await Expect(second.GetByText("Changed elsewhere, and shown here:")).ToBeVisibleAsync();
        await second.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(first.GetByLabel("Label of drive-3")).ToHaveValueAsync("9V DC 12mA");
        await Expect(first.GetByRole(AriaRole.Alert).Filter(new() { HasText = Notice })).ToHaveCountAsync(0);
    }

    private static async Task CommitAsync(IPage page, string load, string label)
    {
        await page.GetByLabel($"Label of {load}").FillAsync(label);
        await page.GetByLabel($"Label of {load}").PressAsync("Enter");
    }
}
