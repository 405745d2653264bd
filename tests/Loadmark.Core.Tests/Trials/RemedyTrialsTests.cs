using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;

namespace Loadmark.Core.Tests.Trials;

/// <summary>Single changes that mend a finding: each one offered does, whatever the rig; and the ones a technician would make are offered.</summary>
public sealed class RemedyTrialsTests
{
    [Fact]
    public void What_is_offered_takes_the_finding_away_and_makes_the_rig_better() => Gen.Select(WiredRigGen.Rig(), Gen.Int[0, 99]).Sample(
        (rig, pick) =>
        {
            var check = NameplateCheck.Of(rig);
            if (check.Findings.Count == 0)
                return;
            var finding = check.Findings[pick % check.Findings.Count];
            var remedies = RemedyTrials.Find(rig, check, finding, NameplateCheck.Of, TestContext.Current.CancellationToken);

            Assert.True(remedies.Count <= RemedyTrials.Most);
            Assert.All(remedies, remedy =>
            {
                Assert.Equal(NameplateCheck.Of(remedy.Rig), remedy.Check);
                Assert.True(Severities.IsBetter(remedy.Check, check), remedy.What);
                Assert.DoesNotContain(remedy.Check.Findings, other => other.Rule == finding.Rule && other.Subjects == finding.Subjects);
                Assert.Matches("^(Set|Use|Plug|Unplug) ", remedy.What);
                Assert.Equal(rig with { Wired = null }, remedy.Rig with { Wired = null });
                Assert.NotEqual(rig.Wired, remedy.Rig.Wired);
                Assert.NotNull(WiredRig.Of(remedy.Rig));
            });
            for (var index = 1; index < remedies.Count; index++)
                Assert.False(Severities.IsBetter(remedies[index].Check, remedies[index - 1].Check), "the best comes first");
        },
        iter: 100);

    [Fact]
    public void An_outlet_left_at_18_V_is_set_to_9_V_again()
    {
        var rig = LeftAt18().Build();
        var remedies = Remedies(rig, "over-voltage");

        var first = remedies[0];
        Assert.Equal("Set brick/2 to 9 V", first.What);
        Assert.Equal([new Volts(9)], first.Rig.Wired!.Value[1].At);
        Assert.DoesNotContain(first.Check.Findings, finding => finding.Severity >= Severity.Noise);
    }

    [Fact]
    public void A_fuzz_on_a_shared_return_is_moved_to_a_supply_of_its_own_or_unplugged()
    {
        var shared = Shared();
        Assert.Equal("Unplug fuzz-2", Assert.Single(Remedies(shared.Build(), "ground-short"), remedy => remedy.What.Contains("fuzz-2", StringComparison.Ordinal)).What);

        var rig = shared.Supply("spare").Outlet("1", Plate.Dc(9, 100)).Build();
        var first = Remedies(rig, "ground-short")[0];
        Assert.Equal("Plug fuzz-2 onto spare/1 over flip", first.What);
        Assert.DoesNotContain(first.Check.Findings, finding => finding.Severity >= Severity.Fails);
    }

    [Fact]
    public void A_chain_that_does_not_start_loses_the_load_with_the_surge()
    {
        var builder = new RigBuilder()
            .Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 45))
            .Digital("delay-5", Plate.Dc(9, 500), load => load with { Run = new Amps(0.38m), Start = new TimedCurrent(new Amps(1.1m), new Seconds(1.2m)) })
            .Supply("wall", supply => supply with { Isolated = false }).Outlet("1", Plate.Dc(9, 1000))
            .Chain("wall/1", "drive-3", "chorus-1", "delay-5");
        Assert.Equal("Unplug delay-5", Remedies(builder.Build(), "start-overload")[0].What);

        var rig = builder.Supply("second").Outlet("1", Plate.Dc(9, 1500)).Build();
        Assert.Equal("Plug delay-5 onto second/1", Remedies(rig, "start-overload")[0].What);
    }

    [Fact]
    public void A_reversed_load_is_given_the_reversing_lead()
    {
        var rig = new RigBuilder()
            .Load("fuzz-1", Plate.Dc(9, 3), load => load with { Polarity = Polarity.CentrePositive })
            .Supply("brick").Outlet("1", Plate.Dc(9, 100))
            .Lead("flip", LeadType.Reversing).Feed("brick/1", "fuzz-1").Build();
        var first = Remedies(rig, "reversed-polarity")[0];
        Assert.Equal("Use flip on brick/1", first.What);
        Assert.DoesNotContain(first.Check.Findings, finding => finding.Severity >= Severity.Noise);
    }

    [Fact]
    public void What_no_wiring_mends_has_no_remedy()
    {
        var rig = new RigBuilder().Load("drive-3", Plate.Dc(9, 12), load => load with { Polarity = null }).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "drive-3").Build();
        Assert.Empty(Remedies(rig, "figure-assumed"));
    }

    [Fact]
    public void Cancelled_before_it_begins_it_offers_nothing()
    {
        var rig = LeftAt18().Build();
        var check = NameplateCheck.Of(rig);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Empty(RemedyTrials.Find(rig, check, check.Findings[0], NameplateCheck.Of, stop.Token));
    }

    private static IReadOnlyList<Trial> Remedies(Rig rig, string rule)
    {
        var check = NameplateCheck.Of(rig);
        var finding = check.Findings.First(finding => finding.Rule == rule);
        return RemedyTrials.Find(rig, check, finding, NameplateCheck.Of, TestContext.Current.CancellationToken);
    }

    /// <summary>As examples/left-at-18.rig.yaml.</summary>
    private static RigBuilder LeftAt18() => new RigBuilder()
        .Load("drive-6", Plate.Range(9, 18, 15))
        .Digital("delay-2", Plate.Dc(9, 300), load => load with { Run = new Amps(0.18m), Start = new TimedCurrent(new Amps(0.24m), new Seconds(1.5m)) })
        .Supply("brick").Outlet("1", Plate.Dc(9, 150)).Outlet("2", Plate.Modes((9, 500), (12, 400), (18, 250)))
        .Feed("brick/1", "drive-6").FeedAt("brick/2", 18, "delay-2");

    /// <summary>As examples/fuzz-shared.rig.yaml.</summary>
    private static RigBuilder Shared() => new RigBuilder()
        .Load("fuzz-2", Plate.Dc(9, 2), load => load with { Polarity = Polarity.CentrePositive, Ground = GroundSide.Positive })
        .Load("drive-7", Plate.Dc(9, 9)).Load("tremolo-2", Plate.Dc(9, 30))
        .Supply("twin", supply => supply with { Isolated = false }).Outlet("1", Plate.Dc(9, 200)).Outlet("2", Plate.Dc(9, 200)).Outlet("3", Plate.Dc(9, 200))
        .Lead("flip", LeadType.Reversing)
        .FeedOver("flip", "twin/1", "fuzz-2").Feed("twin/2", "drive-7").Feed("twin/3", "tremolo-2");
}
