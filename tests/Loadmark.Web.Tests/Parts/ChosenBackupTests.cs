using AngleSharp.Dom;
using Bunit;
using Loadmark.Web.Parts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Web.Tests.Parts;

/// <summary>A backup that the user chooses in the browser takes the place of what is kept, or leaves nothing behind.</summary>
public sealed class ChosenBackupTests : PageTest
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_chosen_backup_is_restored_after_it_was_asked(bool isDamaged)
    {
        var (backup, rig) = await BackUpThenChangeAsync();
        if (isDamaged)
        {
            await File.WriteAllTextAsync(Path.Combine(Kept, "loadmark.db"), "no database", Stop);
            Assert.NotNull((await Whole.OpenAsync(Stop)).Trouble);
        }

        var part = Render<BackupPart>(parameters => parameters.Add(static one => one.IsDamaged, isDamaged));
        Choose(part, backup, "mon\u202Eday.db");
        var question = part.Find("[role=alertdialog]").TextContent;
        Assert.Contains("becomes what is in mon·day.db, in every window.", question, StringComparison.Ordinal);
        Assert.Equal(isDamaged, question.Contains("The damaged file is set aside", StringComparison.Ordinal));
        Assert.Equal(!isDamaged, question.Contains("What is kept now is copied first.", StringComparison.Ordinal));
        if (!isDamaged)
            Assert.Equal("rig: now\n", (await Store.FindAsync(rig, Stop))!.Text);
        Restore(part, "Restored: 1 rigs");
        Assert.True(Whole.IsOpen);
        Assert.Equal("rig: then\n", (await Store.FindAsync(rig, Stop))!.Text);
    }

    [Fact]
    public async Task What_is_no_backup_is_refused_as_by_the_command()
    {
        var (_, rig) = await BackUpThenChangeAsync();
        var part = Render<BackupPart>();
        Choose(part, "rig: no backup\n"u8.ToArray(), "../../film.db");
        Restore(part, "../../film.db is not a backup of Loadmark. Nothing was restored.");
        Assert.Equal("rig: now\n", (await Store.FindAsync(rig, Stop))!.Text);
        Assert.Empty(part.FindAll("[role=alertdialog]"));
    }

    [Fact]
    public async Task A_damaged_backup_is_refused_as_by_the_command()
    {
        var (backup, rig) = await BackUpThenChangeAsync();
        var part = Render<BackupPart>();
        Choose(part, backup[..(backup.Length / 2)], "half.db");
        Restore(part, "half.db is damaged.");
        Assert.Equal("rig: now\n", (await Store.FindAsync(rig, Stop))!.Text);
    }

    [Fact]
    public async Task One_that_is_too_large_is_refused_before_a_byte_is_taken()
    {
        Services.AddSingleton(new PageLimits { LargestBackup = 20_000 });
        var (backup, _) = await BackUpThenChangeAsync();
        var part = Render<BackupPart>();
        Choose(part, backup, "large.db");
        Assert.Empty(part.FindAll("[role=alertdialog]"));
        Assert.Matches(@"^large\.db has [0-9]+ kB\. The page takes a backup of up to 20 kB; .*loadmark restore", Said(part));
        AssertNothingLeft();
    }

    [Fact]
    public async Task Who_says_no_keeps_what_is_there()
    {
        var (backup, rig) = await BackUpThenChangeAsync();
        var part = Render<BackupPart>();
        Choose(part, backup, "monday.db");
        part.FindAll("[role=alertdialog] button")[1].Click();
        Assert.Empty(part.FindAll("[role=alertdialog]"));
        Assert.Equal("rig: now\n", (await Store.FindAsync(rig, Stop))!.Text);
        Choose(part, backup, "monday.db");
        Restore(part, "Restored: 1 rigs");
    }

    private async Task<(byte[] Backup, Guid Rig)> BackUpThenChangeAsync()
    {
        var rig = await Store.AddAsync("rig", "rig: then\n", Stop);
        var file = Path.Combine(Path.GetDirectoryName(Kept)!, "backup.db");
        await Whole.Copies.BackUpAsync(file, cancellationToken: Stop);
        await Store.SaveAsync(rig.Id, rig.Revision, "rig", "rig: now\n", "edit", Stop);
        return (await File.ReadAllBytesAsync(file, Stop), rig.Id);
    }

    private static void Choose(IRenderedComponent<BackupPart> part, byte[] content, string name) =>
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(content, name));

    private void Restore(IRenderedComponent<BackupPart> part, string said)
    {
        part.Find("[role=alertdialog] .primary").Click();
        part.WaitForAssertion(() => Assert.StartsWith(said, Said(part), StringComparison.Ordinal));
        part.WaitForAssertion(() => Assert.False(part.Find("input[type=file]").IsDisabled()));
        AssertNothingLeft();
    }

    private static string Said(IRenderedComponent<BackupPart> part) => part.Find("[role=status]").TextContent.Trim();

    private void AssertNothingLeft() => Assert.Empty(Directory.GetFiles(Kept, "*received*"));
}
