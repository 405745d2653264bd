using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Core.Tests.Checks;
using Loadmark.Core.Trials;

namespace Loadmark.Core.Tests.Trials;

/// <summary>What becomes of a load on an outlet, tried before it is done: over rigs of every sort, and by hand.</summary>
public sealed class ConnectionTrialsTests
{
    private static readonly int Rigs = Rounds.Of(300);

    [Fact]
    public void Without_a_refusal_nothing_is_harmed_and_nothing_fails_by_it() => Sample((rig, present, outlet, connection) =>
    {
        if (connection.Objection is not null || connection.IsThere)
            return;
        var before = present.Refusing().SelectMany(Keys).ToHashSet();
        var refusing = connection.Best.Check.Refusing().Where(static finding => finding.Rule != RuleId.Unfed);
        Assert.All(refusing, finding => Assert.All(Keys(finding), key => Assert.Contains(key, before)));
        Assert.DoesNotContain(connection.Best.Check.Refusing(), finding =>
            finding.Subjects.Contains(connection.Load) && finding.Subjects.Contains(outlet.ToString()));
    });

    [Fact]
    public void A_refusal_is_a_finding_that_the_rig_did_not_have() => Sample((rig, present, outlet, connection) =>
    {
        if (connection.Objection is not { } objection)
            return;
        Assert.Contains(connection.Best.Check.Refusing(), finding => finding == objection
            && (!present.Findings.Contains(finding) || (finding.Subjects.Contains(connection.Load) && finding.Subjects.Contains(outlet.ToString()))));
    });

    /// <summary>A plain lead at some setting of a free outlet is the least that is tried.</summary>
    [Fact]
    public void What_a_plain_lead_can_do_is_not_refused() => Sample((rig, present, outlet, connection) =>
    {
        if (connection.Objection is null || Feeds(rig).Any(feed => feed.From.Contains(outlet)))
            return;
        var before = present.Refusing().SelectMany(Keys).ToHashSet();
        var label = rig.Supplies.Single(supply => supply.Id == outlet.Supply).Outlets.Single(one => one.Id == outlet.Outlet).Label;
        foreach (var volts in label.Modes.Select(mode => mode.Volts?.Low))
        {
            var plugged = rig.Unplug(connection.Load).Plug(new Feed { From = [outlet], At = volts is { } at ? [at] : [], To = [connection.Load] });
            Assert.Contains(NameplateCheck.Of(plugged).Refusing(), finding => Keys(finding).Any(key => !before.Contains(key))
                || (finding.Subjects.Contains(connection.Load) && finding.Subjects.Contains(outlet.ToString())));
        }
    });

    [Fact]
    public void The_best_way_plugs_the_load_in_once_and_leaves_the_rest_as_it_was() => Sample((rig, present, outlet, connection) =>
    {
        if (connection.IsThere)
        {
            Assert.Equal(rig, connection.Best.Rig);
            return;
        }

        var after = connection.Best.Rig;
        var fed = Assert.Single(Feeds(after), feed => feed.To.Contains(connection.Load));
        Assert.Single(fed.To, connection.Load);
        Assert.Contains(outlet, fed.From);
        Assert.Equal(NameplateCheck.Of(after), connection.Best.Check);

        // Every other feed, without the load, stands where it stood; the one that was plugged into has what it had.
        var rest = Feeds(rig).Select(feed => feed with { To = [.. feed.To.Where(id => id != connection.Load)] }).Where(feed => feed.To.Count > 0).ToList();
        var now = Feeds(after).Select(feed => feed == fed ? fed with { To = [.. fed.To.Where(id => id != connection.Load)] } : feed).Where(feed => feed.To.Count > 0).ToList();
        Assert.Equal(rest.Select(feed => feed with { Lead = feed.From.Contains(outlet) ? null : feed.Lead }), now.Select(feed => feed with { Lead = feed.From.Contains(outlet) ? null : feed.Lead }));
        Assert.Equal(rig with { Wired = null }, after with { Wired = null });
    });

