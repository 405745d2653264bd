using Bunit;
using Loadmark.Core.Checks;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Planned from the page, taken or left.</summary>
public sealed class PlanPanelTests : PageTest
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task A_plan_is_shown_on_trial_and_taken()
    {
        var view = await OpenAsync(PageExamples.Read("left-at-18"));
        var part = Show<PlanPanel>(view);
        await PlanAsync(part);
        Assert.Contains("proven", part.Find("[role=status] .says").TextContent, StringComparison.Ordinal);
        Assert.NotNull(view.Preview);
        Assert.True(view.Preview.Check.Verdict < Severity.Fails);
        Assert.Contains("delay-2: from brick/2 at 18 V to brick/2 at 9 V", part.Find(".moves").TextContent, StringComparison.Ordinal);
        Assert.Contains("over-voltage", view.Check.Findings.Select(finding => finding.Rule.Name));

        await part.InvokeAsync(() => Button(part, "Take this wiring").ClickAsync(new()));
        Assert.Null(view.Preview);
        Assert.Equal("planning the wiring", view.Session.Kept!.UndoWhat);
        Assert.DoesNotContain("over-voltage", view.Check.Findings.Select(finding => finding.Rule.Name));
        part.WaitForAssertion(() => Assert.Contains("This is how the rig is wired.", part.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_plan_that_is_left_changes_nothing()
    {
        var view = await OpenAsync(PageExamples.Read("left-at-18"));
        var before = view.Rig;
        var part = Show<PlanPanel>(view);
        await PlanAsync(part);
        await part.InvokeAsync(() => Button(part, "Leave it").ClickAsync(new()));
        Assert.Null(view.Preview);
        Assert.Equal(before, view.Rig);
        Assert.Empty(part.FindAll(".answer"));
    }

    [Fact]
    public async Task A_plan_of_a_rig_that_has_changed_since_cannot_be_taken()
    {
        var view = await OpenAsync(PageExamples.Read("left-at-18"));
        var part = Show<PlanPanel>(view);
        await PlanAsync(part);
        await view.Session.EditAsync("headroom", view.Rig with { Headroom = 0.3m });
        part.WaitForAssertion(() => Assert.Contains("changed since", part.Find(".answer .wrong").TextContent, StringComparison.Ordinal));
        Assert.DoesNotContain(part.FindAll("button"), button => button.TextContent == "Take this wiring");
    }

    [Fact]
    public async Task What_stands_in_the_way_is_said_and_a_change_is_tried()
    {
        var view = await OpenAsync("""
            rig: r
            mains: 230 V 50 Hz
            loads:
              drive-3: { label: "9V DC 12mA centre negative 5.5x2.1" }
              drive-4: { label: "9V DC 12mA centre negative 5.5x2.1" }
            supplies:
              brick: { label: "INPUT 100-240V~ 50/60Hz", isolated: true, outlets: { 1: { label: 9 V DC 150 mA, polarity: centre negative, plug: 5.5x2.1 } } }

            """);
        var part = Show<PlanPanel>(view);
        await PlanAsync(part);
        Assert.Contains("Only 1 of 2 loads can be fed", part.Find("[role=status] .says").TextContent, StringComparison.Ordinal);
        Assert.Equal("9 V 50 mA: drive-4", part.Find(".lacks li").TextContent);
        var buy = part.FindAll("a").First(link => link.TextContent.Trim() == "Find supplies for them");
        Assert.EndsWith("/buy", buy.GetAttribute("href"), StringComparison.Ordinal);
        await buy.ClickAsync(new());
        Assert.Equal("drive-4", Assert.Single(view.Shortage!.Dark).Load);
        var change = part.FindAll(".changes li")[0];
        await change.QuerySelector("button")!.ClickAsync(new());
        part.WaitForAssertion(() => Assert.Contains("there is no better way with this gear: that is proven", part.Find("[role=status] .says").TextContent, StringComparison.Ordinal), Patience);
        Assert.NotEqual(view.Rig, view.Preview!.Rig);
        Assert.Null(view.Session.Kept!.UndoWhat);

        // What was added is nobody's yet.
        Assert.Contains("(to buy)", part.Find(".feedtable").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(view.Preview.Rig.ToBuy);
    }

    [Fact]
    public async Task What_is_plugged_in_stays_where_that_is_asked_for()
    {
        var view = await OpenAsync("""
            rig: r
            mains: 230 V 50 Hz
            loads:
              drive-3: { label: "9V DC 12mA centre negative 5.5x2.1" }
              drive-4: { label: "9V DC 12mA centre negative 5.5x2.1" }
            supplies:
              brick: { label: "INPUT 100-240V~ 50/60Hz", isolated: true, outlets: { 1-2: 9 V DC 150 mA, 3: 9 V DC 500 mA } }
            wired: [{ from: brick/3, to: drive-3 }]

            """);
        var part = Show<PlanPanel>(view);
        await PlanAsync(part);
        Assert.Contains("drive-3", part.Find(".moves").TextContent, StringComparison.Ordinal);
        part.Find(".check input").Change(true);
        await PlanAsync(part);
        part.WaitForAssertion(() => Assert.Equal("drive-4: not fed now, to brick/1", part.Find(".moves").TextContent.Trim()), Patience);
    }

    [Fact]
    public async Task A_supply_that_may_not_be_used_is_not()
    {
        var view = await OpenAsync(PageExamples.Read("fuzz-shared").Replace("leads:", "  spare:\n    label: INPUT 100-240V~ 50/60Hz OUTPUT 9V DC 600mA centre negative 5.5x2.1\n    outlets: { 1: \"\" }\nleads:", StringComparison.Ordinal));
        var part = Show<PlanPanel>(view);
        part.FindAll(".choices input")[1].Change(false);
        await PlanAsync(part);
        Assert.All((view.Preview?.Rig ?? view.Rig).Wired!.Value, feed => Assert.Equal("twin", feed.From[0].Supply));
        part.FindAll(".choices input")[0].Change(false);
        Assert.True(Button(part, "Plan").HasAttribute("disabled"));
    }

    private static async Task PlanAsync(IRenderedComponent<PartHost> part)
    {
        await part.InvokeAsync(() => Button(part, "Plan").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll(".answer")), Patience);
    }

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<PartHost> part, string text) =>
        part.FindAll("button").First(button => button.TextContent == text);
}
