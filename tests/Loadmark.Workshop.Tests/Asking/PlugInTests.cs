using Loadmark.Core.Checks;
using Loadmark.Files;
using Loadmark.Workshop.Asking;

namespace Loadmark.Workshop.Tests.Asking;

/// <summary>What is answered to "may I plug this in?", its sentences and its points.</summary>
public sealed class PlugInTests
{
    private const string Delay = "my delay says 9V DC 300mA centre negative";
    private const string Adaptor = "adaptor: 9V DC 2A centre negative";

    [Fact]
    public void The_plain_question_gets_a_plain_yes_with_its_figures()
    {
        var answer = Ask([Delay], [Adaptor]);
        Assert.Equal(PlugInVerdict.Yes, answer.Verdict);
        Assert.Equal("Yes, it is safe to plug in. Volts, polarity and current fit; 300 mA of 2 A.", answer.Sentence);
        Assert.Equal(1.7m, answer.Left!.Value.Value);
        Assert.Empty(answer.Ifs);
        Assert.Contains(answer.Next, static next => next.Answer.StartsWith("No. What is plugged in takes the 300 mA that it needs and no more; 1.7 A stay unused", StringComparison.Ordinal));
        Assert.Equal(Enum.GetValues<PlugInAspect>(), answer.Points.Items.Select(static point => point.Aspect));
        Assert.All(answer.Points, static point => Assert.Equal(point.Aspect == PlugInAspect.Plug ? PointState.Unsure : PointState.Good, point.State));
    }

    [Fact]
    public void Harm_is_said_with_its_arithmetic()
    {
        var answer = Ask(["drive: 9V DC 12mA centre negative"], ["12V DC 500mA centre positive"]);
        Assert.Equal(PlugInVerdict.No, answer.Verdict);
        Assert.Equal(Severity.Harm, answer.Check.Verdict);
        Assert.StartsWith("No: the drive is made for 9 V and the adaptor gives 12 V: over 9.9 V", answer.Sentence, StringComparison.Ordinal);
        Assert.Contains(answer.Because, static because => because.Contains("centre positive", StringComparison.Ordinal));
        Assert.Equal(PointState.Bad, answer.Points.Items.Single(static point => point.Aspect == PlugInAspect.Volts).State);
        Assert.Equal(PointState.Bad, answer.Points.Items.Single(static point => point.Aspect == PlugInAspect.Polarity).State);
    }