    [Fact]
    public void Every_load_is_tried_in_the_order_of_the_rig() => WiredRigGen.Rig().Sample(
        rig =>
        {
            var outlet = Outlets(rig)[0];
            var connections = new ConnectionTrials(rig, NameplateCheck.Of(rig), NameplateCheck.Of).On(outlet);
            Assert.Equal(rig.EveryLoad.Where(load => load.Id != outlet.Supply).Select(load => load.Id), connections.Select(connection => connection.Load));
            Assert.All(connections, connection =>
                Assert.Equal(Feeds(rig).Any(feed => feed.From.Contains(outlet) && feed.To.Contains(connection.Load)), connection.IsThere));
        },
        iter: 50);

    [Fact]
    public void An_outlet_that_suits_is_taken_as_it_is()
    {
        var connection = Try(Pedals().Outlet("1", Plate.Dc(9, 100)), "brick/1", "drive-3");
        Assert.Null(connection.Objection);
        Assert.Null(connection.Remark);
        Assert.False(connection.IsThere);
        Assert.Equal("drive-3 onto brick/1", connection.Best.What);
        Assert.DoesNotContain(connection.Best.Check.Refusing(), finding => finding.Subjects.Contains("drive-3"));
    }

    [Fact]
    public void The_setting_that_suits_is_chosen()
    {
        var connection = Try(Pedals().Outlet("1", Plate.Modes((18, 250), (12, 400), (9, 500))), "brick/1", "drive-3");
        Assert.Null(connection.Objection);
        Assert.Equal("drive-3 onto brick/1 at 9 V", connection.Best.What);
        Assert.Equal([new Volts(9)], Feeds(connection.Best.Rig).Single().At);
    }

    [Fact]
    public void Too_high_a_voltage_is_refused_and_says_so()
    {
        var connection = Try(Pedals().Outlet("1", Plate.Dc(18, 100)), "brick/1", "drive-3");
        Assert.NotNull(connection.Objection);
        Assert.Contains("18 V", connection.Objection.Message, StringComparison.Ordinal);
        Expect.Breaks(connection.Best.Check, "over-voltage");
    }

    [Fact]
    public void A_reversed_polarity_takes_the_reversing_lead_on_hand()
    {
        var rig = Pedals(load => load with { Polarity = Polarity.CentrePositive }).Outlet("1", Plate.Dc(9, 100));
        Assert.NotNull(Try(rig, "brick/1", "drive-3").Objection);

        var connection = Try(rig.Lead("flip", LeadType.Reversing), "brick/1", "drive-3");
        Assert.Null(connection.Objection);
        Assert.Equal("drive-3 onto brick/1 over flip", connection.Best.What);
        Assert.Equal("flip", Feeds(connection.Best.Rig).Single().Lead);
    }

    [Fact]
    public void A_reversing_lead_that_is_in_use_is_not_taken_again()
    {
        var rig = Pedals(load => load with { Polarity = Polarity.CentrePositive })
            .Load("drive-4", Plate.Dc(9, 10), load => load with { Polarity = Polarity.CentrePositive })
            .Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
            .Lead("flip", LeadType.Reversing).FeedOver("flip", "brick/1", "drive-4");
        var connection = Try(rig, "brick/2", "drive-3");
        Assert.NotNull(connection.Objection);
        Assert.Null(Feeds(connection.Best.Rig).Single(feed => feed.To.Contains("drive-3")).Lead);
    }

    [Fact]
    public void A_second_load_on_a_plain_lead_is_refused_for_want_of_plugs()
    {
        var rig = Pedals().Load("drive-4", Plate.Dc(9, 10)).Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "drive-4");
        var connection = Try(rig, "brick/1", "drive-3");
        Assert.NotNull(connection.Objection);
        var finding = Assert.Single(connection.Best.Check.Findings, finding => finding.Rule == "lead-short-of-plugs");
        Assert.Equal(finding, connection.Objection);

