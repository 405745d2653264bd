using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>A backup that was downloaded goes back in through the browser. A program of its own: everything in it becomes something else.</summary>
public sealed class RestoreFileTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served), IClassFixture<ServedPage>
{
    [Fact]
    public async Task A_downloaded_backup_is_restored_from_its_file_and_the_rig_is_as_it_was()
    {
        var page = (await VisitAsync()).Page;
        var rig = Encoding.UTF8.GetBytes("rig: There and back\nloads:\n  drive-3: { label: 9V DC 12mA }\n");
        var address = await page.ImportAsync("back.rig.yaml", rig);
        await page.OpenRigsAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Backup", Exact = true }).ClickAsync());
        var backup = await download.PathAsync();

        await page.OpenPartAsync(address, "gear");
        var label = page.GetByLabel("Label of drive-3");
        await label.FillAsync("9V DC 60mA");
        await label.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
        Assert.NotEqual(rig, await page.ExportAsync());

        await page.OpenRigsAsync();
        var backups = page.GetByRole(AriaRole.Region, new() { Name = "Backups" });
        await backups.GetByLabel("Restore from a file").SetInputFilesAsync(backup);
        await Expect(backups.GetByRole(AriaRole.Alertdialog)).ToBeFocusedAsync();
        await backups.GetByRole(AriaRole.Button, new() { Name = "Restore it" }).ClickAsync();
        await Expect(backups.GetByRole(AriaRole.Status)).ToContainTextAsync("Restored: ");
        await Expect(backups.GetByRole(AriaRole.Status)).ToContainTextAsync("-before-restore.db");
        await Expect(backups.GetByRole(AriaRole.Status)).ToBeFocusedAsync();
        await Expect(backups.GetByRole(AriaRole.Status)).ToBeInViewportAsync();
        Assert.Empty(Directory.GetFiles(Served.Folder, "*received*"));

        await page.OpenPartAsync(address, "gear");
        await Expect(label).ToHaveValueAsync("9V DC 12mA");
        Assert.Equal(rig, await page.ExportAsync());
    }
}
