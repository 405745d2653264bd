using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

/// <summary>Makes rigs that use every field, with texts that YAML could trip over.</summary>
internal static class RigGen
{
    private static readonly Gen<string?> NoText = Gen.Bool.Select(_ => (string?)null);

    private static readonly Gen<string> Awkward = OneOf(
        "9V DC 300mA", "yes", "null", "~", "12", "1.5", "0x1F", "1e5", "- a", "a: b", "a #b", "#a", "'", "\"", "a\\b", "{a}", "[a", "&a", "*a", "!a", "@", "%", "`", "|", ">", "?", ":",
        "a:", "...", "---", "<<", "=", "9V⎓ 5.5×2.1", "🎸 amp", "true", "2026-01-02", "12:30:00", "é ü ñ", "a, b", "a\tb", "a\nb", "a\u0007b", "a\u00A0b", "a\u2028b", "a\uFEFFb", "9 V 500 mA; 12 V 400 mA", "0b1", "+1", ".5", "Ω µ ²", "C:\\x");

    private static readonly Gen<string> Words = Gen.String[Gen.Char["abcXYZ019 -_.,:;#'\"/%&é⎓"], 1, 12].Select(text => text.Trim()).Where(text => text.Length > 0);

    private static readonly Gen<string> Text = Gen.Frequency((1, Awkward), (2, Words));

    private static readonly Gen<string> Id = Text.Select(text => text.Replace('\t', ' ').Replace('\n', ' ').Replace('\u0007', ' ').Replace('\u2028', ' ').Trim()).Where(id => id.Length > 0);

    private static readonly Gen<string> PlainId = Id.Select(id => id.Replace('/', '_')).Where(id => !Loadmark.Files.Parsing.OutletRange.Looks(id));

    private static readonly Gen<Nameplate> Label = Gen.OneOf(Text, Gen.Const(""), Gen.Const(" spaced ")).Select(NameplateReader.Read);

    private static readonly Gen<Nameplate> VoltageText = OneOf("9 V", "9-18 V", "9 V AC", "12V~", "9 or 12 V").Select(NameplateReader.Read);

    private static readonly Gen<Nameplate> MainsText = OneOf("230 V", "100-240 V 50/60 Hz", "115/230 V~, 60 W").Select(NameplateReader.Read);

    private static readonly Gen<TimedCurrent> Timed = Gen.Select(Any<Ampere>(), Positive<Second>().Null(), (current, duration) => new TimedCurrent(current, duration));

    private static readonly Gen<SupplyTotal> Total = Gen.Select(Positive<Ampere>().Null(), Positive<Watt>().Null(), (amps, watts) => amps is null && watts is null ? new SupplyTotal(new Amps(1), null) : new SupplyTotal(amps, watts));

    private static readonly Gen<Plug> Plugs = OneOf("5.5x2.1", "5.5x2.5", "4x1.7", "3.5 mm jack", "snap: 9", "x").Select(name => new Plug(name));

    private static readonly Gen<Wire> Wires = Gen.OneOf(Gen.Int[10, 40].Select(Wire.OfGauge), Gen.Int[1, 9_999].Select(n => Wire.OfArea(new SquareMetres(n * 1e-9m))));

    /// <summary>Whole rigs that refer only to what they have.</summary>
    public static Gen<Rig> Rigs { get; } =
        from name in Text.Select(text => text.Trim())
        from mains in Gen.Select(Positive<Volt>(), Positive<Hertz>().Null(), (volts, hertz) => new RigMains(volts, hertz)).Null()
        from headroom in Gen.Int[0, 9_999].Select(n => n / 10_000m).Nullable()
        from loads in Id.HashSet[0, 6].SelectMany(ids => Each(ids, Load))
        from supplies in PlainId.HashSet[0, 3].SelectMany(ids => Each(ids, Supply))
        from leads in Id.HashSet[0, 3].SelectMany(ids => Each(ids, Lead))
        from wired in Feeds(loads, supplies, leads)
        from signal in Text.Select(text => text.Trim()).Array[0, 4]
        select new Rig
        {
            Name = name,
            Mains = mains,
            Headroom = headroom,
            Loads = [.. loads],
            Supplies = [.. supplies],
            Leads = [.. leads],
            Wired = wired,
            Signal = [.. signal],
        };