        var chained = Try(rig.Lead("chain", LeadType.DaisyChain, 2), "brick/1", "drive-3");
        Assert.Null(chained.Objection);
        Assert.Equal("drive-3 onto brick/1, with drive-4 over chain", chained.Best.What);
    }

    [Fact]
    public void A_chain_that_is_too_short_does_not_help()
    {
        var rig = Pedals().Load("drive-4", Plate.Dc(9, 10)).Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "drive-4").Lead("chain", LeadType.DaisyChain, 1);
        Assert.NotNull(Try(rig, "brick/1", "drive-3").Objection);
    }

    [Fact]
    public void Little_to_spare_is_a_remark_and_no_refusal()
    {
        var connection = Try(Pedals().Outlet("1", Plate.Dc(9, 13)), "brick/1", "drive-3");
        Assert.Null(connection.Objection);
        Assert.Equal(Expect.Breaks(connection.Best.Check, "thin-headroom"), connection.Remark);
    }

    [Fact]
    public void What_is_bad_on_another_outlet_is_bad_on_this_one()
    {
        // Both outlets already harm a load; moving one to the other's outlet is no better for it.
        var rig = Pedals().Load("drive-4", Plate.Dc(9, 10))
            .Outlet("1", Plate.Dc(18, 100)).Outlet("2", Plate.Dc(18, 100))
            .Lead("chain", LeadType.DaisyChain, 2)
            .FeedOver("chain", "brick/1", "drive-4").Feed("brick/2", "drive-3");
        Assert.NotNull(Try(rig, "brick/1", "drive-3").Objection);
    }

    [Fact]
    public void Settings_without_a_voltage_are_one_way_like_any_other()
    {
        var label = Plate.Of(
            SupplyForm.Direct,
            new Mode(null, new Figure<Amps>(new Amps(0.3m), Origin.Stated), null),
            new Mode(null, new Figure<Amps>(new Amps(0.5m), Origin.Stated), null));
        var connection = Try(Pedals().Outlet("1", label), "brick/1", "drive-3");
        Assert.Equal("drive-3", connection.Load);
        Assert.Single(Feeds(connection.Best.Rig));
    }

    [Fact]
    public void An_outlet_that_the_rig_does_not_have_is_the_callers_mistake() =>
        Assert.Throws<ArgumentException>(() => Try(Pedals().Outlet("1", Plate.Dc(9, 100)), "brick/7", "drive-3"));

    private static RigBuilder Pedals(Func<Load, Load>? change = null) => new RigBuilder().Load("drive-3", Plate.Dc(9, 12), change).Supply("brick");

    private static Connection Try(RigBuilder builder, string outlet, string load)
    {
        var rig = builder.Build();
        return new ConnectionTrials(rig, NameplateCheck.Of(rig), NameplateCheck.Of).Connect(new OutletRef(outlet.Split('/')[0], outlet.Split('/')[1]), load);
    }

    private static IEnumerable<Feed> Feeds(Rig rig) => rig.Wired ?? [];

    private static OutletRef[] Outlets(Rig rig) => [.. rig.Supplies.SelectMany(supply => supply.Outlets.Select(outlet => new OutletRef(supply.Id, outlet.Id)))];

    private static IEnumerable<(RuleId Rule, string Subject)> Keys(Finding finding) => finding.Subjects.Select(subject => (finding.Rule, subject));

    private static void Sample(Action<Rig, CheckResult, OutletRef, Connection> assert) => Gen.Select(WiredRigGen.Rig(), Gen.Int[0, 99], Gen.Int[0, 99]).Sample(
        (rig, outletPick, loadPick) =>
        {
            if (rig.Loads.Count == 0)
                return;
            var outlets = Outlets(rig);
            var outlet = outlets[outletPick % outlets.Length];
            var present = NameplateCheck.Of(rig);
            var connection = new ConnectionTrials(rig, present, NameplateCheck.Of).Connect(outlet, rig.Loads[loadPick % rig.Loads.Count].Id);
            assert(rig, present, outlet, connection);
        },
        iter: Rigs);
}
