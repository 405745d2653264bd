using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Files;
using Loadmark.Workshop.Sessions;

namespace Loadmark.Workshop.Tests.Sessions;

/// <summary>A rig in a session: edited, kept, undone, contested, and not lost when it cannot be kept.</summary>
public sealed class RigSessionTests : SessionTest
{
    [Fact]
    public async Task An_edit_is_checked_shown_and_kept()
    {
        var session = await OpenAsync(SmallRig.Text);
        var changes = 0;
        session.Changed += (_, _) => changes++;

        await session.EditAsync("unplug delay-2", session.Rig!.Unplug("delay-2"));

        Assert.True(changes > 0);
        Assert.Contains(session.Check!.Findings, finding => finding.Rule == "unfed" && finding.Subjects.Contains("delay-2"));
        Assert.Equal("unplug delay-2", session.Kept!.UndoWhat);
        Assert.Null(session.Trouble);
        Assert.False(session.LostComments);
        Assert.Contains("# loud", session.Text, StringComparison.Ordinal);
        var again = await ReopenAsync(session.Kept.Id);
        Assert.Equal(session.Rig, again.Rig);
        Assert.Equal(session.Text, again.Text);
    }

    [Fact]
    public async Task What_is_the_same_is_no_edit()
    {
        var session = await OpenAsync(SmallRig.Text);
        await session.EditAsync("nothing", session.Rig! with { Name = session.Rig.Name });
        Assert.Null(session.Kept!.UndoWhat);
    }

    [Fact]
    public async Task Undo_and_redo_go_through_every_edit_also_after_it_was_opened_again()
    {
        var session = await OpenAsync(SmallRig.Text);
        var first = session.Text;
        await session.EditAsync("one", session.Rig! with { Name = "One" });
        await session.EditAsync("two", session.Rig with { Headroom = 0.2m });
        var last = session.Text;

        var again = await ReopenAsync(session.Kept!.Id);
        await again.UndoAsync();
        Assert.Equal(("One", null), (again.Rig!.Name, again.Rig.Headroom));
        Assert.Equal(("one", "two"), (again.Kept!.UndoWhat, again.Kept.RedoWhat));
        await again.UndoAsync();
        Assert.Equal(first, again.Text);
        Assert.Null(again.Kept.UndoWhat);
        await again.UndoAsync();
        Assert.Equal(first, again.Text);
        await again.RedoAsync();
        await again.RedoAsync();
        Assert.Equal(last, again.Text);
        Assert.Null(again.Trouble);
    }

    [Fact]
    public async Task A_text_that_cannot_be_read_changes_nothing()
    {
        var session = await OpenAsync(SmallRig.Text);
        var faults = await session.EditTextAsync("edit the file", SmallRig.Text.Replace("150 mA", "150", StringComparison.Ordinal) + "nonsense");
        Assert.NotEmpty(faults);
        Assert.Equal(SmallRig.Text, session.Text);
        Assert.Null(session.Kept!.UndoWhat);

        Assert.Empty(await session.EditTextAsync("edit the file", SmallRig.Text.Replace("drive-3", "drive-30", StringComparison.Ordinal)));
        Assert.Contains(session.Rig!.Loads, load => load.Id == "drive-30");
        Assert.Equal("edit the file", session.Kept.UndoWhat);
    }

    [Fact]
    public async Task Two_windows_that_edit_at_once_are_asked_which_counts()
    {
        var ours = await OpenAsync(SmallRig.Text);
        var theirs = await ReopenAsync(ours.Kept!.Id);
        await theirs.EditAsync("theirs", theirs.Rig! with { Name = "Theirs" });
        await ours.EditAsync("ours", ours.Rig! with { Name = "Ours" });

        Assert.Equal("Ours", ours.Rig.Name);
        Assert.Equal("Theirs", ours.Theirs!.Name);
        await ours.UndoAsync();
        Assert.Equal("Ours", ours.Rig.Name); // not before it is settled

        await ours.KeepOursAsync();
        Assert.Null(ours.Theirs);
        Assert.Equal("Ours", (await ReopenAsync(ours.Kept.Id)).Rig!.Name);
        await ours.UndoAsync();
        Assert.Equal("Theirs", ours.Rig.Name);
    }