    /// <summary>Wiring of what is given; null for a rig that is to be planned.</summary>
    public static Gen<ValueList<Feed>?> Feeds(Load[] loads, Supply[] supplies, Lead[] leads)
    {
        var outlets = supplies.SelectMany(supply => supply.Outlets.Select(outlet => new OutletRef(supply.Id, outlet.Id))).ToArray();
        if (loads.Length == 0 || outlets.Length == 0)
            return Gen.Bool.Select(planned => planned ? (ValueList<Feed>?)null : (ValueList<Feed>)[]);

        // A setting must be one that the labels give; an outlet whose labels give no voltage takes any.
        bool HasVoltage(OutletRef reference)
        {
            var supply = supplies.First(supply => supply.Id == reference.Supply);
            return OutletRating.Of(supply, supply.Outlets.First(outlet => outlet.Id == reference.Outlet)).Modes.Any(mode => mode.Volts is not null);
        }

        var feed =
            from some in Gen.Shuffle(outlets, 1, Math.Min(3, outlets.Length))
            from joint in OneOf(Joint.Series, Joint.Parallel)
            from at in Gen.OneOf(Gen.Const(0), Gen.Const(1), Gen.Const(some.Length)).SelectMany(count => Positive<Volt>().Array[some.Any(HasVoltage) ? 0 : count])
            from lead in leads.Length == 0 ? NoText : Gen.OneOf(NoText, OneOf(leads.Select(lead => lead.Id).ToArray()).Select(id => (string?)id))
            from to in Gen.Shuffle(loads.Select(load => load.Id).ToArray(), 1, Math.Min(3, loads.Length))
            from pinned in Gen.Bool
            select new Feed { From = [.. some], Joined = some.Length == 1 ? Joint.None : joint, At = [.. at], Lead = lead, To = [.. to], Pinned = pinned };
        return Gen.OneOf(Gen.Bool.Select(_ => (ValueList<Feed>?)null), feed.Array[0, 4].Select(feeds => (ValueList<Feed>?)(ValueList<Feed>)[.. feeds]));
    }

    /// <summary>What is printed on a supply that says what it gives.</summary>
    private static readonly Gen<Nameplate> OutputLabel =
        OneOf(
            "9V 2A", "OUTPUT 9V ⎓ 45W", "9V 500mA; 12V 400mA, centre negative", "18V: 1A #1", "OUTPUTS 1-4 9V 100mA, 5 12V 400mA", "9V 100mA x6",
            "INPUT 12V⎓1A OUTPUTS A-C 9V⎓100mA TOTAL 250mA", "INPUT 230V~ 50Hz 12VA OUTPUT 9V~ 10VA", "3 OUTPUTS 9V AC 9VA isolated").Select(NameplateReader.Read);

    private static Gen<Load> Load(string id) => Gen.Frequency(
        (1, Label.Select(label => new Load { Id = id, Label = label })),
        (3, FullLoad(id)));

    private static Gen<Supply> Supply(string id) => Gen.Frequency(
        (1, OutputLabel.Select(label => Labelled(new Supply { Id = id, Label = label }))),
        (1, from full in FullSupply(id) from label in OutputLabel select Labelled(full with { Label = label, Banks = [] })),
        (3, FullSupply(id)));

    private static Supply Labelled(Supply supply) => supply with { Outlets = LabelledOutlets.Of(supply.Label, out _)!.Value };

    private static Gen<Load> FullLoad(string id) =>
        from name in Text.Select(text => text.Trim()).Null()
        from kind in Gen.OneOf(Text, OneOf([.. LoadKind.Known])).Select(text => new LoadKind(text)).Null()
        from label in Label.Null()
        from voltage in VoltageText.Null()
        from figures in Gen.Select(Any<Ampere>().Null(), Any<Watt>().Null(), Any<Ampere>().Null(), Timed.Nullable())
        from words in Gen.Select(Gen.Enum<Polarity>().Nullable(), Gen.Enum<GroundSide>().Nullable(), Gen.Enum<DrawLaw>().Nullable(), Plugs.Nullable())
        from isolate in Gen.Bool
        from thresholds in Gen.Select(Positive<Volt>().Null(), Positive<Volt>().Null(), Any<Farad>().Null())
        from priority in Gen.Int[1, 3].Nullable()
        from board in Words.Null()
        select new Load
        {
            Id = id,
            Name = name,
            Kind = kind,
            Label = label,
            Voltage = voltage,
            Current = figures.Item1,
            Watts = figures.Item2,
            Run = figures.Item3,
            Start = figures.Item4,
            Polarity = words.Item1,
            Ground = words.Item2,
            Draws = words.Item3,
            Plug = words.Item4,
            Isolate = isolate,
            StartsBelow = thresholds.Item1,
            StopsBelow = thresholds.Item2,
            InputCapacitance = thresholds.Item3,
            Priority = priority,
            Board = board,
        };

