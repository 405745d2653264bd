namespace Loadmark.Core.Quantities;

/// <summary>
/// The spellings of units that people print and type, without prefix and with. Prefixes that would make no sense
/// (kilofarad) or that collide (M for milli or mega) are left out on purpose.
/// </summary>
internal static class UnitWords
{
    private static readonly Dictionary<string, decimal> Volt = Words(
        ("V", 1), ("v", 1), ("volt", 1), ("volts", 1), ("mV", 1e-3m), ("mv", 1e-3m), ("millivolt", 1e-3m), ("millivolts", 1e-3m));

    private static readonly Dictionary<string, decimal> Ampere = Words(
        ("A", 1), ("a", 1), ("amp", 1), ("amps", 1), ("ampere", 1), ("amperes", 1),
        ("mA", 1e-3m), ("ma", 1e-3m), ("MA", 1e-3m), ("Ma", 1e-3m), ("milliamp", 1e-3m), ("milliamps", 1e-3m),
        ("milliampere", 1e-3m), ("milliamperes", 1e-3m), ("µA", 1e-6m), ("μA", 1e-6m), ("uA", 1e-6m), ("ua", 1e-6m),
        ("microamp", 1e-6m), ("microamps", 1e-6m));

    private static readonly Dictionary<string, decimal> Watt = Words(
        ("W", 1), ("w", 1), ("watt", 1), ("watts", 1), ("VA", 1), ("va", 1), ("mW", 1e-3m), ("mw", 1e-3m),
        ("milliwatt", 1e-3m), ("milliwatts", 1e-3m), ("kW", 1e3m));

    private static readonly Dictionary<string, decimal> Ohm = Words(
        ("Ω", 1), ("\u2126", 1), ("ohm", 1), ("ohms", 1), ("mΩ", 1e-3m), ("m\u2126", 1e-3m), ("milliohm", 1e-3m), ("milliohms", 1e-3m),
        ("kΩ", 1e3m), ("k\u2126", 1e3m), ("kohm", 1e3m), ("R", 1));

    private static readonly Dictionary<string, decimal> Second = Words(
        ("s", 1), ("sec", 1), ("secs", 1), ("second", 1), ("seconds", 1), ("ms", 1e-3m), ("millisecond", 1e-3m),
        ("milliseconds", 1e-3m), ("µs", 1e-6m), ("μs", 1e-6m), ("us", 1e-6m), ("min", 60), ("minute", 60), ("minutes", 60));

    private static readonly Dictionary<string, decimal> Metre = Words(
        ("m", 1), ("metre", 1), ("metres", 1), ("meter", 1), ("meters", 1), ("cm", 1e-2m), ("mm", 1e-3m));

    private static readonly Dictionary<string, decimal> SquareMetre = Words(
        ("mm²", 1e-6m), ("mm2", 1e-6m), ("mm^2", 1e-6m), ("sqmm", 1e-6m), ("sq mm", 1e-6m));

    private static readonly Dictionary<string, decimal> Farad = Words(
        ("F", 1), ("mF", 1e-3m), ("µF", 1e-6m), ("μF", 1e-6m), ("uF", 1e-6m), ("uf", 1e-6m), ("nF", 1e-9m), ("pF", 1e-12m));

    private static readonly Dictionary<string, decimal> Hertz = Words(
        ("Hz", 1), ("hz", 1), ("HZ", 1), ("hertz", 1));

    /// <summary>The factor from the spelled unit to <typeparamref name="TUnit"/>; false when it is not one of its spellings.</summary>
    public static bool TryFactor<TUnit>(ReadOnlySpan<char> word, out decimal factor)
        where TUnit : struct, IUnit
    {
        var words = WordsOf<TUnit>();
        var lookup = words.GetAlternateLookup<ReadOnlySpan<char>>();
        if (lookup.TryGetValue(word, out factor))
            return true;

        // Words (not symbols, whose case carries meaning) may be capitalised any way.
        Span<char> lower = stackalloc char[16];
        if (word.Length is < 3 or > 16 || word.ToLowerInvariant(lower) != word.Length)
            return false;
        return lookup.TryGetValue(lower[..word.Length], out factor);
    }

    private static Dictionary<string, decimal> WordsOf<TUnit>() => default(TUnit) switch
    {
        Quantities.Volt => Volt,
        Quantities.Ampere => Ampere,
        Quantities.Watt => Watt,
        Quantities.Ohm => Ohm,
        Quantities.Second => Second,
        Quantities.Metre => Metre,
        Quantities.SquareMetre => SquareMetre,
        Quantities.Farad => Farad,
        Quantities.Hertz => Hertz,
        _ => throw new NotSupportedException($"No spellings are known for the unit {typeof(TUnit).Name}."),
    };

    private static Dictionary<string, decimal> Words(params ReadOnlySpan<(string Word, decimal Factor)> words)
    {
        var table = new Dictionary<string, decimal>(words.Length, StringComparer.Ordinal);
        foreach (var (word, factor) in words)
            table.Add(word, factor);
        return table;
    }
}
