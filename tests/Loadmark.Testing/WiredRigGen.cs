using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Testing;

/// <summary>
/// Makes rigs of every sort, sensible and not: loads with and without figures, supplies with modes, banks and totals,
/// wiring that joins, repeats and forgets.
/// </summary>
public static class WiredRigGen
{
    private static readonly string[] Kinds = ["analog drive", "analog delay", "digital", "large digital", "valve", "tuner"];
    private static readonly Plug[] Plugs = [Plug.Common, Plug.Common, Plug.WidePin, new("3.5 mm jack")];

    /// <summary>Labels as they are read: of several outlets, with an input or a total, in VA.</summary>
    private static readonly Nameplate[] Printed =
    [
        .. new[]
        {
            "OUTPUTS 1-4 9V 100mA, 5 12V 400mA", "9V 100mA x6", "EACH OUTPUT 9V DC 150mA TOTAL 500mA", "INPUT 12V⎓1A OUTPUT 9V⎓500mA", "9V AC 10VA", "9V DC 10VA",
            "INPUT 230V~ 50Hz 12VA OUTPUT 9V⎓500mA", "9-18V AC 18VA", "plus/minus 15V 100mA", "9V ..6A",
        }.Select(NameplateReader.Read),
    ];

    private static readonly Gen<decimal> Volts = OneOf(9m, 9m, 9m, 9m, 9m, 12m, 18m, 9.6m, 8.3m, 0m);

    private static readonly Gen<decimal?> Milliamps = Maybe(Gen.Int[0, 60].Select(tens => tens * 10m), presentOf10: 8);

    private static readonly Gen<Polarity?> Polarities = Maybe(OneOf(Polarity.CentreNegative, Polarity.CentreNegative, Polarity.CentrePositive));

    private static readonly Gen<Nameplate> Labels = Gen.Frequency(
        (8, Gen.Select(Volts, Milliamps, (volts, amps) => Plate.Dc(volts, amps))),
        (2, Gen.Select(Volts, Gen.Int[1, 12], (volts, watts) => Plate.Dc(volts, watts: watts))),
        (1, Gen.Select(Milliamps, Gen.Int[1, 12], (amps, watts) => Plate.Dc(9, amps, watts))),
        (2, Gen.Select(Volts, Gen.Int[0, 9], Milliamps, (volts, more, amps) => Plate.Range(volts, volts + more, amps))),
        (1, Gen.Select(Volts, Gen.Int[1, 12], (volts, watts) => Plate.Range(volts, volts + 9, watts: watts))),
        (1, Gen.Int[0, 500].Select(amps => Plate.AmpsOnly(amps))),
        (1, Gen.Select(Volts, Milliamps, (volts, amps) => Plate.Ac(volts, amps))),
        (1, Gen.Const(Plate.Empty)),
        (2, OneOf(Printed)),
        (1, Gen.Const(new Nameplate("9V 30 mAh") { Modes = [Plate.Mode(9, 9, null)], Unread = [new Unread("30 mAh", default)], Conflicts = ["a conflict"] })),
        (3, Gen.Select(Gen.Int[0, 50], Gen.Int[0, 50], (one, other) => Plate.Modes((9, one * 10), (12, other * 10), (18, one * 5)))));

    private static readonly Gen<TimedCurrent?> Timed = Maybe(
        Gen.Select(Gen.Int[1, 100], Maybe(Gen.Int[1, 30]), (tens, tenths) => new TimedCurrent(new Amps(tens / 100m), tenths is { } lasts ? new Seconds(lasts / 10m) : null)),
        presentOf10: 3);

    /// <summary>A load of the given tag.</summary>
    public static Gen<Load> Load(string id) =>
        from label in Gen.Frequency((9, Labels.Select(label => (Nameplate?)label)), (1, Gen.Const((Nameplate?)null)))
        from kind in Gen.Int[0, Kinds.Length].Select(place => place < Kinds.Length ? new LoadKind(Kinds[place]) : null)
        from typed in Gen.Select(Polarities, Maybe(OneOf(Plugs)), Maybe(OneOf(GroundSide.Negative, GroundSide.Negative, GroundSide.Positive)))
        from draws in Gen.Select(Maybe(Gen.Int[0, 60], 3), Timed, Maybe(Gen.Int[0, 60], 1), Maybe(Gen.Int[0, 9], 1))
        from isolate in Gen.Int[0, 4]
        select new Load
        {
            Id = id,
            Label = label,
            Kind = kind,
            Polarity = typed.Item1,
            Plug = typed.Item2,
            Ground = typed.Item3,
            Run = draws.Item1 is { } run ? new Amps(run / 100m) : null,
            Start = draws.Item2,
            Current = draws.Item3 is { } current ? new Amps(current / 100m) : null,
            Watts = draws.Item4 is { } watts ? new Watts(watts) : null,
            Isolate = isolate == 0,
        };

    /// <summary>A rig of up to 12 loads, 1 to 3 supplies and up to 8 feeds.</summary>
    /// <param name="statesSettings">Whether every feed says how its outlets are set.</param>
    public static Gen<Rig> Rig(bool statesSettings = false) =>
        from loadCount in Gen.Int[0, 12]
        from loads in Each(loadCount, number => Load($"L-{number}"))
        from supplyCount in Gen.Int[1, 3]
        from supplies in Each(supplyCount, number => Supply($"S{number}"))
        from leads in Each(4, number => Lead($"lead {number}"))
        from picks in Pick.Array[0, 8]
        from wired in Gen.Int[0, 15]
        from headroom in Maybe(Gen.Int[0, 50])
        from mains in Maybe(Gen.Select(OneOf(100m, 120m, 230m), Maybe(OneOf(50m, 60m))), 8)
        from signal in Gen.Int[0, 12]
        select new Rig
        {
            Name = "any",
            Loads = [.. loads],
            Supplies = [.. supplies],
            Leads = [.. leads],
            Headroom = headroom / 100m,
            Mains = mains is { } at ? new RigMains(new Volts(at.Item1), at.Item2 is { } hertz ? new Frequency(hertz) : null) : null,
            Signal = [.. loads.Take(signal).Select(load => load.Id)],
            Wired = wired == 0 ? null : (ValueList<Feed>?)[.. loads.Length == 0 ? [] : picks.Select(pick => pick.Feed(loads, supplies, leads, statesSettings))],
        };

