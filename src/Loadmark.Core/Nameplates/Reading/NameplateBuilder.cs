using System.Collections.Immutable;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Makes the nameplate from what was scanned and grouped: derives what is missing and notes what disagrees.</summary>
internal static class NameplateBuilder
{
    /// <summary>Printed watts may differ from volts times amps by this share before it is a contradiction: 10 %.</summary>
    private const decimal Tolerance = 0.10m;

    public static Nameplate Build(string text, LabelScan scan, Grouper grouper, TokenList tokens, int length)
    {
        var modes = ImmutableArray.CreateBuilder<Mode>();
        var derived = new List<string>(2);
        var conflicts = new List<string>();
        MainsInput? mains = null;
        foreach (var group in grouper.Groups)
        {
            if (group.IsMains)
                mains ??= Mains(group);
            else
                AddModes(group, modes, derived, conflicts);
        }

        return new Nameplate(text)
        {
            Form = Form(grouper),
            Modes = modes.ToImmutable(),
            AmbiguousVolts = grouper.OddVolts,
            AmbiguousAmps = grouper.OddAmps,
            AmbiguousWatts = grouper.OddWatts,
            Polarity = scan.Polarity,
            Plug = scan.Plug,
            Mains = mains,
            Derived = [.. derived],
            Conflicts = [.. conflicts],
            Unread = Leftovers.Of(text, tokens, length),
        };
    }

    private static Field<SupplyForm> Form(Grouper grouper) => (grouper.Direct, grouper.Alternating) switch
    {
        ({ } direct, null) => Field<SupplyForm>.Read(SupplyForm.Direct, direct),
        (null, { } alternating) => Field<SupplyForm>.Read(SupplyForm.Alternating, alternating),
        ({ } direct, { } alternating) => Field<SupplyForm>.Ambiguous([SupplyForm.Direct, SupplyForm.Alternating], direct.Union(alternating)),
        _ => Field<SupplyForm>.Absent,
    };

    private static MainsInput Mains(ModeGroup group)
    {
        var place = group.Volts?.Place;
        foreach (var item in new[] { group.Amps, group.Watts, group.Hertz })
        {
            if (item is not null)
                place = place is { } so ? so.Union(item.Place) : item.Place;
        }

        return new MainsInput(
            group.Volts is { } volts ? Range<Volt>(volts) : null,
            group.Hertz is { } hertz ? Range<Hertz>(hertz) : null,
            group.Amps is { } amps ? new Amps(amps.Values.Max()) : null,
            group.Watts is { } watts ? new Watts(watts.Values.Max()) : null,
            place ?? default);
    }

    private static void AddModes(ModeGroup group, ImmutableArray<Mode>.Builder modes, List<string> derived, List<string> conflicts)
    {
        for (var index = 0; index < group.Count; index++)
        {
            var volts = group.Volts switch
            {
                null => (QuantityRange<Volt>?)null,
                { IsRange: true } range => Range<Volt>(range),
                { } list => QuantityRange<Volt>.Single(new Volts(list.Values[index])),
            };
            var (amps, from) = Amps(group, index);
            var watts = group.Watts is { } power ? new Watts(power.Values[Math.Min(index, power.Values.Length - 1)]) : (Watts?)null;
            modes.Add(Join(group, volts, amps, from, watts, derived, conflicts));
        }
    }

    private static (Amps? Highest, Amps? From) Amps(ModeGroup group, int index)
    {
        if (group.Amps is not { } first)
            return (null, null);

        var (low, high) = first.IsRange ? (first.Values[0], first.Values[^1]) : (first.Values[Math.Min(index, first.Values.Length - 1)], 0m);
        high = Math.Max(low, high);
        if (group.OtherAmps is { } other)
            (low, high) = (Math.Min(low, other.Values.Min()), Math.Max(high, other.Values.Max()));
        return (new Amps(high), low < high ? new Amps(low) : null);
    }

    private static Mode Join(
        ModeGroup group, QuantityRange<Volt>? volts, Amps? amps, Amps? from, Watts? watts, List<string> derived, List<string> conflicts)
    {
        var current = amps is { } printed ? new Figure<Amps>(printed, Origin.Stated) : (Figure<Amps>?)null;
        var power = watts is { } stated ? new Figure<Watts>(stated, Origin.Stated) : (Figure<Watts>?)null;
        if (volts is { } range)
        {
            if (current is null && watts is { } from1)
            {
                // The lowest voltage of a range gives the highest current: the safe side for a supply.
                current = new Figure<Amps>(from1 / range.Low, Origin.Derived);
                Note(derived, "amps");
            }
            else if (amps is { } known && watts is null && range.IsSingle)
            {
                power = new Figure<Watts>(range.Low * known, Origin.Derived);
                Note(derived, "watts");
            }
            else if (amps is { } both && watts is { } and && Disagrees(range, both, and) is { } conflict)
            {
                conflicts.Add(conflict);
            }
        }
        else if (amps is { Value: > 0 } some && watts is { } over)
        {
            volts = QuantityRange<Volt>.Single(over / some);
            Note(derived, "volts");
        }

        return new Mode(volts, current, power)
        {
            AmpsFrom = from,
            Hertz = group.Hertz is { } hertz ? Range<Hertz>(hertz) : null,
            VoltsPlace = group.Volts?.Place,
            AmpsPlace = group.Amps?.Place,
            WattsPlace = group.Watts?.Place,
        };
    }

    /// <summary>Whether the printed power is none that the printed voltage and current can make.</summary>
    private static string? Disagrees(QuantityRange<Volt> volts, Amps amps, Watts watts)
    {
        var least = volts.Low * amps;
        var most = volts.High * amps;
        if (watts.Value >= least.Value * (1 - Tolerance) && watts.Value <= most.Value * (1 + Tolerance))
            return null;
        return volts.IsSingle
            ? $"{watts} is printed, but {volts.Low} × {amps} = {least}"
            : $"{watts} is printed, but {volts} × {amps} = {least} to {most}";
    }

    private static void Note(List<string> derived, string key)
    {
        if (!derived.Contains(key))
            derived.Add(key);
    }

    private static QuantityRange<TUnit> Range<TUnit>(Item item)
        where TUnit : struct, IUnit =>
        new(new Quantity<TUnit>(item.Values.Min()), new Quantity<TUnit>(item.Values.Max()));
}
