using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Tests.Checks;
using Loadmark.Core.Trials;

namespace Loadmark.Core.Tests.Trials;

/// <summary>Whatever is unplugged, removed or renamed, the rig stays whole.</summary>
public sealed class WiringEditsTests
{
    [Fact]
    public void Unplugged_loads_are_on_nothing_and_the_others_stay() => Sample((rig, pick) =>
    {
        if (rig.Loads.Count == 0)
            return;
        var off = rig.Loads.Where((_, index) => index % 2 == pick % 2).Select(load => load.Id).ToList();
        var after = rig.Unplug(off);
        Whole(after);
        Assert.DoesNotContain(Feeds(after), feed => feed.To.Any(off.Contains));
        Assert.Equal(
            Feeds(rig).SelectMany(feed => feed.To.Where(id => !off.Contains(id)).Select(id => (string.Join('+', feed.From), feed.Lead, id))),
            Feeds(after).SelectMany(feed => feed.To.Select(id => (string.Join('+', feed.From), feed.Lead, id))));
        Assert.Equal(rig with { Wired = null }, after with { Wired = null });
    });

    [Fact]
    public void A_removed_load_is_mentioned_nowhere() => Sample((rig, pick) =>
    {
        if (rig.Loads.Count == 0)
            return;
        var id = rig.Loads[pick % rig.Loads.Count].Id;
        var after = rig.RemoveLoad(id);
        Whole(after);
        Assert.Equal(rig.Loads.Where(load => load.Id != id), after.Loads);
        Assert.DoesNotContain(id, after.Signal);
        Assert.DoesNotContain(Feeds(after), feed => feed.To.Contains(id));
    });

    [Fact]
    public void A_removed_supply_takes_its_feeds_with_it_and_no_others() => Sample((rig, pick) =>
    {
        var id = rig.Supplies[pick % rig.Supplies.Count].Id;
        var after = rig.RemoveSupply(id);
        Whole(after);
        Assert.Equal(rig.Supplies.Where(supply => supply.Id != id), after.Supplies);
        Assert.Equal(Feeds(rig).Where(feed => !feed.From.Any(outlet => outlet.Supply == id)), Feeds(after));
        Assert.Equal(rig.Loads, after.Loads);
    });

    [Fact]
    public void A_removed_outlet_takes_its_feeds_with_it_and_a_supply_keeps_one() => Sample((rig, pick) =>
    {
        var supply = rig.Supplies[pick % rig.Supplies.Count];
        var gone = new OutletRef(supply.Id, supply.Outlets[pick % supply.Outlets.Count].Id);
        var after = rig.RemoveOutlet(gone);
        Whole(after);
        Assert.Equal(Feeds(rig).Where(feed => !feed.From.Contains(gone)), Feeds(after));
        var left = after.Supplies.Single(one => one.Id == supply.Id);
        Assert.Equal(Math.Max(1, supply.Outlets.Count - 1), left.Outlets.Count);

        // A rig file may not have a bank that no outlet is of.
        Assert.Equal(
            supply.Banks.Where(bank => left.Outlets.Any(outlet => outlet.Bank == bank.Name) || !supply.Outlets.Any(outlet => outlet.Bank == bank.Name)), left.Banks);
    });

    [Fact]
    public void A_removed_lead_is_used_nowhere_and_single_loads_stay_fed() => Sample((rig, pick) =>
    {
        var id = rig.Leads[pick % rig.Leads.Count].Id;
        var after = rig.RemoveLead(id);
        Whole(after);
        Assert.DoesNotContain(Feeds(after), feed => feed.Lead == id);
        var plain = Feeds(rig).Where(feed => feed.Lead != id || feed is { To.Count: 1, From.Count: 1 }).Select(feed => feed.Lead == id ? feed with { Lead = null } : feed);
        Assert.Equal(plain, Feeds(after));
    });

    [Fact]
    public void What_is_renamed_there_and_back_is_as_it_was() => Sample((rig, pick) =>
    {
        var supply = rig.Supplies[pick % rig.Supplies.Count].Id;
        var lead = rig.Leads[pick % rig.Leads.Count].Id;
        var renamed = rig.RenameSupply(supply, "another").RenameLead(lead, "another");
        Whole(renamed);
        Assert.NotEqual(rig, renamed);
        Assert.DoesNotContain(renamed.Supplies, one => one.Id == supply);
        Assert.Equal(rig, renamed.RenameSupply("another", supply).RenameLead("another", lead));

        if (rig.Loads.Count == 0)
            return;
        var load = rig.Loads[pick % rig.Loads.Count].Id;
        var tagged = rig.RenameLoad(load, "another");
        Whole(tagged);
        Assert.DoesNotContain(load, Feeds(tagged).SelectMany(feed => feed.To).Concat(tagged.Signal));
        Assert.Equal(rig, tagged.RenameLoad("another", load));
    });

