using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>All that is kept, as a download.</summary>
public sealed class BackupLinkTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    [Fact]
    public async Task A_backup_is_downloaded_while_rigs_are_open()
    {
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Backup", Exact = true }).ClickAsync());
        Assert.Matches("^loadmark-[0-9]{8}-[0-9]{4}\\.db$", download.SuggestedFilename);
        var bytes = await File.ReadAllBytesAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
        Assert.StartsWith("SQLite format 3\0", Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
    }
}
