using CsCheck;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

/// <summary>Makes rigs out of others by a few changes such as people make.</summary>
internal static class RigChange
{
    /// <summary>A rig, and the same after some changes.</summary>
    public static Gen<(Rig Before, Rig After)> Pairs { get; } =
        from before in RigGen.Rigs
        from after in After(before)
        select (before, after);

    /// <summary>A rig, and the same after changes of two people who know nothing of each other.</summary>
    public static Gen<(Rig Before, Rig Ours, Rig Theirs)> Triples { get; } =
        from before in RigGen.Rigs
        from ours in After(before)
        from theirs in After(before)
        select (before, ours, theirs);

    private static Gen<Rig> After(Rig before) =>
        from donor in RigGen.Rigs
        from steps in Gen.Select(Gen.Int[0, 13], Gen.Int[0, 1000], Gen.Int[0, 1000]).Array[1, 4]
        let changed = steps.Aggregate(before, (rig, step) => Step(rig, donor, step.Item1, step.Item2, step.Item3))
        from feeds in RigGen.Feeds([.. changed.Loads], [.. changed.Supplies], [.. changed.Leads])
        from more in Gen.Int[0, 3]
        select more == 0 ? changed with { Wired = [.. changed.Wired ?? [], .. feeds ?? []] } : changed;

    private static Rig Step(Rig rig, Rig donor, int what, int at, int to) => Mend(what switch
    {
        0 => rig with { Loads = Remove(rig.Loads, at) },
        1 => rig with { Loads = Insert(rig.Loads, donor.Loads.Where(one => !rig.Loads.Any(load => load.Id == one.Id)), at) },
        2 => rig with { Loads = Move(rig.Loads, at, to) },
        3 => rig with { Loads = Change(rig.Loads, at, load => rig.Loads.Any(one => one.Id == $"new {to}") ? load : load with { Id = $"new {to}" }) },
        4 => rig with { Loads = Change(rig.Loads, at, load => Mix(load, donor.Loads, to)) },
        5 => rig with { Supplies = Remove(rig.Supplies, at) },
        6 => rig with { Supplies = Insert(rig.Supplies, donor.Supplies.Where(one => !rig.Supplies.Any(supply => supply.Id == one.Id)), at) },
        7 => rig with { Supplies = Change(rig.Supplies, at, supply => Mix(supply, donor.Supplies, to)) },
        8 => rig with { Supplies = Move(rig.Supplies, at, to) },
        9 => rig with { Leads = Change(Move(rig.Leads, at, to), to, lead => donor.Leads.Count == 0 ? lead : donor.Leads[0] with { Id = lead.Id, Wire = lead.Wire }) },
        10 => rig with { Leads = Insert(Remove(rig.Leads, at), donor.Leads.Where(one => !rig.Leads.Any(lead => lead.Id == one.Id)), to) },
        11 => rig with { Signal = Insert(Move(rig.Signal, at, to), donor.Signal, at) },
        12 => (at % 3) switch { 0 => rig with { Mains = donor.Mains }, 1 => rig with { Headroom = donor.Headroom }, _ => rig with { Name = donor.Name, Signal = donor.Signal } },
        _ => rig with { Wired = (at % 4) switch { 0 => null, 1 => [], 2 => Remove(rig.Wired ?? [], to), _ => Move(rig.Wired ?? [], to, at / 4) } },
    });

    private static Load Mix(Load load, ValueList<Load> donors, int mask)
    {
        if (donors.Count == 0)
            return load with { Name = "spare" };
        var donor = donors[mask % donors.Count];
        if ((mask & 1) != 0)
            load = load with { Name = donor.Name, Start = donor.Start, Isolate = donor.Isolate };
        if ((mask & 2) != 0)
            load = load with { Label = donor.Label, Priority = donor.Priority };
        if ((mask & 16) != 0)
            return new Load { Id = load.Id, Label = load.Label ?? donor.Label };
        if ((mask & 4) != 0)
            load = load with { Run = donor.Run, Polarity = donor.Polarity, Kind = donor.Kind };
        return (mask & 8) == 0 ? load : load with { Current = donor.Current, Plug = donor.Plug, Draws = donor.Draws, Watts = donor.Watts };
    }

    private static Supply Mix(Supply supply, ValueList<Supply> donors, int mask)
    {
        if (donors.Count == 0)
            return supply with { Name = "spare" };
        var donor = donors[mask % donors.Count];
        if ((mask & 1) != 0)
            supply = supply with { Label = donor.Label, Isolated = donor.Isolated, Overload = donor.Overload };
        if ((mask & 2) != 0)
            supply = supply with { Outlets = Change(supply.Outlets, mask, outlet => donor.Outlets[0] with { Id = outlet.Id, Bank = outlet.Bank }) };
        if ((mask & 4) != 0)
            supply = supply with { Outlets = Insert(supply.Outlets, donor.Outlets.Where(one => !supply.Outlets.Any(outlet => outlet.Id == one.Id)).Select(one => one with { Bank = null }), mask) };
        if ((mask & 8) != 0 && supply.Outlets.Count > 1)
            supply = supply with { Outlets = Remove(supply.Outlets, mask) };
        if ((mask & 16) != 0)
            supply = supply with { Outlets = Change(Move(supply.Outlets, mask, mask / 3), mask, outlet => outlet with { Bank = null }), Total = donor.Total };
        if ((mask & 64) != 0 && LabelledOutlets.Of(supply.Label, out _) is { } said)
            supply = supply with { Outlets = said };
        return (mask & 32) == 0 ? supply : supply with { Mains = donor.Mains, Outlets = Change(supply.Outlets, mask, outlet => supply.Outlets.Any(one => one.Id == $"out {mask}") ? outlet : outlet with { Id = $"out {mask}" }) };
    }

    /// <summary>Takes out what now refers to nothing.</summary>
    private static Rig Mend(Rig rig)
    {
        var outlets = rig.Supplies.SelectMany(supply => supply.Outlets.Select(outlet => new OutletRef(supply.Id, outlet.Id))).ToHashSet();
        var fits = rig.Wired?.Where(feed => feed.From.All(outlets.Contains)
            && feed.To.All(id => rig.Loads.Any(load => load.Id == id)) && (feed.Lead is null || rig.Leads.Any(lead => lead.Id == feed.Lead)));
        return rig with
        {
            Supplies = [.. rig.Supplies.Select(supply => supply with { Banks = [.. supply.Banks.Where(bank => supply.Outlets.Any(outlet => outlet.Bank == bank.Name))] })],
            Wired = fits is null ? null : (ValueList<Feed>)[.. fits.Select(feed => feed with { At = [] })],
        };
    }

    private static ValueList<T> Remove<T>(ValueList<T> list, int at) => list.Count == 0 ? list : new(list.Items.RemoveAt(at % list.Count));

    private static ValueList<T> Insert<T>(ValueList<T> list, IEnumerable<T> from, int at) => [.. list.Take(at % (list.Count + 1)), .. from.Take(2), .. list.Skip(at % (list.Count + 1))];

    private static ValueList<T> Move<T>(ValueList<T> list, int at, int to) =>
        list.Count == 0 ? list : new(list.Items.RemoveAt(at % list.Count).Insert(to % list.Count, list[at % list.Count]));

    private static ValueList<T> Change<T>(ValueList<T> list, int at, Func<T, T> change) => list.Count == 0 ? list : new(list.Items.SetItem(at % list.Count, change(list[at % list.Count])));
}
