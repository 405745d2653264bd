using Bunit;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Web.Parts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;

namespace Loadmark.Web.Tests.Parts;

/// <summary>What is said about a rig: worst first, with its working, its why, and what mends it.</summary>
public sealed class FindingsPanelTests : PageTest
{
    [Fact]
    public async Task The_worst_comes_first_and_the_verdict_is_a_sentence()
    {
        var view = await OpenAsync(PageExamples.Read("pit"));
        var part = Show<FindingsPanel>(view);
        Assert.Equal(view.Check.Findings.Select(finding => finding.Message), part.FindAll(".findinglist .message").Select(message => message.TextContent));
        var order = part.FindAll(".findinglist > li").Select(item => Array.FindIndex(["sev-harm", "sev-fails", "sev-noise", "sev-margin", "sev-note"], name => item.ClassList.Contains(name))).ToList();
        Assert.DoesNotContain(-1, order);
        Assert.Equal(order.Order(), order);
        Assert.Equal(VerdictSentence.Of(view.Check), part.Find(".verdictline .says").TextContent);
    }

    [Fact]
    public async Task An_opened_finding_shows_working_why_source_and_remedy_and_closes_again()
    {
        var view = await OpenAsync(PageExamples.Read("left-at-18"));
        var part = Show<FindingsPanel>(view);
        Assert.Empty(part.FindAll(".opened"));
        await part.InvokeAsync(() => part.Find("button.finding").ClickAsync(new()));
        part.WaitForElement(".opened");

        var finding = view.Check.Findings[0];
        Assert.Equal("over-voltage", finding.Rule);
        var opened = part.Find(".opened");
        Assert.Contains(finding.Working, opened.TextContent, StringComparison.Ordinal);
        Assert.StartsWith(opened.QuerySelector("dd.prose > p")!.OuterHtml, RulePages.WhyOf("over-voltage"), StringComparison.Ordinal);
        Assert.Contains(finding.Source, opened.TextContent, StringComparison.Ordinal);
        Assert.Contains(finding.Remedy, opened.TextContent, StringComparison.Ordinal);
        Assert.Equal("true", part.Find("button.finding").GetAttribute("aria-expanded"));

        // The circuit may have been solved in between, and the part drawn anew under the first click.
        await part.InvokeAsync(() => part.Find("button.finding").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".opened")));
    }

    [Fact]
    public async Task A_remedy_that_is_chosen_edits_the_rig_and_can_be_undone()
    {
        var view = await OpenAsync(PageExamples.Read("left-at-18"));
        var part = Show<FindingsPanel>(view);
        await part.InvokeAsync(() => part.Find("button.finding").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll(".remedies button")));
        var remedy = part.FindAll(".remedies button").First(button => button.TextContent == "Set brick/2 to 9 V");
        await remedy.ClickAsync(new());

        Assert.Equal([new Volts(9)], view.Rig.Wired!.Value[1].At);
        Assert.Equal("set brick/2 to 9 V", view.Session.Kept!.UndoWhat);
        part.WaitForAssertion(() => Assert.DoesNotContain("18 V from brick/2", part.Find(".findinglist").TextContent, StringComparison.Ordinal));
        await view.Session.UndoAsync();
        Assert.Contains(view.Check.Findings, finding => finding.Rule == "over-voltage");
    }

    [Fact]
    public async Task Pointing_at_a_finding_lights_what_it_is_about()
    {
        var view = await OpenAsync(PageExamples.Read("left-at-18"));
        var part = Show<FindingsPanel>(view);
        await part.InvokeAsync(() => part.Find("button.finding").FocusAsync(new()));
        Assert.Equal(view.Check.Findings[0].Subjects.Order(), view.Lit.Order());
        await part.InvokeAsync(() => part.Find("button.finding").BlurAsync(new()));
        Assert.Empty(view.Lit);
    }

    [Fact]
    public async Task A_rig_without_wiring_is_led_to_the_plan_and_an_empty_one_to_its_gear()
    {
        var empty = await OpenAsync("rig: new\n");
        Assert.Contains($"rig/{empty.Session.Kept!.Id}/gear", Show<FindingsPanel>(empty).Markup, StringComparison.Ordinal);
        var unwired = await OpenAsync(SmallRig.Text[..SmallRig.Text.IndexOf("wired:", StringComparison.Ordinal)]);
        Assert.Contains($"rig/{unwired.Session.Kept!.Id}/plan", Show<FindingsPanel>(unwired).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_rig_on_trial_is_judged_instead()
    {
        var view = await OpenAsync(PageExamples.Read("left-at-18"));
        var part = Show<FindingsPanel>(view);
        var other = Files.RigFileReader.Read(PageExamples.Read("clean"), "").Rig!;
        view.Show(new RigPreview("try", other, RigSession.Judge(other)));
        part.WaitForAssertion(() => Assert.Equal(VerdictSentence.Of(RigSession.Judge(other)), part.Find(".verdictline .says").TextContent));
    }

    [Fact]
    public async Task Hostile_names_are_text()
    {
        var view = await OpenAsync(SmallRig.Text.Replace("delay-2", "<img src=x onerror=alert(1)>", StringComparison.Ordinal));
        var part = Show<FindingsPanel>(view);
        Assert.Empty(part.FindAll("img"));
        Assert.Contains("<img src=x onerror=alert(1)>", part.Find("section").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Findings_that_are_said_twice_do_not_take_the_panel_down()
    {
        // The same outlet over two feeds says the same of it twice.
        var view = await OpenAsync(SmallRig.Text.Replace("- { from: brick/1, to: drive-3 }", "- { from: brick/2, at: 18 V, to: delay-2 }\n  - { from: brick/2, at: 18 V, to: delay-2 }", StringComparison.Ordinal));
        Assert.Contains(view.Check.Findings.GroupBy(finding => finding), twice => twice.Count() > 1);
        var part = Show<FindingsPanel>(view);
        var before = view.Check.Findings.Count;
        await view.Session.EditAsync("feed preamp-2 too", view.Rig.Plug(new Feed { From = [new OutletRef("brick", "1")], To = ["preamp-2"] }));
        Assert.NotEqual(before, view.Check.Findings.Count);
        part.WaitForAssertion(() => Assert.Equal(view.Check.Findings.Count, part.FindAll(".findinglist > li").Count));
    }
}
