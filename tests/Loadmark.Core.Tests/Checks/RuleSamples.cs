using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Checks;

/// <summary>For each rule the smallest rig that breaks it, with the subjects its finding must name. The pages show the same.</summary>
internal static class RuleSamples
{
    public static IReadOnlyDictionary<string, (Rig Rig, string[] Subjects)> All { get; } = new Dictionary<string, (Rig, string[])>(StringComparer.Ordinal)
    {
        ["over-voltage"] = (One(Plate.Dc(18, 500), Plate.Dc(9, 300)).Build(), ["drive-3", "brick/1"]),
        ["reversed-polarity"] = (New().Load("drive-3", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100), outlet => outlet with { Polarity = Polarity.CentrePositive })
            .Feed("brick/1", "drive-3").Build(), ["drive-3", "brick/1"]),
        ["ac-into-dc"] = (One(Plate.Ac(9, 500), Plate.Dc(9, 300)).Build(), ["drive-3", "brick/1"]),
        ["dc-into-ac"] = (One(Plate.Dc(9, 500), Plate.Ac(9, 300)).Build(), ["drive-3", "brick/1"]),
        ["ac-shared"] = (New().Load("mixer-1", Plate.Ac(9, 300)).Load("mixer-2", Plate.Ac(9, 300))
            .Supply("lump").Outlet("1", Plate.Ac(9, 1000)).Chain("lump/1", "mixer-1", "mixer-2").Build(rig => rig with { Signal = [] }), ["mixer-1", "mixer-2", "lump/1"]),
        ["ground-short"] = (New().Load("fuzz-1", Plate.Dc(9, 3), load => load with { Ground = GroundSide.Positive }).Load("drive-3", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "fuzz-1", "drive-3").Build(), ["fuzz-1", "drive-3", "brick/1"]),
        ["series-short"] = (New().Load("preamp-2", Plate.Dc(18, 50))
            .Supply("brick", NotIsolated).Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
            .Series("brick/1 brick/2", "preamp-2").Build(), ["brick/1", "brick/2", "preamp-2"]),
        ["parallel-unequal"] = (New().Load("preamp-2", Plate.Range(9, 12, 50))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(12, 100))
            .Parallel("brick/1 brick/2", "preamp-2").Build(), ["brick/1", "brick/2", "preamp-2"]),
        ["mains-mismatch"] = (New().Supply("wall", supply => supply with { Mains = Plate.Mains(120, 120) }).Build(), ["wall"]),
        ["under-voltage"] = (One(Plate.Dc(9, 500), Plate.Dc(12, 300), load => Starts(300)(load with { Kind = new LoadKind("digital") })).Build(), ["drive-3", "brick/1"]),
        ["outlet-overload"] = (New().Load("chorus-1", Plate.Dc(9, 60)).Load("delay-2", Plate.Dc(9, 60))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "chorus-1", "delay-2").Build(), ["brick/1", "chorus-1", "delay-2"]),
        ["start-overload"] = (New().Digital("delay-2", Plate.Dc(9, 210), Starts(520, 1.5m))
            .Supply("brick").Outlet("1", Plate.Dc(9, 500)).Feed("brick/1", "delay-2").Build(), ["brick/1", "delay-2"]),
        ["bank-overload"] = (New().Load("delay-1", Plate.Dc(9, 300)).Load("delay-2", Plate.Dc(9, 300))
            .Supply("brick", supply => supply with { Banks = [new Bank("left", new SupplyTotal(new Amps(0.5m), null))] })
            .Outlet("1", Plate.Dc(9, 400), InBank("left")).Outlet("2", Plate.Dc(9, 400), InBank("left"))
            .Feed("brick/1", "delay-1").Feed("brick/2", "delay-2").Build(), ["brick", "delay-1", "delay-2"]),
        ["supply-overload"] = (New().Load("preamp-1", Plate.Dc(12, 1000)).Load("delay-2", Plate.Dc(9, 1000))
            .Supply("brick", supply => supply with { Total = new SupplyTotal(null, new Watts(18)) })
            .Outlet("1", Plate.Dc(12, 1500)).Outlet("2", Plate.Dc(9, 1500))
            .Feed("brick/1", "preamp-1").Feed("brick/2", "delay-2").Build(), ["brick", "preamp-1", "delay-2"]),
        ["plug-mismatch"] = (One(Plate.Dc(9, 500), Plate.Dc(9, 300), load => load with { Plug = Plug.WidePin }).Build(), ["drive-3", "brick/1"]),
        ["unfed"] = (New().Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 45))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "chorus-1").Build(), ["drive-3"]),
        ["fed-twice"] = (Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("drive-3", Plate.Dc(9, 12))
            .Feed("brick/1", "drive-3").Feed("brick/2", "drive-3").Build(), ["drive-3", "brick/1", "brick/2"]),
        ["outlet-used-twice"] = (New().Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 45))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "drive-3").Feed("brick/1", "chorus-1").Build(), ["brick/1", "drive-3", "chorus-1"]),
        ["lead-short-of-plugs"] = (New().Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 45))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "drive-3", "chorus-1").Build(), ["brick/1", "drive-3", "chorus-1"]),
        ["shared-return-digital"] = (New().Digital("delay-2", Plate.Dc(9, 30), Starts(30)).Load("drive-3", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "delay-2", "drive-3").Build(), ["delay-2", "drive-3", "brick/1"]),
        ["return-not-its-own"] = (Two(Plate.Dc(9, 100), Plate.Dc(9, 100), NotIsolated)
            .Load("drive-3", Plate.Dc(9, 12), load => load with { Isolate = true }).Load("chorus-1", Plate.Dc(9, 45))
            .Feed("brick/1", "drive-3").Feed("brick/2", "chorus-1").Build(), ["drive-3", "chorus-1", "brick"]),
        ["thin-headroom"] = (One(Plate.Dc(9, 100), Plate.Dc(9, 95)).Build(), ["brick/1", "drive-3"]),
        ["voltage-high"] = (One(Plate.Dc(9.6m, 100), Plate.Dc(9, 12)).Build(), ["drive-3", "brick/1"]),
        ["voltage-low"] = (One(Plate.Dc(8.4m, 100), Plate.Dc(9, 12)).Build(), ["drive-3", "brick/1"]),
        ["plug-loose"] = (New().Load("drive-3", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100), outlet => outlet with { Plug = Plug.WidePin })
            .Feed("brick/1", "drive-3").Build(), ["drive-3", "brick/1"]),
        ["names-alike"] = (New().Load("delay-1", Plate.Dc(9, 12)).Load("delay-l", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100)).Feed("brick/1", "delay-1").Feed("brick/2", "delay-l").Build(), ["delay-1", "delay-l"]),
        ["figure-assumed"] = (One(Plate.Dc(9, 100), Plate.Dc(9, 12), load => load with { Polarity = null }).Build(), ["drive-3"]),
        ["unregulated"] = (New().Load("drive-3", Plate.Dc(9, 12))
            .Supply("brick", supply => supply with { Regulated = false }).Outlet("1", Plate.Dc(9, 100)).Feed("brick/1", "drive-3").Build(), ["brick/1", "drive-3"]),
        ["idle-capacity"] = (Two(Plate.Dc(9, 500), Plate.Dc(9, 100)).Load("drive-3", Plate.Dc(9, 80)).Feed("brick/1", "drive-3").Build(), ["brick/1", "brick/2", "drive-3"]),
        ["figure-conflict"] = (One(Plate.Dc(9, 500), Plate.Dc(9, 300), load => load with { Current = new Amps(0.25m) }).Build(), ["drive-3"]),
        ["figure-derived"] = (One(Plate.Dc(9, 500), Plate.Dc(9, watts: 2.7m)).Build(), ["drive-3"]),
    };

    public static RigBuilder New() => new();

    /// <summary>One load drive-3 on one outlet brick/1.</summary>
    public static RigBuilder One(Nameplate outlet, Nameplate? load, Func<Load, Load>? change = null) =>
        New().Load("drive-3", load, change).Supply("brick").Outlet("1", outlet).Feed("brick/1", "drive-3");

    /// <summary>Two outlets brick/1 and brick/2; loads and feeds are to follow.</summary>
    public static RigBuilder Two(Nameplate one, Nameplate two, Func<Supply, Supply>? change = null) =>
        New().Supply("brick", change).Outlet("1", one).Outlet("2", two);

    public static Supply NotIsolated(Supply supply) => supply with { Isolated = false };

    public static Func<Outlet, Outlet> InBank(string bank) => outlet => outlet with { Bank = bank };

    public static Func<Load, Load> Starts(decimal milliamps, decimal? seconds = null) =>
        load => load with { Start = new TimedCurrent(new Amps(milliamps / 1000), seconds is { } lasts ? new Seconds(lasts) : null) };
}
