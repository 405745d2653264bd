namespace Loadmark.Core.Quantities;

/// <summary>
/// The spellings of units that people print and type, without prefix and with. Prefixes that would make no sense
/// (kilofarad) or that collide (M for milli or mega) are left out on purpose. Switches, not tables: nothing to build
/// at start-up.
/// </summary>
internal static class UnitWords
{
    private const int LongestWord = 16;

    /// <summary>The factor from the spelled unit to <typeparamref name="TUnit"/>; false when it is not one of its spellings.</summary>
    public static bool TryFactor<TUnit>(ReadOnlySpan<char> word, out decimal factor)
        where TUnit : struct, IUnit
    {
        factor = FactorOf<TUnit>(word);
        if (factor != 0m)
            return true;

        // Words (not symbols, whose case carries meaning) may be capitalised any way.
        Span<char> lower = stackalloc char[LongestWord];
        if (word.Length is < 3 or > LongestWord || word.ToLowerInvariant(lower) != word.Length)
            return false;
        factor = FactorOf<TUnit>(lower[..word.Length]);
        return factor != 0m;
    }

    /// <summary>The factor, or 0 for a word that is not a spelling.</summary>
    private static decimal FactorOf<TUnit>(ReadOnlySpan<char> word) => default(TUnit) switch
    {
        Volt => VoltFactor(word),
        Ampere => AmpereFactor(word),
        Watt => WattFactor(word),
        VoltAmpere => word is "VA" or "va" or "Va" or "voltampere" or "voltamperes" ? 1m : 0m,
        Ohm => OhmFactor(word),
        Second => SecondFactor(word),
        Metre => MetreFactor(word),
        SquareMetre => word is "mm²" or "mm2" or "mm^2" or "sqmm" or "sq mm" ? 1e-6m : 0m,
        Farad => FaradFactor(word),
        Hertz => word is "Hz" or "hz" or "HZ" or "hertz" ? 1m : 0m,
        _ => throw new NotSupportedException($"No spellings are known for the unit {typeof(TUnit).Name}."),
    };

    private static decimal VoltFactor(ReadOnlySpan<char> word) => word switch
    {
        "V" or "v" or "volt" or "volts" => 1m,
        "mV" or "mv" or "millivolt" or "millivolts" => 1e-3m,
        _ => 0m,
    };

    private static decimal AmpereFactor(ReadOnlySpan<char> word) => word switch
    {
        "A" or "a" or "amp" or "amps" or "ampere" or "amperes" => 1m,
        "mA" or "ma" or "MA" or "Ma" or "milliamp" or "milliamps" or "milliampere" or "milliamperes" => 1e-3m,
        "µA" or "μA" or "µa" or "uA" or "ua" or "microamp" or "microamps" => 1e-6m,
        _ => 0m,
    };

    private static decimal WattFactor(ReadOnlySpan<char> word) => word switch
    {
        "W" or "w" or "watt" or "watts" => 1m,
        "mW" or "mw" or "milliwatt" or "milliwatts" => 1e-3m,
        "kW" or "kw" => 1e3m,
        _ => 0m,
    };

    private static decimal OhmFactor(ReadOnlySpan<char> word) => word switch
    {
        "Ω" or "\u2126" or "ohm" or "ohms" or "R" => 1m,
        "mΩ" or "m\u2126" or "milliohm" or "milliohms" => 1e-3m,
        "kΩ" or "k\u2126" or "kohm" => 1e3m,
        _ => 0m,
    };

    private static decimal SecondFactor(ReadOnlySpan<char> word) => word switch
    {
        "s" or "sec" or "secs" or "second" or "seconds" => 1m,
        "ms" or "millisecond" or "milliseconds" => 1e-3m,
        "µs" or "μs" or "us" => 1e-6m,
        "min" or "minute" or "minutes" => 60m,
        _ => 0m,
    };

    private static decimal MetreFactor(ReadOnlySpan<char> word) => word switch
    {
        "m" or "metre" or "metres" or "meter" or "meters" => 1m,
        "cm" => 1e-2m,
        "mm" => 1e-3m,
        _ => 0m,
    };

    private static decimal FaradFactor(ReadOnlySpan<char> word) => word switch
    {
        "F" => 1m,
        "mF" => 1e-3m,
        "µF" or "μF" or "uF" or "uf" => 1e-6m,
        "nF" => 1e-9m,
        "pF" => 1e-12m,
        _ => 0m,
    };
}
