using System.Reflection;
using CsCheck;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Merging;

namespace Loadmark.Files.Tests;

/// <summary>Two edits of one rig: nothing of either is lost without being asked, whatever the two did.</summary>
public sealed class RigMergeTests
{
    private static readonly Rig Base = RigFileReader.Read(
        """
        rig: Pier Theatre
        loads:
          drive-3: { kind: analog drive, label: "9V DC 12mA" }
          delay-2: { kind: digital, label: "9V DC 300mA" }
          preamp-2: { label: "9V DC 60mA" }
        supplies:
          brick: { outlets: { 1: 9 V 150 mA, 2: 9 V 500 mA, 3: 9 V 150 mA } }
        leads:
          flip: { type: reversing }
        wired:
          - { from: brick/1, to: drive-3 }
          - { from: brick/2, to: delay-2 }
        signal: [drive-3, delay-2, amp]
        """,
        "rig").Rig!;

    [Fact]
    public void Who_changed_nothing_takes_the_other_s() => RigChange.Pairs.Sample((before, after) =>
    {
        var theirs = RigMerge.Merge(before, before, after);
        Assert.Equal(after, theirs.Rig);
        Assert.Equal((0, 0), (theirs.Conflicts.Count, theirs.Ours.Count));
        var ours = RigMerge.Merge(before, after, before);
        Assert.Equal(after, ours.Rig);
        Assert.Equal((0, 0), (ours.Conflicts.Count, ours.Theirs.Count));
        Assert.Equal(before == after, ours.Ours.Count == 0);
        var both = RigMerge.Merge(before, after, after);
        Assert.Equal(after, both.Rig);
        Assert.Empty(both.Conflicts);
    });

    [Fact]
    public void It_is_the_same_whoever_asks() => RigChange.Triples.Sample((before, one, two) =>
    {
        var mine = RigMerge.Merge(before, one, two);
        var all = mine.Conflicts.Items.ToDictionary(static conflict => conflict.Place, static _ => MergeSide.Theirs);
        var other = RigMerge.Merge(before, two, one, all);
        for (var more = 0; more < 5 && other.Conflicts.Items.Any(conflict => all.TryAdd(conflict.Place, MergeSide.Theirs)); more++)
            other = RigMerge.Merge(before, two, one, all);
        Assert.Equal(mine.Rig, other.Rig);
        Assert.Equal(Swapped(mine), other.Conflicts.Items.Select(static conflict => conflict.ToString()).Order(StringComparer.Ordinal));

        static List<string> Swapped(MergeResult result) =>
            [.. result.Conflicts.Items.Select(static conflict => (conflict with { Ours = conflict.Theirs, Theirs = conflict.Ours }).ToString()).Order(StringComparer.Ordinal)];
    });

    [Theory]
    [InlineData(MergeSide.Ours)]
    [InlineData(MergeSide.Theirs)]
    public void Whatever_is_chosen_the_rig_refers_only_to_what_it_has(MergeSide side) => RigChange.Triples.Sample((before, ours, theirs) =>
    {
        var choices = new Dictionary<MergePlace, MergeSide>();
        var merged = RigMerge.Merge(before, ours, theirs, choices);
        while (merged.Conflicts.Items.Any(conflict => choices.TryAdd(conflict.Place, side)))
            merged = RigMerge.Merge(before, ours, theirs, choices);
        AssertWhole(merged.Rig);
    });

    [Fact]
    public void No_field_of_either_is_lost_without_a_conflict() => RigChange.Triples.Sample((before, ours, theirs) =>
    {
        var merged = RigMerge.Merge(before, ours, theirs);
        AssertKept(before, ours, merged);
        AssertKept(before, theirs, merged);
    });

    [Fact]
    public void Edits_of_different_things_are_as_one_after_the_other() => RigChange.Pairs.Where(static pair => pair.Before.Loads.Count > 1).Sample((before, after) =>
    {
        // Ours: whatever the generator did to all but the first load. Theirs: that load, the mains and a load more.
        var first = before.Loads[0];
        if (!after.Loads.Items.Contains(first) || after.Mains != before.Mains)
            return;
        Rig Theirs(Rig rig) => rig with
        {
            Mains = new RigMains(new Volts(110), null),
            Loads = new ValueList<Load>([.. rig.Loads.Items.Replace(first, first with { Name = "theirs", Priority = 1 }), new Load { Id = "their load" }]),
        };

        var merged = RigMerge.Merge(before, after, Theirs(before));
        Assert.Empty(merged.Conflicts);
        var expected = Theirs(after);
        Assert.Equal(expected with { Loads = [] }, merged.Rig with { Loads = [] });
        Assert.Equal(expected.Loads.Items.OrderBy(static load => load.Id, StringComparer.Ordinal), merged.Rig.Loads.Items.OrderBy(static load => load.Id, StringComparer.Ordinal));
    });