    private static Gen<Feedings> Pick =>
        from outlets in Gen.Frequency((6, Gen.Int[0, 99].Array[1]), (3, Gen.Int[0, 99].Array[2, 3]))
        from loads in Gen.Frequency((5, Gen.Int[0, 99].Array[1]), (4, Gen.Int[0, 99].Array[2, 5]))
        from joined in OneOf(Joint.Series, Joint.Parallel)
        from lead in Gen.Int[0, 6]
        from setting in Gen.Int[0, 9]
        select new Feedings(outlets, loads, joined, lead, setting);

    private static Gen<Supply> Supply(string id) =>
        from outletCount in Gen.Int[1, 6]
        from outlets in Each(outletCount, number => Outlet($"{number}"))
        from isolated in Maybe(Gen.Bool)
        from total in Maybe(Total, 3)
        from bank in Maybe(Total, 3)
        from regulated in Maybe(Gen.Bool)
        from mains in Gen.Int[0, 4]
        from label in Gen.Frequency((6, Gen.Const((Nameplate?)null)), (2, Labels.Select(label => (Nameplate?)label)))
        select new Supply
        {
            Id = id,
            Label = label,
            Isolated = isolated,
            Total = total is { } all ? new SupplyTotal(all.Item1, all.Item2) : null,
            Banks = bank is { } of ? [new Bank("left", new SupplyTotal(of.Item1, of.Item2))] : [],
            Regulated = regulated,
            Mains = mains switch { 0 => null, 1 => Plate.Mains(230, 230, 50, 50), 2 => Plate.Mains(120, 120, 60, 60), _ => Plate.Mains(100, 240) },
            Outlets = [.. outlets],
        };

    private static Gen<(Amps?, Watts?)> Total => Gen.Select(Gen.Int[0, 2], Gen.Int[1, 30], (sort, amount) =>
        (sort != 1 ? new Amps(amount / 10m) : (Amps?)null, sort != 0 ? new Watts(amount) : (Watts?)null));

    private static Gen<Outlet> Outlet(string id) =>
        from label in Labels
        from isolated in Maybe(Gen.Bool, 2)
        from bank in Gen.Int[0, 5]
        from typed in Gen.Select(Polarities, Maybe(OneOf(Plugs)))
        from source in Gen.Select(Maybe(Gen.Int[0, 5], 2), Timed, Maybe(Gen.Int[8, 14], 1))
        select new Outlet
        {
            Id = id,
            Label = label,
            Isolated = isolated,
            Bank = bank switch { 0 => "left", 1 => "right", _ => null },
            Polarity = typed.Item1,
            Plug = typed.Item2,
            SourceOhms = source.Item1 is { } ohms ? new Ohms(ohms) : null,
            Surge = source.Item2,
            NoLoad = source.Item3 is { } open ? new Volts(open) : null,
        };

    private static Gen<Lead> Lead(string id) =>
        Gen.Select(OneOf(Enum.GetValues<LeadType>()), Maybe(Gen.Int[1, 5]), Maybe(Gen.Int[1, 3]), (type, plugs, count) => new Lead { Id = id, Type = type, Plugs = plugs, Count = count });

    private static Gen<T[]> Each<T>(int count, Func<int, Gen<T>> make)
    {
        var all = Gen.Const(Array.Empty<T>());
        for (var number = 1; number <= count; number++)
            all = Gen.Select(all, make(number), (before, one) => (T[])[.. before, one]);
        return all;
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(place => values[place]);

    private static Gen<T?> Maybe<T>(Gen<T> gen, int presentOf10 = 6)
        where T : struct =>
        Gen.Frequency((presentOf10, gen.Select(value => (T?)value)), (10 - presentOf10, Gen.Const((T?)null)));

    /// <summary>Numbers that become a feed once it is known what there is to wire.</summary>
    private sealed record Feedings(int[] Outlets, int[] Loads, Joint Joined, int Lead, int Setting)
    {
        public Feed Feed(Load[] loads, Supply[] supplies, Lead[] leads, bool statesSettings)
        {
            var all = supplies.SelectMany(supply => supply.Outlets.Items.Select(outlet => OutletRating.Of(supply, outlet))).ToArray();
            var from = Outlets.Select(place => all[place % all.Length]).ToArray();
            return new Feed
            {
                From = [.. from.Select(outlet => outlet.Reference)],
                Joined = from.Length > 1 ? Joined : Joint.None,
                Lead = Lead < leads.Length ? leads[Lead].Id : null,
                To = [.. Loads.Select(place => loads[place % loads.Length].Id)],
                At = statesSettings || Setting % 2 == 0 ? [.. from.Select(SettingOf)] : [],
            };
        }

        private Volts SettingOf(OutletRating outlet)
        {
            var mode = outlet.Modes[Setting % outlet.Modes.Length];
            return mode.Volts is not { } volts ? new Volts(9) : Setting > 4 ? volts.High : volts.Low;
        }
    }
}