    [Fact]
    public async Task What_another_window_kept_is_followed_unless_an_edit_here_is_not_kept()
    {
        var ours = await OpenAsync(SmallRig.Text);
        var theirs = await ReopenAsync(ours.Kept!.Id);
        Assert.False(await ours.FollowAsync());

        await theirs.EditAsync("theirs", theirs.Rig! with { Name = "Theirs" });
        Assert.True(await ours.FollowAsync());
        Assert.Equal(("Theirs", "theirs"), (ours.Rig!.Name, ours.Kept.UndoWhat));
        Assert.False(await ours.FollowAsync());

        // Followed, an edit goes on from there, and undo goes back through both.
        await ours.EditAsync("ours", ours.Rig with { Headroom = 0.3m });
        Assert.Null(ours.Theirs);
        await ours.UndoAsync();
        await ours.UndoAsync();
        Assert.Equal("Pier Theatre", ours.Rig.Name);
        Assert.True(await theirs.FollowAsync());
        Assert.Equal("Pier Theatre", theirs.Rig.Name);

        // Two edits that meet are resolved by hand.
        await theirs.EditAsync("theirs", theirs.Rig with { Name = "Theirs" });
        await ours.EditAsync("ours", ours.Rig with { Name = "Ours" });
        Assert.NotNull(ours.Theirs);
        Assert.False(await ours.FollowAsync());
        Assert.Equal("Ours", ours.Rig.Name);
    }

    [Fact]
    public async Task The_other_windows_edit_can_be_taken_instead()
    {
        var ours = await OpenAsync(SmallRig.Text);
        var theirs = await ReopenAsync(ours.Kept!.Id);
        await theirs.EditAsync("theirs", theirs.Rig! with { Name = "Theirs" });
        await ours.EditAsync("ours", ours.Rig! with { Name = "Ours" });
        await ours.TakeTheirsAsync();
        Assert.Null(ours.Theirs);
        Assert.Equal("Theirs", ours.Rig.Name);
        await ours.EditAsync("go on", ours.Rig with { Headroom = 0.3m });
        Assert.Null(ours.Theirs);
        Assert.Equal("go on", ours.Kept.UndoWhat);
    }

    [Fact]
    public async Task What_cannot_be_kept_stays_on_the_page_and_is_kept_at_the_next_try()
    {
        var session = await OpenAsync(SmallRig.Text);
        var aside = Kept + ".aside";
        Directory.Move(Kept, aside);
        await File.WriteAllTextAsync(Kept, "in the way", Stop);

        await session.EditAsync("name the rig", session.Rig! with { Name = "Kept later" });
        Assert.NotNull(session.Trouble);
        Assert.Equal("Kept later", session.Rig.Name);
        Assert.Contains("Kept later", session.Text, StringComparison.Ordinal);
        Assert.NotNull(session.Check);

        // A second edit on top, still in trouble; neither is lost.
        await session.EditAsync("headroom", session.Rig with { Headroom = 0.25m });
        Assert.NotNull(session.Trouble);
        Assert.Equal(("Kept later", 0.25m), (session.Rig.Name, session.Rig.Headroom));

        File.Delete(Kept);
        Directory.Move(aside, Kept);
        await session.RetryAsync();
        Assert.Null(session.Trouble);
        var again = await ReopenAsync(session.Kept!.Id);
        Assert.Equal(session.Rig, again.Rig);
        await again.UndoAsync();
        Assert.Equal("Pier Theatre", again.Rig!.Name);
    }

    [Fact]
    public async Task A_rig_removed_elsewhere_says_so_and_the_edit_stays()
    {
        var session = await OpenAsync(SmallRig.Text);
        await Store.RemoveAsync(session.Kept!.Id, session.Kept.Revision, Stop);
        await session.EditAsync("name the rig", session.Rig! with { Name = "Still here" });
        Assert.Contains("removed in another window", session.Trouble, StringComparison.Ordinal);
        Assert.Equal("Still here", session.Rig.Name);
    }

    [Fact]
    public async Task A_kept_text_that_cannot_be_read_is_shown_with_its_faults()
    {
        var session = await OpenAsync("rig: a\nload: {}\n");
        Assert.Null(session.Rig);
        Assert.Null(session.Check);
        Assert.Equal(2, Assert.Single(session.Errors).Line);
        await Assert.ThrowsAsync<InvalidOperationException>(() => session.EditAsync("x", new Rig { Name = "x" }));
        Assert.Empty(await session.EditTextAsync("mend", "rig: a\nloads: {}\n"));
        Assert.NotNull(session.Rig);
        Assert.Empty(session.Errors);
    }

    [Fact]
    public async Task There_is_no_rig_of_an_id_that_nothing_has() => Assert.False(await new RigSession(Store).OpenAsync(Guid.NewGuid()));

    [Theory]
    [InlineData("abroad")]
    [InlineData("chain-start")]
    [InlineData("festival")]
    [InlineData("pit")]
    [InlineData("watts-only")]
    public async Task What_was_edited_and_undone_is_the_file_it_was_to_the_letter(string example)
    {
        var text = await File.ReadAllTextAsync(Repository.PathOf("examples", $"{example}.rig.yaml"), Stop);
        var session = await OpenAsync(text);
        var rig = session.Rig!;
        await session.EditAsync("remove", rig.RemoveLoad(rig.Loads[0].Id));
        Assert.Equal(session.Rig, RigFileReader.Read(session.Text, "").Rig);
        await session.UndoAsync();
        Assert.Equal(text, session.Text);
    }
}
