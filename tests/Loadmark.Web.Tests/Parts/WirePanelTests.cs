using Bunit;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Wiring by hand: any wiring can be entered, and what would be harmed is said before and after.</summary>
public sealed class WirePanelTests : PageTest
{
    [Fact]
    public async Task A_target_that_would_be_harmed_says_so_before_and_is_entered_all_the_same()
    {
        var view = await OpenAsync(SmallRig.Text.Replace("label: \"18V DC 60mA", "label: \"5V DC 60mA", StringComparison.Ordinal));
        var part = Show<WirePanel>(view);
        part.Find("#wire-outlet").Change("brick/3");
        Assert.Equal(new OutletRef("brick", "3"), view.Picked);
        var warned = Target(part, "preamp-2"); // 5 V on a 9 V outlet
        Assert.Contains("warned", warned.ClassList);
        Assert.NotNull(warned.QuerySelector(".sev-harm"));
        Assert.Contains("9 V", warned.TextContent, StringComparison.Ordinal);
        Assert.Contains("Choose it only where it is plugged like this.", warned.TextContent, StringComparison.Ordinal);

        await warned.ClickAsync(new());

        Assert.Equal("brick/3", Assert.Single(view.Rig.Wired!.Value, feed => feed.To.Contains("preamp-2")).From.ToString());
        Assert.Equal(Severity.Harm, view.Check.Verdict);
        Assert.Equal("plugging preamp-2 onto brick/3", view.Session.Kept!.UndoWhat);
    }

    [Fact]
    public async Task Where_a_load_is_plugged_is_chosen_right_or_wrong_and_judged_beside_it()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<WirePanel>(view);
        Assert.Equal(["drive-3", "delay-2", "preamp-2"], part.FindAll(".pluggedrow strong").Select(static name => name.TextContent));
        Assert.Equal(["brick/1", "brick/2", ""], Enumerable.Range(0, 3).Select(row => Row(part, row).GetAttribute("value")));
        Assert.Empty(part.FindAll(".pluggedsays"));

        // 18 V gear at an outlet of two settings: which one is not chosen for whoever says how it is plugged.
        await part.InvokeAsync(() => Row(part, 0).ChangeAsync(new() { Value = "" }));
        Assert.DoesNotContain(view.Rig.Wired!.Value, static feed => feed.To.Contains("drive-3"));
        await part.InvokeAsync(() => Row(part, 1).ChangeAsync(new() { Value = "brick/1" }));
        await part.InvokeAsync(() => Row(part, 2).ChangeAsync(new() { Value = "brick/2" }));
        var feed = Assert.Single(view.Rig.Wired!.Value, static feed => feed.To.Contains("preamp-2"));
        Assert.Empty(feed.At);
        Assert.Null(feed.Lead);
        Assert.Equal("plugging preamp-2 onto brick/2", view.Session.Kept!.UndoWhat);