    [Fact]
    public void What_is_not_known_is_asked_for_and_never_a_yes()
    {
        var answer = Ask(["9V DC 12mA centre negative"], ["9V 500mA"]);
        Assert.Equal(PlugInVerdict.FindOut, answer.Verdict);
        Assert.StartsWith("Find out first: is the adaptor centre negative or centre positive?", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_taken_for_granted_is_an_if()
    {
        var answer = Ask(["9V 12mA"], [Adaptor]);
        Assert.Equal(PlugInVerdict.YesIf, answer.Verdict);
        Assert.Equal(["the pedal is for direct current, centre negative, as nearly everything for 9 V pedals is: look for the drawing of the plug"], answer.Ifs);
    }

    [Fact]
    public void Several_on_one_adaptor_hang_on_one_lead_and_what_they_do_to_one_another_is_said()
    {
        var answer = Ask([Delay, "drive: 9V DC 12mA ctr neg", "tuner: 9V DC 30mA ctr neg"], [Adaptor]);
        Assert.Equal(PlugInVerdict.YesIf, answer.Verdict);
        Assert.Single(answer.Rig.Wired!.Value);
        Assert.Equal("300 mA + 12 mA + 30 mA = 342 mA of 2 A: 1.65 A to spare.", answer.Points.Items.Single(static point => point.Aspect == PlugInAspect.Amps).Working);
        Assert.StartsWith("none of them is digital", Assert.Single(answer.Ifs), StringComparison.Ordinal);
        Assert.Equal(PlugInVerdict.No, Ask([Delay, "fuzz: 9V DC 5mA positive ground centre negative"], [Adaptor]).Verdict);
    }

    [Fact]
    public void On_several_outlets_each_gets_one_and_the_setting_is_named()
    {
        var answer = Ask(["drive: 9V DC 12mA ctr neg", "preamp: 18V DC 60mA ctr neg"], ["brick: 2x 9V DC 100mA, 2x 18V DC 100mA, isolated, centre negative"]);
        Assert.Equal(PlugInVerdict.Yes, answer.Verdict);
        Assert.Equal(2, answer.Rig.Wired!.Value.Count);
        Assert.Contains(answer.Fits, static fit => fit.EndsWith("is free: 18 V, 100 mA.", StringComparison.Ordinal));
        Assert.Equal(PlugInVerdict.No, Ask(["pedal: 24V DC 60mA ctr neg"], ["brick: 4x 9V DC 100mA, isolated, ctr neg"]).Verdict);
    }

    [Fact]
    public void Too_little_current_is_a_no()
    {
        var answer = Ask(["9V DC 500mA ctr neg"], ["9V DC 300mA ctr neg"]);
        Assert.Equal(PlugInVerdict.No, answer.Verdict);
        Assert.Equal("No: the pedal draws 500 mA of 300 mA: more than the adaptor can give.", answer.Sentence);
    }

    [Fact]
    public void Without_a_supply_it_says_what_would_do()
    {
        var answer = Ask([Delay], []);
        Assert.Equal("It wants a regulated supply with 9 V d.c., centre negative, 350 mA or more.", answer.Sentence);
        Assert.Equal(PlugInVerdict.YesIf, answer.Verdict);
        Assert.Equal(PlugInVerdict.FindOut, Ask(["300 mA"], []).Verdict);
        Assert.Equal(
            "It wants 3 isolated outlets: 2 × 9 V d.c., centre negative, 50 mA or more; 12 V a.c., 600 mA or more.",
            Ask(["drive: 9V DC 12mA ctr neg", "tuner: 9V DC 30mA ctr neg", "echo: 12V AC 500mA"], []).Sentence);
        Assert.Contains("centre positive", Ask(["12V DC 300mA centre positive"], []).Sentence, StringComparison.Ordinal);
    }

    /// <summary>A way that no plan has shown to be harmless is not recommended: positive ground on one lead with another shorts the supply.</summary>
    [Theory]
    [InlineData("fuzz: 9V DC 5mA centre negative, positive ground", "delay: 9V DC 60mA centre negative, negative ground")]
    [InlineData("fuzz: 9V DC 5mA centre negative positive ground", "delay: 9V DC 60mA centre negative")]
    [InlineData("drive: 9V DC 12mA centre negative", "preamp: 18V DC 60mA centre negative")]
    [InlineData("echo: 9V AC 500mA", "reverb: 9V AC 300mA")]
    public void One_lead_is_advised_only_where_it_is_known_to_do(string one, string other)
    {
        var answer = Ask([one, other], [], isChain: true);
        Assert.Equal(PlugInVerdict.No, answer.Verdict);
        Assert.StartsWith("Not on one lead: it wants 2 isolated outlets: ", answer.Sentence, StringComparison.Ordinal);
        Assert.All(answer.Fits, static fit => Assert.DoesNotContain("one lead", fit, StringComparison.Ordinal));
        Assert.All(Ask([one, other], []).Fits, static fit => Assert.DoesNotContain("one lead", fit, StringComparison.Ordinal));
        Assert.StartsWith("It wants one regulated supply", Ask(["drive: 9V DC 12mA ctr neg", "tuner: 9V DC 30mA ctr neg"], [], isChain: true).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_asked_can_be_kept_as_a_rig()
    {
        var answer = Ask([Delay], [Adaptor]);
        Assert.Equal(answer.Rig, RigFileReader.Read(answer.RigText, "").Rig);
        Assert.Equal("delay on adaptor", answer.Rig.Name);
    }

    [Theory]
    [InlineData("Nothing is said of what is to be plugged in")]
    [InlineData("'300 apples' cannot be used: it says no voltage, current or power.", "300 apples")]
    [InlineData("The mains: mains: expected a mains voltage such as 230 V 50 Hz", "9V DC 12mA", "230 bananas")]
    public void What_cannot_be_read_is_told(string complaint, string? load = null, string? mains = null)
    {
        Assert.Null(AskedRig.Of(new PlugInQuestion { Loads = load is null ? [] : [load], Mains = mains }, out var told));
        Assert.StartsWith(complaint, told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_wrong_mains_are_a_no()
    {
        var asked = AskedRig.Of(new PlugInQuestion { Loads = [Delay], Supplies = ["INPUT 120V~ 60Hz OUTPUT 9V DC 2A centre negative regulated"], Mains = "230 V 50 Hz" }, out _);
        Assert.Equal(PlugInVerdict.No, PlugInAdvisor.Answer(asked!, TestContext.Current.CancellationToken).Verdict);
    }

    private static PlugInAnswer Ask(IReadOnlyList<string> loads, IReadOnlyList<string> supplies, bool isChain = false)
    {
        var asked = AskedRig.Of(new PlugInQuestion { Loads = loads, Supplies = supplies, IsChain = isChain }, out var complaint);
        Assert.True(asked is not null, complaint);
        return PlugInAdvisor.Answer(asked, TestContext.Current.CancellationToken);
    }
}
