using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>A rig file goes in, is edited, and comes out with nothing lost.</summary>
public sealed class ImportTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    private const string Before = "DC9V ⎓ 45mA";
    private const string After = "9V DC 60mA centre negative";

    [Fact]
    public async Task Import_edit_undo_redo_reload_undo_export_gives_the_same_bytes()
    {
        var imported = await File.ReadAllBytesAsync(Repository.Example("pit.rig.yaml"), TestContext.Current.CancellationToken);
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("pit.rig.yaml", imported);
        Assert.Equal(imported, await page.ExportAsync());
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo" });
        var redo = page.GetByRole(AriaRole.Button, new() { Name = "Redo" });
        await Expect(undo).ToBeDisabledAsync();

        await page.OpenPartAsync(address, "gear");
        var label = page.GetByLabel("Label of chorus-1");
        await Expect(label).ToHaveValueAsync(Before);
        await label.FillAsync(After);
        await label.PressAsync("Enter");
        await Expect(undo).ToBeEnabledAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "More about chorus-1" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Figures of chorus-1" })).ToContainTextAsync("60 mA");
        AssertOneLineDiffers(imported, await page.ExportAsync(), "chorus-1");

        await undo.ClickAsync();
        await Expect(label).ToHaveValueAsync(Before);
        Assert.Equal(imported, await page.ExportAsync());
        await redo.ClickAsync();
        await Expect(label).ToHaveValueAsync(After);
        AssertOneLineDiffers(imported, await page.ExportAsync(), "chorus-1");

        await page.ReloadAsync();
        await page.WaitForPartAsync("gear");
        await Expect(label).ToHaveValueAsync(After);
        await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).FocusAsync();
        await page.Keyboard.PressAsync("Control+z");
        await Expect(label).ToHaveValueAsync(Before);
        Assert.Equal(imported, await page.ExportAsync());
        await Expect(undo).ToBeDisabledAsync();
        await page.Keyboard.PressAsync("Control+Shift+z");
        await Expect(label).ToHaveValueAsync(After);
    }

    [Fact]
    public async Task Control_z_in_a_field_takes_back_typing_and_not_an_edit()
    {
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("pit.rig.yaml", await File.ReadAllBytesAsync(Repository.Example("pit.rig.yaml"), TestContext.Current.CancellationToken));
        await page.OpenPartAsync(address, "gear");
        var first = page.GetByLabel("Label of tuner-1");
        await first.FillAsync("9V DC 35mA");
        await first.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();

        var second = page.GetByLabel("Label of chorus-1");
        await second.FocusAsync();
        await second.PressAsync("End");
        await page.Keyboard.TypeAsync("!");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(second).ToHaveValueAsync(Before);
        await Expect(first).ToHaveValueAsync("9V DC 35mA");
    }

    [Theory]
    [InlineData("\r\n", "")] // as an editor on Windows writes it
    [InlineData("\n", "\uFEFF")] // with a mark at the start
    public async Task Line_ends_and_marks_stay_as_they_are(string lineEnd, string mark)
    {
        var text = mark + "# a board, kept by hand\nrig: Two ends\nloads:   # all of them\n  drive-3: { label: \"9V DC 12mA\" }   # loud\n".Replace("\n", lineEnd, StringComparison.Ordinal);
        var imported = Encoding.UTF8.GetBytes(text);
        var page = (await VisitAsync()).Page;
        await page.ImportAsync("two-ends.rig.yaml", imported);
        Assert.Equal(imported, await page.ExportAsync());
    }

    [Theory]
    [InlineData(40, 300)]
    [InlineData(900, 700)]
    public async Task A_file_that_is_dropped_anywhere_on_the_list_is_imported(int x, int y)
    {
        var file = Repository.Example("festival.rig.yaml");
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        await DropAsync(page, file, (x, y));
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Diagram" })).ToBeVisibleAsync();
        Assert.Equal(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken), await page.ExportAsync());
    }

    [Fact]
    public async Task A_sheet_that_was_kept_gives_the_rig_back()
    {
        var file = await File.ReadAllBytesAsync(Repository.Example("pit.rig.yaml"), TestContext.Current.CancellationToken);
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("pit.rig.yaml", file);
        var sheet = await page.Context.APIRequest.GetAsync($"{address}/paper?as=pdf");
        Assert.True(sheet.Ok, sheet.StatusText);
        await page.OpenRigsAsync();
        await page.GetByLabel("Choose a file").SetInputFilesAsync(new FilePayload { Name = "lid.pdf", MimeType = "application/pdf", Buffer = await sheet.BodyAsync() });
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Diagram" })).ToBeVisibleAsync();
        Assert.DoesNotContain(address, page.Url, StringComparison.Ordinal);
        Assert.Equal(file, await page.ExportAsync());
    }

    [Fact]
    public async Task A_file_that_is_no_rig_is_refused_with_the_place_and_nothing_is_lost()
    {
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        var before = await page.Locator(".riglist li").CountAsync();
        await page.GetByLabel("Choose a file").SetInputFilesAsync(new FilePayload
        {
            Name = "bad.rig.yaml",
            MimeType = "application/yaml",
            Buffer = "rig: Bad\nloads:\n  drive-3: { colour: red }\n"u8.ToArray(),
        });
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "bad.rig.yaml is not a rig file" })).ToContainTextAsync("Line 3, column 14");
        Assert.Equal(before, await page.Locator(".riglist li").CountAsync());
    }

    private static void AssertOneLineDiffers(byte[] one, byte[] other, string about)
    {
        var (before, after) = (Encoding.UTF8.GetString(one).Split('\n'), Encoding.UTF8.GetString(other).Split('\n'));
        Assert.Equal(before.Length, after.Length);
        var line = Assert.Single(Enumerable.Range(0, before.Length), index => before[index] != after[index]);
        Assert.Contains(about, before[line], StringComparison.Ordinal);
        Assert.Contains(about, after[line], StringComparison.Ordinal);
    }

    // A script cannot drop a file of the disk; the browser's own protocol can, as the desktop does.
    private static async Task DropAsync(IPage page, string file, (int X, int Y) at)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        foreach (var type in (string[])["dragEnter", "dragOver", "drop"])
        {
            await session.SendAsync("Input.dispatchDragEvent", new Dictionary<string, object>
            {
                ["type"] = type,
                ["x"] = at.X,
                ["y"] = at.Y,
                ["data"] = new Dictionary<string, object> { ["items"] = Array.Empty<object>(), ["files"] = new[] { file }, ["dragOperationsMask"] = 1 },
            });
        }
    }
}
