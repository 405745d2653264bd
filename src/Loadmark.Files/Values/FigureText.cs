using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Values;

/// <summary>Writes quantities so that they read back as the same value.</summary>
internal static class FigureText
{
    private static readonly (string Prefix, decimal Factor)[] Prefixes = [("m", 1e3m), ("µ", 1e6m), ("n", 1e9m), ("p", 1e12m)];

    /// <summary>
    /// The short form ("300 mA") where it loses nothing, else all digits, with a prefix where there are too many zeros
    /// for the reader.
    /// </summary>
    /// <exception cref="ArgumentException">No text reads back as this value.</exception>
    public static string Of<TUnit>(Quantity<TUnit> quantity)
        where TUnit : struct, IUnit
    {
        var text = quantity.ToString();
        if (ReadsBack(text, quantity))
            return text;
        text = quantity.ToExactString();
        if (ReadsBack(text, quantity))
            return text;
        foreach (var (prefix, factor) in Prefixes)
        {
            text = $"{(quantity.Value * factor).ToString("0.#############", CultureInfo.InvariantCulture)} {prefix}{TUnit.Symbol}";
            if (ReadsBack(text, quantity))
                return text;
        }

        throw new ArgumentException($"The rig file cannot hold the figure {quantity.ToExactString()}.", nameof(quantity));
    }

    /// <summary>A current with its duration, where that is known.</summary>
    /// <exception cref="ArgumentException">No text reads back as this value.</exception>
    public static string Of(TimedCurrent timed) =>
        timed.Duration is { } duration ? $"{Of(timed.Current)} for {Of(duration)}" : Of(timed.Current);

    /// <summary>The mains with its frequency, where that is known.</summary>
    /// <exception cref="ArgumentException">No text reads back as this value.</exception>
    public static string Of(RigMains mains) => mains.Hertz is { } hertz ? $"{Of(mains.Volts)} {Of(hertz)}" : Of(mains.Volts);

    /// <summary>What several outlets together can give.</summary>
    /// <exception cref="ArgumentException">The total says nothing, or no text reads back as it.</exception>
    public static string Of(SupplyTotal total) => (total.Amps, total.Watts) switch
    {
        ({ } amps, { } watts) => $"{Of(amps)} {Of(watts)}",
        ({ } amps, null) => Of(amps),
        (null, { } watts) => Of(watts),
        _ => throw new ArgumentException("A total has amps or watts.", nameof(total)),
    };

    private static bool ReadsBack<TUnit>(string text, Quantity<TUnit> quantity)
        where TUnit : struct, IUnit =>
        QuantityReader.TryRead<TUnit>(text, out var read, out _) && read == quantity;
}