    private static Gen<Outlet> Outlet(string id) =>
        from label in Label
        from isolated in Gen.Bool.Nullable()
        from bank in Gen.OneOf(NoText, OneOf("left", "right: 1").Select(name => (string?)name))
        from words in Gen.Select(Gen.Enum<Polarity>().Nullable(), Plugs.Nullable())
        from figures in Gen.Select(Any<Ohm>().Null(), Timed.Nullable(), Positive<Volt>().Null())
        select new Outlet
        {
            Id = id,
            Label = label,
            Isolated = isolated,
            Bank = bank,
            Polarity = words.Item1,
            Plug = words.Item2,
            SourceOhms = figures.Item1,
            Surge = figures.Item2,
            NoLoad = figures.Item3,
        };

    private static Gen<Supply> FullSupply(string id) =>
        from name in Text.Select(text => text.Trim()).Null()
        from label in Label.Null()
        from flags in Gen.Select(Gen.Bool.Nullable(), Gen.Bool.Nullable())
        from total in Total.Null()
        from outlets in PlainId.HashSet[1, 4].SelectMany(ids => Each(ids, Outlet))
        from bankTotal in Total
        from overload in Gen.Enum<OverloadWay>().Nullable()
        from mains in MainsText.Null()
        from board in Words.Null()
        from toBuy in Gen.Bool
        select new Supply
        {
            Id = id,
            Name = name,
            Label = label,
            Isolated = flags.Item1,
            Regulated = flags.Item2,
            Total = total,
            Outlets = [.. outlets],
            Banks = [.. outlets.Select(outlet => outlet.Bank).OfType<string>().Distinct().Select(bank => new Bank(bank, bankTotal))],
            Overload = overload,
            Mains = mains,
            Board = board,
            ToBuy = toBuy,
        };

    private static Gen<Lead> Lead(string id) =>
        from type in Gen.Enum<LeadType>()
        from lengths in Gen.Select(Any<Metre>().Null(), Any<Metre>().Null(), Any<Metre>().Null())
        from counts in Gen.Select(Gen.Int[1, 1000].Nullable(), Gen.Int[1, 1000].Nullable())
        from wire in Wires.Nullable()
        from ohms in Gen.Select(Any<Ohm>().Null(), Any<Ohm>().Null())
        from plug in Plugs.Nullable()
        from toBuy in Gen.Bool
        select new Lead
        {
            Id = id,
            Type = type,
            Length = lengths.Item1,
            Tail = lengths.Item2,
            Pitch = lengths.Item3,
            Plugs = counts.Item1,
            Count = counts.Item2,
            Wire = wire,
            Ohms = ohms.Item1,
            ContactOhms = ohms.Item2,
            Plug = plug,
            ToBuy = toBuy,
        };

    /// <summary>From nothing to a thousand units, with up to twelve decimals where the unit is for small values.</summary>
    private static Gen<Quantity<TUnit>> Any<TUnit>()
        where TUnit : struct, IUnit =>
        Gen.Select(Gen.Int[0, 10_000], OneOf(1m, 0.1m, 0.001m, 0.000_001m, typeof(TUnit) == typeof(Farad) ? 1e-12m : 1m)).Select(pair => new Quantity<TUnit>(Math.Min(pair.Item1 * pair.Item2, TUnit.Largest)));

    private static Gen<Quantity<TUnit>> Positive<TUnit>()
        where TUnit : struct, IUnit => Any<TUnit>().Select(quantity => quantity.Value == 0 ? new Quantity<TUnit>(1) : quantity);

    private static Gen<Quantity<TUnit>?> Null<TUnit>(this Gen<Quantity<TUnit>> gen)
        where TUnit : struct, IUnit => gen.Nullable();

    private static Gen<T[]> Each<T>(HashSet<string> ids, Func<string, Gen<T>> gen) =>
        ids.Count == 0 ? Gen.Const<T[]>([]) : ids.Select(gen).Aggregate(Gen.Const<T[]>([]), (all, one) => Gen.Select(all, one, (T[] items, T item) => (T[])[.. items, item]));

    private static Gen<T> OneOf<T>(params T[] items) => Gen.Int[0, items.Length - 1].Select(index => items[index]);
}
