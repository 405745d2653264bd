using Bunit;
using Loadmark.Core.Checks;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Views;

/// <summary>What the parts of a rig's page share.</summary>
public sealed class RigViewTests : PageTest
{
    private const int Loads = 1000;

    /// <summary>A circuit that takes longer than an edit waits: until it is solved nobody says yes, and after that everybody does.</summary>
    [Fact]
    public async Task A_yes_is_not_said_before_the_circuit_is_solved()
    {
        var view = await OpenAsync(
            "rig: Many\nmains: 230 V 50 Hz\nloads:\n"
            + string.Concat(Enumerable.Range(1, Loads).Select(static load => $"  tuner-{load}: {{ kind: digital tuner, label: 9V DC 30mA centre negative 5.5x2.1, ground: negative }}\n"))
            + $"supplies:\n  brick:\n    label: 100-240V~ 50/60Hz\n    isolated: true\n    regulated: true\n    outlets: {{ 1-{Loads}: 9 V DC 100 mA centre negative 5.5x2.1 }}\n"
            + "wired:\n" + string.Concat(Enumerable.Range(1, Loads).Select(static load => $"  - {{ from: brick/{load}, to: tuner-{load} }}\n")));
        var part = Show<FindingsPanel>(view);
        Assert.True(view.Check.Verdict <= Severity.Note, VerdictSentence.Of(view.Check));
        var pending = 0;
        view.Session.Changed += (_, _) =>
        {
            Assert.Equal(view.Session.IsExamining, view.IsYesPending);
            pending += view.IsYesPending ? 1 : 0;
        };

        await part.InvokeAsync(() => view.Session.EditAsync("a name", view.Rig with { Name = "More" }));

        Assert.True(pending > 0, "The circuit was solved before the edit was shown.");
        Assert.False(view.IsYesPending);
        part.WaitForAssertion(() => Assert.StartsWith("Safe to plug in.", part.Find(".verdictline .says").TextContent, StringComparison.Ordinal));
    }
}
