using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Checks;

/// <summary>The verdict in a sentence: it names the thing, and a yes says what was compared and what was not.</summary>
public sealed class VerdictSentenceTests
{
    private static RigBuilder OneLoad => new RigBuilder().Load("delay-2", Plate.Dc(9, 410)).Supply("wall").Outlet("1", Plate.Dc(9, 2000)).Feed("wall/1", "delay-2");

    [Fact]
    public void Good_says_what_fits_and_what_is_asked_of_the_outlet() =>
        Assert.Equal("Safe to plug in. Volts, polarity and current fit; 410 mA of 2 A.", VerdictSentence.Of(OneLoad.Check()));

    [Fact]
    public void With_several_outlets_the_fullest_is_named()
    {
        var check = new RigBuilder().Load("delay-2", Plate.Dc(9, 410)).Load("drive-3", Plate.Dc(9, 12)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 500)).Feed("brick/1", "drive-3").Feed("brick/2", "delay-2").Check();

        Assert.Equal("Safe to plug in. Volts, polarity and current fit; the fullest is brick/2, 410 mA of 500 mA.", VerdictSentence.Of(check));
    }

    [Fact]
    public void A_limit_over_all_outlets_is_named_where_it_is_fuller_than_any_outlet()
    {
        var check = new RigBuilder().Load("delay-2", Plate.Dc(9, 100))
            .Supply("brick", static supply => supply with { Total = new SupplyTotal(new Amps(0.2m), null) })
            .Outlet("1", Plate.Dc(9, 500)).Outlet("2", Plate.Dc(9, 500)).Feed("brick/1", "delay-2").Check();

        Assert.Equal("Safe to plug in. Volts, polarity and current fit; the fullest is brick in all, 100 mA of 200 mA.", VerdictSentence.Of(check));
    }

    [Fact]
    public void What_was_taken_for_granted_is_not_among_what_fits_and_is_named()
    {
        var check = OneLoad.Check(static rig => rig with { Loads = [rig.Loads[0] with { Polarity = null, Plug = null }] });

        Assert.Equal(Severity.Note, check.Verdict);
        Assert.Equal("Safe to plug in. Volts and current fit; 410 mA of 2 A. Taken from practice, look once: centre negative and 5.5x2.1.", VerdictSentence.Of(check));
    }

    [Fact]
    public void The_mains_side_is_named_where_nothing_tells_of_it()
    {
        var check = OneLoad.Check(static rig => rig with { Supplies = [rig.Supplies[0] with { Mains = null }] });

        Assert.Equal(Severity.Note, check.Verdict);
        Assert.Equal("Safe to plug in. Volts, polarity and current fit; 410 mA of 2 A. Not checked: the mains side of wall.", VerdictSentence.Of(check));
    }

    [Fact]
    public void Alternating_current_has_no_polarity_to_fit()
    {
        var check = new RigBuilder().Load("preamp-1", Plate.Ac(9, 500), static load => load with { Polarity = null }).Supply("wall")
            .Outlet("1", Plate.Ac(9, 1000), static outlet => outlet with { Polarity = null }).Feed("wall/1", "preamp-1").Check();

        Assert.Equal("Safe to plug in. Volts, a.c. and current fit; 500 mA of 1 A.", VerdictSentence.Of(check));
    }

    [Fact]
    public void Harm_names_what_would_be_harmed()
    {
        var check = OneLoad.Check(static rig => rig with { Loads = [rig.Loads[0] with { Polarity = Polarity.CentrePositive }] });

        Assert.Equal("Do not plug in: delay-2 is centre positive; wall/1 is centre negative.", VerdictSentence.Of(check));
    }

    [Fact]
    public void Fails_names_what_will_not_run_and_counts_the_others()
    {
        var check = new RigBuilder().Load("delay-2", Plate.Dc(9, 410)).Load("drive-3", Plate.Dc(9, 12)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "delay-2").Check();

        Assert.Equal(
            "Something here will not run: brick/1 carries 410 mA and can give 100 mA. And one more.", VerdictSentence.Of(check));
    }

    [Fact]
    public void A_sentence_of_a_finding_goes_on_in_small_letters()
    {
        var check = new RigBuilder().Load("delay-2", Plate.Dc(12, 410), static load => load with { Polarity = null }).Supply("wall").Outlet("1", Plate.Dc(12, 2000))
            .Feed("wall/1", "delay-2").Check();

        Assert.StartsWith("Find out first: the polarity of delay-2 is not known.", VerdictSentence.Of(check), StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_rig_and_one_that_nothing_is_plugged_into_are_open()
    {
        Assert.Equal("Nothing is plugged in yet.", VerdictSentence.Of(NameplateCheck.Of(new Rig { Name = "empty" })));
        Assert.Equal("Nothing is plugged in yet.", VerdictSentence.Of(new RigBuilder().Load("delay-2", null).Load("drive-3", Plate.Dc(9, 12)).Supply("brick").Check()));
    }

    [Fact]
    public void A_yes_never_says_that_something_fits_which_no_rule_could_compare() =>
        WiredRigGen.Rig().Sample(
            static rig =>
            {
                var wired = WiredRig.Of(rig);
                var check = NameplateCheck.Of(wired);
                var text = VerdictSentence.Of(check);
                if (!text.StartsWith("Safe", StringComparison.Ordinal))
                    return;
                Assert.True(check.Verdict <= Severity.Note);
                var loads = wired.Loads.Items.Where(static load => load.Feeds.Count > 0).ToList();
                Assert.NotEmpty(loads);
                if (check.Fitting.Contains("volts"))
                    Assert.All(loads, static load => Assert.True(load.Rating.Voltage.IsKnown));
                if (check.Fitting.Contains("polarity"))
                    Assert.All(
                        loads.Where(static load => load.Rating.Form.Value == SupplyForm.Direct), static load => Assert.False(load.Rating.Polarity.IsAssumed));
                if (check.Fitting.Contains("current"))
                    Assert.All(loads, static load => Assert.NotNull(load.Rating.Running));
            },
            iter: 2000);

    [Fact]
    public void A_finding_is_marked_where_it_arises_and_nowhere_else()
    {
        var check = new RigBuilder().Load("delay-2", Plate.Dc(9, 95)).Load("drive-3", Plate.Dc(9, 1)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "delay-2", "drive-3").Check();

        Assert.Equal(["brick/1", "delay-2", "drive-3"], check.Findings[0].Subjects);
        Assert.Equal(["brick/1"], WorstBySubject.Of(check).Keys);
    }

    [Fact]
    public void What_shares_a_return_with_a_digital_load_is_not_marked_for_it()
    {
        var check = new RigBuilder().Digital("delay-2", Plate.Dc(9, 95)).Load("drive-3", Plate.Dc(9, 1)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 500)).Chain("brick/1", "delay-2", "drive-3").Check();

        Assert.Equal(Severity.Noise, check.Verdict);
        Assert.Equal(["delay-2"], WorstBySubject.Of(check).Keys);
    }

    [Fact]
    public void A_mark_is_always_on_a_subject_of_its_finding() =>
        WiredRigGen.Rig().Sample(
            static rig => Assert.All(
                NameplateCheck.Of(rig).Findings,
                static finding => Assert.True(finding.Arises.Count > 0 && finding.Arises.Items.All(finding.Subjects.Items.Contains), finding.Rule)),
            iter: 1000);
}