    [Fact]
    public void Replacing_and_plugging_touch_one_feed()
    {
        var rig = new RigBuilder().Load("drive-3", Plate.Dc(9, 12)).Load("drive-4", Plate.Dc(9, 12)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
            .Feed("brick/1", "drive-3").Build();
        var feed = new Feed { From = [new OutletRef("brick", "2")], To = ["drive-4"] };
        Assert.Equal([.. rig.Wired!.Value, feed], rig.Plug(feed).Wired!.Value);
        Assert.Equal([feed], rig.Replace(0, feed).Wired!.Value);
        Assert.Equal([feed], (rig with { Wired = null }).Plug(feed).Wired!.Value);
        Assert.Null((rig with { Wired = null }).Unplug("drive-3").Wired);
        Assert.Throws<ArgumentOutOfRangeException>(() => rig.Replace(1, feed));
    }

    [Fact]
    public void A_supply_put_back_with_fewer_outlets_loses_the_feeds_of_those_that_are_gone()
    {
        var rig = new RigBuilder().Load("drive-3", Plate.Dc(9, 12)).Load("drive-4", Plate.Dc(9, 12)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
            .Feed("brick/1", "drive-3").Feed("brick/2", "drive-4").Build();
        var after = rig.PutSupply(0, rig.Supplies[0] with { Outlets = [rig.Supplies[0].Outlets[1]] });
        Whole(after);
        Assert.Equal(["drive-4"], Assert.Single(Feeds(after)).To);
    }

    /// <summary>A supply that another feeds stands in the wiring as a load too.</summary>
    [Fact]
    public void A_fed_supply_is_renamed_and_removed_on_both_sides_of_the_wiring()
    {
        var rig = FedBrick();
        var renamed = rig.RenameSupply("brick", "floor");
        Whole(renamed);
        Assert.Equal(["floor", "drive-3"], Feeds(renamed).Select(feed => feed.To.Single()));
        Assert.Equal("floor/1", Feeds(renamed).Last().From.Single().ToString());

        var removed = rig.RemoveSupply("brick");
        Whole(removed);
        Assert.Empty(Feeds(removed));

        var without = rig.PutSupply(1, rig.Supplies[1] with { Label = NameplateReader.Read("OUTPUT 9V 500mA") });
        Whole(without);
        Assert.Equal(["drive-3"], Feeds(without).Select(feed => feed.To.Single()));
    }

    [Fact]
    public void What_is_plugged_as_it_is_gets_a_plain_lead_and_no_setting()
    {
        var rig = new RigBuilder().Load("drive-3", Plate.Dc(9, 12)).Load("drive-4", Plate.Dc(9, 12)).Supply("brick")
            .Outlet("1", Plate.Modes((9, 500), (18, 250))).Outlet("2", Plate.Dc(9, 100)).Lead("flip", LeadType.Reversing).Lead("short", LeadType.DaisyChain, 1)
            .Lead("chain", LeadType.DaisyChain, 2).Feed("brick/2", "drive-3").Build();
        var place = new OutletRef("brick", "1");
        var moved = rig.PlugAsItIs(place, "drive-3");
        Assert.Equal([new Feed { From = [place], To = ["drive-3"] }], Feeds(moved));

        // Two loads on one outlet need a lead with a plug for each.
        var shared = moved.PlugAsItIs(place, "drive-4");
        Assert.Equal([new Feed { From = [place], Lead = "chain", To = ["drive-3", "drive-4"] }], Feeds(shared));

        // Where none is on hand, none is made up: the rule on plugs says so.
        var bare = (moved with { Leads = [] }).PlugAsItIs(place, "drive-4");
        Expect.Breaks(NameplateCheck.Of(bare), "lead-short-of-plugs");
        Assert.Equal(shared, shared.PlugAsItIs(place, "drive-4"));
    }

    [Fact]
    public void Whatever_is_plugged_as_it_is_is_plugged_there_once_and_the_rest_stays() => Sample((rig, pick) =>
    {
        var loads = rig.EveryLoad.Select(load => load.Id).ToList();
        var outlets = rig.Supplies.SelectMany(supply => supply.Outlets.Select(outlet => new OutletRef(supply.Id, outlet.Id))).ToList();
        if (loads.Count == 0)
            return;
        var (load, outlet) = (loads[pick % loads.Count], outlets[pick % outlets.Count]);
        var after = rig.PlugAsItIs(outlet, load);
        Whole(after);
        var fed = Assert.Single(Feeds(after), feed => feed.To.Contains(load));
        Assert.Contains(outlet, fed.From);
        Assert.Single(fed.To, load);
        Assert.Equal(
            Feeds(rig.Unplug(load)).SelectMany(feed => feed.To.Select(id => (string.Join('+', feed.From), id))),
            Feeds(after).SelectMany(feed => feed.To.Where(id => id != load).Select(id => (string.Join('+', feed.From), id))));
        Assert.Equal(rig with { Wired = null }, after with { Wired = null });
    });

    private static Rig FedBrick()
    {
        var rig = new RigBuilder().Load("drive-3", Plate.Dc(9, 12)).Supply("wall").Outlet("1", Plate.Dc(12, 2000)).Supply("brick").Outlet("1", Plate.Dc(9, 500)).Build();
        rig = rig with { Supplies = [rig.Supplies[0], rig.Supplies[1] with { Label = NameplateReader.Read("INPUT 12V DC 1A OUTPUT 9V 500mA") }] };
        Assert.Equal(["drive-3", "brick"], rig.EveryLoad.Select(load => load.Id));
        return rig.PlugAsItIs(new OutletRef("wall", "1"), "brick").PlugAsItIs(new OutletRef("brick", "1"), "drive-3");
    }

    private static IEnumerable<Feed> Feeds(Rig rig) => rig.Wired ?? [];

    private static void Whole(Rig rig)
    {
        Assert.All(Feeds(rig), feed => Assert.NotEmpty(feed.To));
        Assert.NotNull(WiredRig.Of(rig)); // throws for any name that the rig does not have
    }

    private static void Sample(Action<Rig, int> assert) => Gen.Select(WiredRigGen.Rig(), Gen.Int[0, 99]).Sample(assert, iter: 500);
}
