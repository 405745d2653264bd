using Bunit;
using Loadmark.Web.Bench;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>What stands over the whole rig.</summary>
public sealed class BenchNoticesTests : PageTest
{
    [Fact]
    public async Task An_edit_that_is_not_kept_says_so_and_is_kept_at_the_next_try()
    {
        var view = await OpenAsync(Rigs.Small);
        var part = Show<BenchNotices>(view);
        Assert.Empty(part.FindAll(".notice"));
        Directory.Move(Kept, Kept + ".aside");
        await File.WriteAllTextAsync(Kept, "in the way", Stop);
        await view.Bench.EditAsync("name", view.Rig with { Name = "Later" });
        part.WaitForAssertion(() => Assert.Contains("not kept", part.Find("[role=alert]").TextContent, StringComparison.Ordinal));

        File.Delete(Kept);
        Directory.Move(Kept + ".aside", Kept);
        await part.FindAll("button").First(button => button.TextContent == "Try again").ClickAsync(new());
        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".notice")));
        Assert.Equal("Later", (await ReopenAsync(view.Bench.Kept!.Id)).Rig.Name);
    }

    [Fact]
    public async Task Two_windows_are_asked_which_edit_counts()
    {
        var view = await OpenAsync(Rigs.Small);
        var part = Show<BenchNotices>(view);
        var other = (await ReopenAsync(view.Bench.Kept!.Id)).Bench;
        await other.EditAsync("theirs", other.Rig! with { Name = "Theirs" });
        await view.Bench.EditAsync("ours", view.Rig with { Name = "Ours" });
        part.WaitForAssertion(() => Assert.Contains("another window", part.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        await part.FindAll("button").First(button => button.TextContent == "Take the other window's").ClickAsync(new());
        Assert.Equal("Theirs", view.Rig.Name);
        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".notice")));
    }

    [Fact]
    public async Task A_rig_on_trial_is_taken_or_left()
    {
        var view = await OpenAsync(Rigs.Small);
        var part = Show<BenchNotices>(view);
        var other = view.Rig with { Headroom = 0.5m };
        view.Show(new RigPreview("try it", other, RigBench.Judge(other)));
        part.WaitForAssertion(() => Assert.Equal(2, part.FindAll(".trial button").Count));
        await part.FindAll(".trial button")[1].ClickAsync(new());
        Assert.Null(view.Preview);
        Assert.Null(view.Rig.Headroom);
        view.Show(new RigPreview("try it", other, RigBench.Judge(other)));
        await part.InvokeAsync(() => part.FindAll(".trial button")[0].ClickAsync(new()));
        Assert.Equal(0.5m, view.Rig.Headroom);
        Assert.Equal("try it", view.Bench.Kept!.UndoWhat);
    }
}
