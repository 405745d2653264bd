using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Files;
using Loadmark.Web.Bench;

namespace Loadmark.Web.Tests.Bench;

/// <summary>A rig on the bench: edited, kept, undone, contested, and not lost when it cannot be kept.</summary>
public sealed class RigBenchTests : PageTest
{
    [Fact]
    public async Task An_edit_is_checked_shown_and_kept()
    {
        var bench = (await OpenAsync(Rigs.Small)).Bench;
        var changes = 0;
        bench.Changed += (_, _) => changes++;

        await bench.EditAsync("unplug delay-2", bench.Rig!.Unplug("delay-2"));

        Assert.True(changes > 0);
        Assert.Contains(bench.Check!.Findings, finding => finding.Rule == "unfed" && finding.Subjects.Contains("delay-2"));
        Assert.Equal("unplug delay-2", bench.Kept!.UndoWhat);
        Assert.Null(bench.Trouble);
        Assert.False(bench.LostComments);
        Assert.Contains("# loud", bench.Text, StringComparison.Ordinal);
        var again = await ReopenAsync(bench.Kept.Id);
        Assert.Equal(bench.Rig, again.Rig);
        Assert.Equal(bench.Text, again.Bench.Text);
    }

    [Fact]
    public async Task What_is_the_same_is_no_edit()
    {
        var bench = (await OpenAsync(Rigs.Small)).Bench;
        await bench.EditAsync("nothing", bench.Rig! with { Name = bench.Rig.Name });
        Assert.Null(bench.Kept!.UndoWhat);
    }

    [Fact]
    public async Task Undo_and_redo_go_through_every_edit_also_after_it_was_opened_again()
    {
        var bench = (await OpenAsync(Rigs.Small)).Bench;
        var first = bench.Text;
        await bench.EditAsync("one", bench.Rig! with { Name = "One" });
        await bench.EditAsync("two", bench.Rig with { Headroom = 0.2m });
        var last = bench.Text;

        var again = (await ReopenAsync(bench.Kept!.Id)).Bench;
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
        var bench = (await OpenAsync(Rigs.Small)).Bench;
        var faults = await bench.EditTextAsync("edit the file", Rigs.Small.Replace("150 mA", "150", StringComparison.Ordinal) + "nonsense");
        Assert.NotEmpty(faults);
        Assert.Equal(Rigs.Small, bench.Text);
        Assert.Null(bench.Kept!.UndoWhat);

        Assert.Empty(await bench.EditTextAsync("edit the file", Rigs.Small.Replace("drive-3", "drive-30", StringComparison.Ordinal)));
        Assert.Contains(bench.Rig!.Loads, load => load.Id == "drive-30");
        Assert.Equal("edit the file", bench.Kept.UndoWhat);
    }

    [Fact]
    public async Task Two_windows_that_edit_at_once_are_asked_which_counts()
    {
        var ours = (await OpenAsync(Rigs.Small)).Bench;
        var theirs = (await ReopenAsync(ours.Kept!.Id)).Bench;
        await theirs.EditAsync("theirs", theirs.Rig! with { Name = "Theirs" });
        await ours.EditAsync("ours", ours.Rig! with { Name = "Ours" });

        Assert.Equal("Ours", ours.Rig.Name);
        Assert.Equal("Theirs", ours.Theirs!.Name);
        await ours.UndoAsync();
        Assert.Equal("Ours", ours.Rig.Name); // not before it is settled

        await ours.KeepOursAsync();
        Assert.Null(ours.Theirs);
        Assert.Equal("Ours", (await ReopenAsync(ours.Kept.Id)).Rig.Name);
        await ours.UndoAsync();
        Assert.Equal("Theirs", ours.Rig.Name);
    }

    [Fact]
    public async Task The_other_windows_edit_can_be_taken_instead()
    {
        var ours = (await OpenAsync(Rigs.Small)).Bench;
        var theirs = (await ReopenAsync(ours.Kept!.Id)).Bench;
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
        var bench = (await OpenAsync(Rigs.Small)).Bench;
        var aside = Kept + ".aside";
        Directory.Move(Kept, aside);
        await File.WriteAllTextAsync(Kept, "in the way", Stop);

        await bench.EditAsync("name the rig", bench.Rig! with { Name = "Kept later" });
        Assert.NotNull(bench.Trouble);
        Assert.Equal("Kept later", bench.Rig.Name);
        Assert.Contains("Kept later", bench.Text, StringComparison.Ordinal);
        Assert.NotNull(bench.Check);

        // A second edit on top, still in trouble; neither is lost.
        await bench.EditAsync("headroom", bench.Rig with { Headroom = 0.25m });
        Assert.NotNull(bench.Trouble);
        Assert.Equal(("Kept later", 0.25m), (bench.Rig.Name, bench.Rig.Headroom));

        File.Delete(Kept);
        Directory.Move(aside, Kept);
        await bench.RetryAsync();
        Assert.Null(bench.Trouble);
        var again = await ReopenAsync(bench.Kept!.Id);
        Assert.Equal(bench.Rig, again.Rig);
        await again.Bench.UndoAsync();
        Assert.Equal("Pier Theatre", again.Rig.Name);
    }

    [Fact]
    public async Task A_rig_removed_elsewhere_says_so_and_the_edit_stays()
    {
        var bench = (await OpenAsync(Rigs.Small)).Bench;
        await Store.RemoveAsync(bench.Kept!.Id, bench.Kept.Revision, Stop);
        await bench.EditAsync("name the rig", bench.Rig! with { Name = "Still here" });
        Assert.Contains("removed in another window", bench.Trouble, StringComparison.Ordinal);
        Assert.Equal("Still here", bench.Rig.Name);
    }

    [Fact]
    public async Task A_kept_text_that_cannot_be_read_is_shown_with_its_faults()
    {
        var bench = (await OpenAsync("rig: a\nload: {}\n")).Bench;
        Assert.Null(bench.Rig);
        Assert.Null(bench.Check);
        Assert.Equal(2, Assert.Single(bench.Errors).Line);
        await Assert.ThrowsAsync<InvalidOperationException>(() => bench.EditAsync("x", new Rig { Name = "x" }));
        Assert.Empty(await bench.EditTextAsync("mend", "rig: a\nloads: {}\n"));
        Assert.NotNull(bench.Rig);
        Assert.Empty(bench.Errors);
    }

    [Fact]
    public async Task There_is_no_rig_of_an_id_that_nothing_has() => Assert.False(await new RigBench(Store).OpenAsync(Guid.NewGuid()));

    [Theory]
    [InlineData("abroad")]
    [InlineData("chain-start")]
    [InlineData("festival")]
    [InlineData("pit")]
    [InlineData("watts-only")]
    public async Task What_was_edited_and_undone_is_the_file_it_was_to_the_letter(string example)
    {
        var text = PageExamples.Read(example);
        var bench = (await OpenAsync(text)).Bench;
        var rig = bench.Rig!;
        await bench.EditAsync("remove", rig.RemoveLoad(rig.Loads[0].Id));
        Assert.Equal(bench.Rig, RigFileReader.Read(bench.Text, "").Rig);
        await bench.UndoAsync();
        Assert.Equal(text, bench.Text);
    }
}
