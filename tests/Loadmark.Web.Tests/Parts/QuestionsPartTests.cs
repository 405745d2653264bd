using Bunit;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Questions on the page: a click states the answer and the verdict moves.</summary>
public sealed class QuestionsPartTests : PageTest
{
    private static string Silent => SmallRig.Text.Replace("9V DC 300mA centre negative", "9V DC 300mA", StringComparison.Ordinal);

    [Fact]
    public async Task A_click_states_the_answer_moves_the_verdict_and_can_be_undone()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        var view = await OpenAsync(Silent);
        var part = Show<QuestionsPart>(view);
        part.WaitForAssertion(() => Assert.Equal(2, part.FindAll(".answers .button").Count));
        Assert.Equal("Which polarity does the drawing beside the jack of delay-2 show?", part.Find(".asked").TextContent);

        await part.InvokeAsync(() => part.FindAll(".answers .button")[1].ClickAsync(new()));

        Assert.Equal(Polarity.CentrePositive, view.Rig.Loads.Items.Single(static load => load.Id == "delay-2").Polarity);
        Assert.Equal(Severity.Harm, view.Check.Verdict);
        Assert.Equal("polarity of delay-2: centre positive", view.Session.Kept!.UndoWhat);
        await view.Session.UndoAsync();
        Assert.NotEqual(Severity.Harm, view.Check.Verdict);
        Assert.Null(view.Rig.Loads.Items.Single(static load => load.Id == "delay-2").Polarity);
    }

    [Fact]
    public async Task The_last_answer_leaves_a_heading_for_the_focus_and_no_question()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        var view = await OpenAsync(Silent);
        var part = Show<QuestionsPart>(view);
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll(".answers .button")));

        await part.InvokeAsync(() => part.FindAll(".answers .button")[0].ClickAsync(new()));
        part.Render();

        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".answers .button")));
        Assert.Equal("Nothing is left to ask", part.Find("#questions-title").TextContent.Trim());
    }

    /// <summary>Of a rig so large that not every question can be tried the page does not say that nothing is left to ask.</summary>
    [Fact]
    public async Task What_was_not_tried_is_told()
    {
        const int loads = 400;
        var text = "rig: Many\nloads:\n" + string.Concat(Enumerable.Range(1, loads).Select(static load => $"  load-{load}: {{ label: 9V 10mA }}\n"))
            + $"supplies:\n  brick: {{ outlets: {{ 1-{loads}: 9V 100mA }} }}\n"
            + "wired:\n" + string.Concat(Enumerable.Range(1, loads).Select(static load => $"  - {{ from: brick/{load}, to: load-{load} }}\n"));
        var part = Show<QuestionsPart>(await OpenAsync(text));
        part.WaitForAssertion(() => Assert.Contains(" possible questions were not tried.", part.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_all_is_stated_there_is_nothing_to_see()
    {
        var part = Show<QuestionsPart>(await OpenAsync(SmallRig.Text));
        Assert.Empty(part.FindAll("section"));
    }
}
