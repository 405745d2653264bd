using Bunit;
using Loadmark.Web.Parts;
using Loadmark.Workshop.Sessions;

namespace Loadmark.Web.Tests.Parts;

/// <summary>What stands over the whole rig.</summary>
public sealed class RigNoticesTests : PageTest
{
    [Fact]
    public async Task An_edit_that_is_not_kept_says_so_and_is_kept_at_the_next_try()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<RigNotices>(view);
        Assert.Empty(part.FindAll(".notice"));
        Directory.Move(Kept, Kept + ".aside");
        await File.WriteAllTextAsync(Kept, "in the way", Stop);
        await view.Session.EditAsync("name", view.Rig with { Name = "Later" });
        part.WaitForAssertion(() => Assert.Contains("not kept", part.Find("[role=alert]").TextContent, StringComparison.Ordinal));

        File.Delete(Kept);
        Directory.Move(Kept + ".aside", Kept);
        await part.InvokeAsync(() => part.FindAll("button").First(button => button.TextContent == "Try again").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".notice")));
        Assert.Equal("Later", (await ReopenAsync(view.Session.Kept!.Id)).Rig.Name);
    }

    [Fact]
    public async Task Two_windows_are_asked_which_edit_counts()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<RigNotices>(view);
        var other = (await ReopenAsync(view.Session.Kept!.Id)).Session;
        await other.EditAsync("theirs", other.Rig! with { Name = "Theirs" });
        await view.Session.EditAsync("ours", view.Rig with { Name = "Ours" });
        part.WaitForAssertion(() => Assert.Contains("another window", part.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        await part.InvokeAsync(() => part.FindAll("button").First(button => button.TextContent == "Take the other window's").ClickAsync(new()));
        Assert.Equal("Theirs", view.Rig.Name);
        await view.Session.UndoAsync();
        Assert.Equal("Ours", view.Rig.Name);
        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".notice")));
    }

    [Fact]
    public async Task Two_edits_are_told_side_by_side_and_merged_as_chosen()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<RigNotices>(view);
        var other = (await ReopenAsync(view.Session.Kept!.Id)).Session;
        await other.EditTextAsync("theirs", other.Text.Replace("9V DC 12mA", "9V DC 20mA", StringComparison.Ordinal).Replace("Pier Theatre", "Pier", StringComparison.Ordinal));
        await view.Session.EditTextAsync("ours", view.Session.Text.Replace("9V DC 12mA", "9V DC 15mA", StringComparison.Ordinal).Replace("# the loads", "# the loads, counted", StringComparison.Ordinal));
        part.WaitForAssertion(() => Assert.Equal(2, part.FindAll(".told").Count));
        Assert.Contains("drive-3, Label, as printed: 9V DC 12mA centre negative 5.5x2.1 became 9V DC 15mA", part.FindAll(".told")[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("Name of the rig: Pier Theatre became Pier", part.FindAll(".told")[1].TextContent, StringComparison.Ordinal);

        AngleSharp.Dom.IElement Merge() => part.FindAll("button").First(static button => button.TextContent == "Keep both edits");
        Assert.True(Merge().HasAttribute("disabled"));
        await part.InvokeAsync(() => part.FindAll("fieldset input")[1].ChangeAsync(new() { Value = "on" }));
        Assert.False(Merge().HasAttribute("disabled"));
        await Merge().ClickAsync(new());
        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".merge")));
        Assert.Equal("Pier", view.Rig.Name);
        Assert.Contains("9V DC 20mA", view.Session.Text, StringComparison.Ordinal);
        Assert.Contains("# the loads, counted", view.Session.Text, StringComparison.Ordinal);
        Assert.False(view.Session.LostComments);
        await view.Session.UndoAsync();
        Assert.Equal(("Pier Theatre", "9V DC 15mA centre negative 5.5x2.1"), (view.Rig.Name, view.Rig.Loads[0].Label!.Text));
        await view.Session.UndoAsync();
        Assert.Equal(("Pier", "9V DC 20mA centre negative 5.5x2.1"), (view.Rig.Name, view.Rig.Loads[0].Label!.Text));
    }

    [Fact]
    public async Task Two_edits_that_do_not_fit_say_so_and_change_nothing()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<RigNotices>(view);
        var other = (await ReopenAsync(view.Session.Kept!.Id)).Session;
        await other.EditTextAsync("theirs", other.Text.Replace("9 V DC 500 mA; 18 V DC 250 mA", "9 V DC 500 mA", StringComparison.Ordinal));
        await view.Session.EditTextAsync("ours", view.Session.Text.Replace("at: 9 V, to: delay-2", "at: 18 V, to: preamp-2", StringComparison.Ordinal));
        part.WaitForAssertion(() => Assert.Single(part.FindAll(".merge")));
        await part.InvokeAsync(() => part.FindAll("button").First(static button => button.TextContent == "Keep both edits").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("do not fit together", part.Find(".merge .wrong").TextContent, StringComparison.Ordinal));
        Assert.Contains("at: 18 V, to: preamp-2", view.Session.Text, StringComparison.Ordinal);
        Assert.NotNull(view.Session.Conflict);
    }

    [Fact]
    public async Task A_rig_that_was_restored_from_a_backup_is_told_at_the_next_edit()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<RigNotices>(view);
        var backup = Path.Combine(Path.GetDirectoryName(Kept)!, "backup.db");
        await Whole.Copies.BackUpAsync(backup, cancellationToken: Stop);
        await view.Session.EditAsync("later", view.Rig with { Name = "Later" });
        await Whole.Copies.RestoreAsync(backup, Stop);
        await view.Session.EditAsync("headroom", view.Rig with { Headroom = 0.3m });
        part.WaitForAssertion(() => Assert.Single(part.FindAll(".merge")));
        Assert.Equal(("Later", "Pier Theatre"), (view.Rig.Name, view.Session.Theirs!.Name));
        await view.Session.KeepOursAsync();
        Assert.Null(view.Session.Conflict);
        await view.Session.UndoAsync();
        Assert.Equal(("Pier Theatre", null), (view.Rig.Name, view.Rig.Headroom));
    }

    [Fact]
    public async Task Undo_after_another_window_s_edit_says_that_nothing_was_undone()
    {
        var view = await OpenAsync(SmallRig.Text);
        await view.Session.EditAsync("ours", view.Rig with { Name = "Ours" });
        var other = (await ReopenAsync(view.Session.Kept!.Id)).Session;
        await other.EditAsync("theirs", other.Rig! with { Headroom = 0.2m });
        await view.Session.UndoAsync();
        Assert.Equal(("Ours", 0.2m), (view.Rig.Name, view.Rig.Headroom));
        Assert.Contains("nothing was undone", view.Session.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_rig_on_trial_is_taken_or_left()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<RigNotices>(view);
        var other = view.Rig with { Headroom = 0.5m };
        view.Show(new RigPreview("try it", other, RigSession.Judge(other)));
        part.WaitForAssertion(() => Assert.Equal(2, part.FindAll(".trial button").Count));
        await part.InvokeAsync(() => part.FindAll(".trial button")[1].ClickAsync(new()));
        Assert.Null(view.Preview);
        Assert.Null(view.Rig.Headroom);
        view.Show(new RigPreview("try it", other, RigSession.Judge(other)));
        await part.InvokeAsync(() => part.FindAll(".trial button")[0].ClickAsync(new()));
        Assert.Equal(0.5m, view.Rig.Headroom);
        Assert.Equal("try it", view.Session.Kept!.UndoWhat);
    }
}