    [Fact]
    public void Two_fields_of_one_load_are_both_kept()
    {
        var merged = RigMerge.Merge(Base, Put(Base, "drive-3", load => load with { Run = new Amps(0.009m) }), Put(Base, "drive-3", load => load with { Name = "Left of the pair" }));
        Assert.Empty(merged.Conflicts);
        Assert.Equal((new Amps(0.009m), "Left of the pair"), (merged.Rig.Loads[0].Run, merged.Rig.Loads[0].Name));
        Assert.Equal(new MergeChange(new MergePlace(MergePart.Load, "drive-3", "name"), null, "Left of the pair"), Assert.Single(merged.Theirs.Items));
    }

    [Fact]
    public void One_field_changed_by_both_is_asked_and_the_choice_counts()
    {
        var (ours, theirs) = (Put(Base, "drive-3", Labelled("9V DC 15mA")), Put(Base, "drive-3", Labelled("9V DC 20mA")));
        var conflict = new MergeConflict(new MergePlace(MergePart.Load, "drive-3", "label"), "9V DC 12mA", "9V DC 15mA", "9V DC 20mA");
        Assert.Equal(conflict, Assert.Single(RigMerge.Merge(Base, ours, theirs).Conflicts.Items));
        Assert.Equal(ours, RigMerge.Merge(Base, ours, theirs).Rig);
        Assert.Equal(theirs, RigMerge.Merge(Base, ours, theirs, Chosen(conflict.Place)).Rig);
    }

    [Fact]
    public void One_load_plugged_into_two_outlets_is_asked_and_never_fed_twice()
    {
        var ours = Base with { Wired = [.. Base.Wired!.Value, new Feed { From = [new OutletRef("brick", "3")], To = ["preamp-2"] }] };
        var theirs = Base with { Wired = [Base.Wired!.Value[0], Base.Wired!.Value[1] with { To = ["delay-2", "preamp-2"] }] };
        var merged = RigMerge.Merge(Base, ours, theirs);
        Assert.Equal(new MergeConflict(new MergePlace(MergePart.Load, "preamp-2", "wired"), null, "brick/3", "brick/2"), Assert.Single(merged.Conflicts.Items));
        Assert.Equal(ours, merged.Rig);
        Assert.Equal(theirs, RigMerge.Merge(Base, ours, theirs, Chosen(merged.Conflicts[0].Place)).Rig);
    }

    [Fact]
    public void A_load_that_one_removes_and_the_other_changes_is_asked()
    {
        var ours = Base with { Loads = [.. Base.Loads.Items.Where(static load => load.Id != "delay-2")], Wired = [Base.Wired!.Value[0]], Signal = ["drive-3", "amp"] };
        var theirs = Put(Base, "delay-2", static load => load with { Run = new Amps(0.2m) });
        var conflict = Assert.Single(RigMerge.Merge(Base, ours, theirs).Conflicts.Items);
        Assert.Equal(new MergePlace(MergePart.Load, "delay-2", ""), conflict.Place);
        Assert.Null(conflict.Ours);
        Assert.Equal(ours, RigMerge.Merge(Base, ours, theirs).Rig);
        var kept = RigMerge.Merge(Base, ours, theirs, Chosen(conflict.Place)).Rig;
        Assert.Equal((theirs.Loads, theirs.Wired), (kept.Loads, kept.Wired));

        // Rewiring it is a change as well.
        var rewired = Base with { Wired = [Base.Wired!.Value[0], new Feed { From = [new OutletRef("brick", "3")], To = ["delay-2"] }] };
        Assert.Equal(conflict.Place, Assert.Single(RigMerge.Merge(Base, ours, rewired).Conflicts.Items).Place);
        Assert.Equal(rewired.Wired, RigMerge.Merge(Base, ours, rewired, Chosen(conflict.Place)).Rig.Wired);
    }

    [Fact]
    public void A_lead_or_an_outlet_that_one_removes_and_the_other_uses_is_asked()
    {
        var ours = Base with { Leads = [], Supplies = [Base.Supplies[0] with { Outlets = new ValueList<Outlet>(Base.Supplies[0].Outlets.Items[..2]) }] };
        var theirs = Base with { Wired = [.. Base.Wired!.Value, new Feed { From = [new OutletRef("brick", "3")], Lead = "flip", To = ["preamp-2"] }] };
        var merged = RigMerge.Merge(Base, ours, theirs);
        Assert.Equal(new MergePlace(MergePart.Outlet, "brick/3", ""), Assert.Single(merged.Conflicts.Items).Place);
        Assert.Equal(ours, merged.Rig);
        var choices = Chosen(new MergePlace(MergePart.Outlet, "brick/3", ""));
        Assert.Null(RigMerge.Merge(Base, ours, theirs, choices).Rig.Wired!.Value[2].Lead);
        choices.Add(new MergePlace(MergePart.Lead, "flip", ""), MergeSide.Theirs);
        Assert.Equal(theirs, RigMerge.Merge(Base, ours, theirs, choices).Rig);
    }

