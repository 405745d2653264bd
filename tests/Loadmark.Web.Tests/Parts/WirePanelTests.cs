using Bunit;
using Loadmark.Core.Rigs;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Wiring by hand: what may not be plugged in says why, and is not.</summary>
public sealed class WirePanelTests : PageTest
{
    [Fact]
    public async Task A_target_that_is_refused_says_why_and_does_nothing()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<WirePanel>(view);
        part.Find("#wire-outlet").Change("brick/3");
        Assert.Equal(new OutletRef("brick", "3"), view.Picked);
        var refused = Target(part, "preamp-2"); // 18 V on a 9 V outlet
        Assert.Contains("refused", refused.ClassList);
        Assert.Equal("true", refused.GetAttribute("aria-disabled"));
        Assert.Contains("no: ", refused.TextContent, StringComparison.Ordinal);
        Assert.Contains("9 V", refused.TextContent, StringComparison.Ordinal);

        var before = view.Rig;
        await refused.ClickAsync(new());
        Assert.Equal(before, view.Rig);
        Assert.Null(view.Session.Kept!.UndoWhat);
        Assert.NotNull(await view.PlugAsync("preamp-2"));
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
    public async Task Two_outlets_are_joined_for_a_load_or_it_says_why_not()
    {
        var view = await OpenAsync(SmallRig.Text.Replace("wired:", "leads: { pair: { type: series } }\nwired:", StringComparison.Ordinal).Replace("- { from: brick/1, to: drive-3 }\n", "", StringComparison.Ordinal).Replace("  - { from: brick/2", "  - { from: brick/2", StringComparison.Ordinal));
        var part = Show<WirePanel>(view);
        await JoinAsync(part, "brick/1", "brick/1", "preamp-2");
        Assert.Contains("Choose two outlets", part.Find(".joinform ~ [role=alert]").TextContent, StringComparison.Ordinal);

        await JoinAsync(part, "brick/1", "brick/3", "drive-3"); // 18 V into 9 V
        Assert.Contains("18 V", part.Find(".joinform ~ [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(view.Rig.Wired!.Value, feed => feed.From.Count > 1);

        await JoinAsync(part, "brick/1", "brick/3", "preamp-2");
        var joined = Assert.Single(view.Rig.Wired!.Value, feed => feed.From.Count > 1);
        Assert.Equal((Joint.Series, "pair"), (joined.Joined, joined.Lead));
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

    private static AngleSharp.Dom.IElement Target(IRenderedComponent<PartHost> part, string load) =>
        part.FindAll(".target").Single(target => target.QuerySelector("strong")!.TextContent == load);
}