        // 300 mA from 150 mA.
        part.WaitForAssertion(() => Assert.Contains("150 mA", part.FindAll(".plugged > li")[1].QuerySelector(".pluggedsays")!.TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_target_that_may_is_plugged_in_and_unplugged_again()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<WirePanel>(view);
        part.Find("#wire-outlet").Change("brick/3");
        Assert.Contains("now on brick/1", Target(part, "drive-3").TextContent, StringComparison.Ordinal);
        await Target(part, "drive-3").ClickAsync(new());
        Assert.Equal("brick/3", Assert.Single(view.Rig.Wired!.Value, feed => feed.To.Contains("drive-3")).From.ToString());
        Assert.Equal("plugging drive-3 onto brick/3", view.Session.Kept!.UndoWhat);

        part.WaitForAssertion(() => Assert.Equal("true", Target(part, "drive-3").GetAttribute("aria-pressed")));
        await part.InvokeAsync(() => Target(part, "drive-3").ClickAsync(new()));
        Assert.DoesNotContain(view.Rig.Wired!.Value, feed => feed.To.Contains("drive-3"));
    }

    [Fact]
    public async Task Setting_lead_and_keeping_of_a_feed_are_changed_in_place()
    {
        var view = await OpenAsync(SmallRig.Text.Replace("wired:", "leads: { flip: { type: reversing } }\nwired:", StringComparison.Ordinal));
        var part = Show<WirePanel>(view);
        await part.InvokeAsync(() => part.FindAll(".feed")[1].QuerySelectorAll("select")[0].ChangeAsync(new() { Value = "18 V" }));
        Assert.Equal([new Volts(18)], view.Rig.Wired!.Value[1].At);
        await part.InvokeAsync(() => part.FindAll(".feed")[0].QuerySelector("select")!.ChangeAsync(new() { Value = "flip" }));
        Assert.Equal("flip", view.Rig.Wired!.Value[0].Lead);
        await part.InvokeAsync(() => part.FindAll(".feed")[0].QuerySelector("input[type=checkbox]")!.ChangeAsync(new() { Value = true }));
        Assert.True(view.Rig.Wired!.Value[0].Pinned);
        await part.InvokeAsync(() => part.FindAll("button").First(button => button.TextContent.StartsWith("Unplug everything", StringComparison.Ordinal)).ClickAsync(new()));
        Assert.Equal(["drive-3"], Assert.Single(view.Rig.Wired!.Value).To);
    }

    [Fact]
    public async Task Two_outlets_are_joined_for_a_load_and_harm_is_said_of_it()
    {
        var view = await OpenAsync(SmallRig.Text.Replace("wired:", "leads: { pair: { type: series } }\nwired:", StringComparison.Ordinal).Replace("- { from: brick/1, to: drive-3 }\n", "", StringComparison.Ordinal).Replace("  - { from: brick/2", "  - { from: brick/2", StringComparison.Ordinal));
        var part = Show<WirePanel>(view);
        await JoinAsync(part, "brick/1", "brick/1", "preamp-2");
        Assert.Contains("Choose two outlets", part.Find(".joinform ~ [role=alert]").TextContent, StringComparison.Ordinal);

        await JoinAsync(part, "brick/1", "brick/3", "drive-3"); // 18 V into 9 V
        Assert.Contains("18 V", part.Find(".joinform ~ [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal(["drive-3"], Assert.Single(view.Rig.Wired!.Value, feed => feed.From.Count > 1).To);
        Assert.Equal(Severity.Harm, view.Check.Verdict);
        await part.InvokeAsync(view.Session.UndoAsync);

        await JoinAsync(part, "brick/1", "brick/3", "preamp-2");
        var joined = Assert.Single(view.Rig.Wired!.Value, feed => feed.From.Count > 1);
        Assert.Equal((Joint.Series, "pair"), (joined.Joined, joined.Lead));
        Assert.Empty(part.FindAll(".joinform ~ [role=alert]"));
    }

    [Fact]
    public async Task One_outlet_over_two_feeds_does_not_take_the_panel_down()
    {
        var view = await OpenAsync(SmallRig.Text.Replace("to: delay-2 }", "to: delay-2 }\n  - { from: brick/2, at: 9 V, to: drive-3 }", StringComparison.Ordinal));
        var part = Show<WirePanel>(view);
        await part.InvokeAsync(() => part.Find("[aria-label='Unplug drive-3']").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Equal(view.Rig.Wired!.Value.Count, part.FindAll(".feed").Count));
    }

    private static async Task JoinAsync(IRenderedComponent<PartHost> part, string first, string second, string load)
    {
        await part.InvokeAsync(async () =>
        {
            await part.InvokeAsync(() => part.FindAll(".joinform select")[0].ChangeAsync(new() { Value = first }));
            await part.InvokeAsync(() => part.FindAll(".joinform select")[1].ChangeAsync(new() { Value = second }));
            await part.InvokeAsync(() => part.FindAll(".joinform select")[3].ChangeAsync(new() { Value = load }));
            await part.InvokeAsync(() => part.Find(".joinform button").ClickAsync(new()));
        });
    }

    private static AngleSharp.Dom.IElement Row(IRenderedComponent<PartHost> part, int row) => part.FindAll(".pluggedrow select")[row];

    private static AngleSharp.Dom.IElement Target(IRenderedComponent<PartHost> part, string load) =>
        part.FindAll(".target").Single(target => target.QuerySelector("strong")!.TextContent == load);
}