    [Fact]
    public void A_feed_that_one_takes_apart_and_the_other_sets_is_asked()
    {
        var ours = Base with { Wired = [Base.Wired!.Value[0]] };
        var theirs = Base with { Wired = [Base.Wired!.Value[0], Base.Wired!.Value[1] with { Lead = "flip" }] };
        var conflict = Assert.Single(RigMerge.Merge(Base, ours, theirs).Conflicts.Items);
        Assert.Equal(new MergePlace(MergePart.Feed, "brick/2", ""), conflict.Place);
        Assert.Equal(theirs, RigMerge.Merge(Base, ours, theirs, Chosen(conflict.Place)).Rig);
    }

    private static Dictionary<MergePlace, MergeSide> Chosen(MergePlace place) => new() { [place] = MergeSide.Theirs };

    private static Func<Load, Load> Labelled(string label) => load => load with { Label = NameplateReader.Read(label) };

    private static Rig Put(Rig rig, string id, Func<Load, Load> change) => rig with { Loads = [.. rig.Loads.Items.Select(load => load.Id == id ? change(load) : load)] };

    private static void AssertWhole(Rig rig)
    {
        var outlets = rig.Supplies.SelectMany(static supply => supply.Outlets.Select(outlet => new OutletRef(supply.Id, outlet.Id))).ToHashSet();
        foreach (var feed in rig.Wired ?? [])
        {
            Assert.NotEmpty(feed.To);
            Assert.All(feed.From, outlet => Assert.Contains(outlet, outlets));
            Assert.All(feed.To, load => Assert.Contains(rig.Loads.Items, one => one.Id == load));
            Assert.True(feed.Lead is null || rig.Leads.Items.Any(lead => lead.Id == feed.Lead));
        }

        Assert.Distinct(rig.Loads.Select(static load => load.Id));
        Assert.All(rig.Supplies, static supply => Assert.Distinct(supply.Outlets.Select(static outlet => outlet.Id)));
    }

    /// <summary>Every field that a side changed is in the merged rig, or there is a conflict about it. Found by looking at all properties, not by how merging goes about it.</summary>
    private static void AssertKept(Rig before, Rig side, MergeResult merged)
    {
        AssertField(MergePart.Rig, "", "rig", before.Name, side.Name, merged.Rig.Name);
        AssertField(MergePart.Rig, "", "mains", before.Mains, side.Mains, merged.Rig.Mains);
        AssertField(MergePart.Rig, "", "headroom", before.Headroom, side.Headroom, merged.Rig.Headroom);
        AssertThings(MergePart.Load, before.Loads, side.Loads, merged.Rig.Loads, static load => load.Id);
        AssertThings(MergePart.Lead, before.Leads, side.Leads, merged.Rig.Leads, static lead => lead.Id);
        AssertThings(MergePart.Supply, before.Supplies, side.Supplies, merged.Rig.Supplies, static supply => supply.Id, "Outlets", "Banks");
        AssertThings(MergePart.Outlet, Outlets(before), Outlets(side), Outlets(merged.Rig), static outlet => outlet.Id);

        void AssertThings<T>(MergePart part, ValueList<T> was, ValueList<T> now, ValueList<T> then, Func<T, string> id, params string[] apart)
            where T : class
        {
            foreach (var name in was.Items.Concat(now.Items).Select(id).Distinct())
            {
                var (b, s, m) = (was.FirstOrDefault(one => id(one) == name), now.FirstOrDefault(one => id(one) == name), then.FirstOrDefault(one => id(one) == name));
                if (b == s || Has(part, name, ""))
                    continue;
                if (b is null || s is null)
                {
                    // Of an outlet, its supply may be what is asked about.
                    if (part != MergePart.Outlet || !Has(MergePart.Supply, name.Split('/')[0], ""))
                        Assert.True(s is null ? m is null : m is not null, $"{part} {name}");
                    continue;
                }

                foreach (var property in typeof(T).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.CanWrite && !apart.Contains(property.Name)))
                    AssertField(part, name, property.Name, property.GetValue(b), property.GetValue(s), m is null ? null : property.GetValue(m));
            }
        }

        void AssertField(MergePart part, string subject, string field, object? was, object? now, object? then)
        {
            if (!Equals(was, now) && !Equals(now, then))
                Assert.True(Has(part, subject, field) || (part == MergePart.Outlet && Has(MergePart.Supply, subject.Split('/')[0], "")), $"{part} {subject} {field}: {was} became {now}, and then {then}");
        }

        bool Has(MergePart part, string subject, string field) =>
            merged.Conflicts.Items.Any(conflict => conflict.Place.Part == part && conflict.Place.Subject == subject
                && conflict.Place.Field.Replace("_", "", StringComparison.Ordinal).Equals(field, StringComparison.OrdinalIgnoreCase));
    }

    private static ValueList<Outlet> Outlets(Rig rig) => [.. rig.Supplies.SelectMany(static supply => supply.Outlets.Select(outlet => outlet with { Id = $"{supply.Id}/{outlet.Id}" }))];
}
