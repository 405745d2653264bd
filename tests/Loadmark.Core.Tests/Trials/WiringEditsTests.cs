using CsCheck;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
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

    private static IEnumerable<Feed> Feeds(Rig rig) => rig.Wired ?? [];

    private static void Whole(Rig rig)
    {
        Assert.All(Feeds(rig), feed => Assert.NotEmpty(feed.To));
        Assert.NotNull(WiredRig.Of(rig)); // throws for any name that the rig does not have
    }

    private static void Sample(Action<Rig, int> assert) => Gen.Select(WiredRigGen.Rig(), Gen.Int[0, 99]).Sample(assert, iter: 500);
}
