using Bunit;
using Loadmark.Storage.Faults;
using Loadmark.Web.Parts;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Backups on the page, and the ways back.</summary>
public sealed class BackupPartTests : PageTest
{
    [Fact]
    public async Task A_database_that_was_made_anew_beside_backups_is_told_until_there_are_rigs()
    {
        Services.AddSingleton(new StoreOpening { WasCreated = true, Remark = "It was empty." });
        var page = Render<Loadmark.Web.Pages.RigsPage>();
        page.WaitForAssertion(() => Assert.Contains("was empty or gone, and was made anew", page.Find("section.notice").TextContent, StringComparison.Ordinal));
        await OpenAsync(SmallRig.Text);
        var later = Render<Loadmark.Web.Pages.RigsPage>();
        later.WaitForAssertion(() => Assert.NotEmpty(later.FindAll(".rigname")));
        Assert.Empty(later.FindAll("section.notice"));
    }

    [Fact]
    public async Task One_of_the_automatic_backups_is_restored_after_it_was_asked()
    {
        var rig = await Store.AddAsync("rig", "rig: then\n", Stop);
        Assert.Null(await Whole.Copies.KeepTodayAsync());
        rig = (await Store.SaveAsync(rig.Id, rig.Revision, "rig", "rig: now\n", "edit", Stop)).Rig!;
        var restored = 0;
        var part = Render<BackupPart>(parameters => parameters.Add(static one => one.Restored, () => restored++));
        part.Find("li button").Click();
        Assert.Contains("What is kept now is copied first.", part.Find("[role=alertdialog]").TextContent, StringComparison.Ordinal);
        Assert.Equal("rig: now\n", (await Store.FindAsync(rig.Id, Stop))!.Text);
        part.Find("[role=alertdialog] .primary").Click();
        part.WaitForAssertion(() => Assert.StartsWith("Restored: 1 rigs", part.Find("[role=status]").TextContent.Trim(), StringComparison.Ordinal));
        Assert.Equal(1, restored);
        Assert.Equal("rig: then\n", (await Store.FindAsync(rig.Id, Stop))!.Text);
        Assert.Equal(2, part.FindAll("li").Count);
    }

    [Theory]
    [InlineData(0, "Restored: 1 rigs", "rig: then\n")]
    [InlineData(1, "Salvaged: 1 rigs", "rig: now\n")]
    public async Task Where_the_store_is_damaged_the_ways_out_are_buttons(int button, string said, string text)
    {
        var rig = await Store.AddAsync("rig", "rig: then\n", Stop);
        Assert.Null(await Whole.Copies.KeepTodayAsync());
        await Store.SaveAsync(rig.Id, rig.Revision, "rig", "rig: now\n", "edit", Stop);
        await using (var connection = new SqliteConnection($"Data Source={Path.Combine(Kept, "loadmark.db")};Pooling=False"))
        {
            await connection.OpenAsync(Stop);
            await using var command = connection.CreateCommand();
            command.CommandText = "UPDATE Edits SET What = 'other'";
            await command.ExecuteNonQueryAsync(Stop);
        }

        Assert.Contains("loadmark salvage", (await Whole.OpenAsync(Stop)).Trouble, StringComparison.Ordinal);
        var part = Render<BackupPart>(static parameters => parameters.Add(static one => one.IsDamaged, true));
        part.FindAll("p.rowbuttons button")[button].Click();
        part.WaitForAssertion(() => Assert.StartsWith(said, part.Find("[role=status]").TextContent.Trim(), StringComparison.Ordinal));
        Assert.True(Whole.IsOpen);
        Assert.Equal(text, (await Store.FindAsync(rig.Id, Stop))!.Text);
        Assert.NotEmpty(part.FindAll("a[download]"));
    }
}
