using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Values;

/// <summary>Writes quantities so that they read back as the same value.</summary>
internal static class QuantityWriter
{
    private static readonly (string Prefix, decimal Factor)[] Prefixes = [("m", 1e3m), ("µ", 1e6m), ("n", 1e9m), ("p", 1e12m)];

    /// <summary>
    /// The short form ("300 mA") where it loses nothing, else all digits, with a prefix where there are too many zeros
    /// for the reader.
    /// </summary>
    /// <param name="unit">The unit.</param>
    /// <param name="quantity">The quantity of that unit.</param>
    /// <exception cref="ArgumentException">No text reads back as this value.</exception>
    public static string Of(Unit unit, object quantity)
    {
        var text = quantity.ToString()!;
        if (ReadsBack(unit, text, quantity))
            return text;
        text = unit.ExactText(quantity);
        if (ReadsBack(unit, text, quantity))
            return text;
        foreach (var (prefix, factor) in Prefixes)
        {
            text = $"{(unit.ValueOf(quantity) * factor).ToString("0.#############", CultureInfo.InvariantCulture)} {prefix}{unit.Symbol}";
            if (ReadsBack(unit, text, quantity))
                return text;
        }

        throw new ArgumentException($"The rig file cannot hold the figure {unit.ExactText(quantity)}.", nameof(quantity));
    }

    /// <summary>A current with its duration, where that is known.</summary>
    /// <exception cref="ArgumentException">No text reads back as this value.</exception>
    public static string Of(TimedCurrent timed) =>
        timed.Duration is { } duration
            ? $"{Of(Unit.Ampere, timed.Current)} for {Of(Unit.Second, duration)}"
            : Of(Unit.Ampere, timed.Current);

    /// <summary>The mains with its frequency, where that is known.</summary>
    /// <exception cref="ArgumentException">No text reads back as this value.</exception>
    public static string Of(RigMains mains) =>
        mains.Hertz is { } hertz ? $"{Of(Unit.Volt, mains.Volts)} {Of(Unit.Hertz, hertz)}" : Of(Unit.Volt, mains.Volts);

    /// <summary>What several outlets together can give.</summary>
    /// <exception cref="ArgumentException">The total says nothing, or no text reads back as it.</exception>
    public static string Of(SupplyTotal total) => (total.Amps, total.Watts) switch
    {
        ({ } amps, { } watts) => $"{Of(Unit.Ampere, amps)} {Of(Unit.Watt, watts)}",
        ({ } amps, null) => Of(Unit.Ampere, amps),
        (null, { } watts) => Of(Unit.Watt, watts),
        _ => throw new ArgumentException("A total has amps or watts.", nameof(total)),
    };

    private static bool ReadsBack(Unit unit, string text, object quantity) => quantity.Equals(unit.Read(text, out _));
}
