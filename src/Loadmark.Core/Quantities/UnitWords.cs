namespace Loadmark.Core.Quantities;

/// <summary>
/// The spellings of units that people print and type, without prefix and with. Prefixes that would make no sense
/// (kilofarad) or that collide (M for milli or mega) are left out on purpose.
/// </summary>
internal static class UnitWords
{
    private const int LongestWord = 16;

    private static readonly Dictionary<string, UnitWord> Volt = Words(
        Of("V", 1), Of("v", 1), Of("volt", 1), Of("volts", 1), Of("mV", 1e-3m), Of("mv", 1e-3m), Of("millivolt", 1e-3m), Of("millivolts", 1e-3m));

    private static readonly Dictionary<string, UnitWord> Ampere = Words(
        Of("A", 1), Of("a", 1), Of("amp", 1), Of("amps", 1), Of("ampere", 1), Of("amperes", 1),
        Of("mA", 1e-3m), Of("ma", 1e-3m), Of("MA", 1e-3m), Of("Ma", 1e-3m), Of("milliamp", 1e-3m), Of("milliamps", 1e-3m),
        Of("milliampere", 1e-3m), Of("milliamperes", 1e-3m), Of("µA", 1e-6m), Of("μA", 1e-6m), Of("uA", 1e-6m), Of("ua", 1e-6m),
        Of("microamp", 1e-6m), Of("microamps", 1e-6m));

    private static readonly Dictionary<string, UnitWord> Watt = Words(
        Of("W", 1), Of("w", 1), Of("watt", 1), Of("watts", 1), Of("VA", 1), Of("va", 1), Of("mW", 1e-3m), Of("mw", 1e-3m),
        Of("milliwatt", 1e-3m), Of("milliwatts", 1e-3m), Of("kW", 1e3m));

    private static readonly Dictionary<string, UnitWord> Ohm = Words(
        Of("Ω", 1), Of("\u2126", 1), Of("ohm", 1), Of("ohms", 1), Of("mΩ", 1e-3m), Of("m\u2126", 1e-3m), Of("milliohm", 1e-3m), Of("milliohms", 1e-3m),
        Of("kΩ", 1e3m), Of("k\u2126", 1e3m), Of("kohm", 1e3m), Of("R", 1));

    private static readonly Dictionary<string, UnitWord> Second = Words(
        Of("s", 1), Of("sec", 1), Of("secs", 1), Of("second", 1), Of("seconds", 1), Of("ms", 1e-3m), Of("millisecond", 1e-3m),
        Of("milliseconds", 1e-3m), Of("µs", 1e-6m), Of("μs", 1e-6m), Of("us", 1e-6m), Of("min", 60), Of("minute", 60), Of("minutes", 60));

    private static readonly Dictionary<string, UnitWord> Metre = Words(
        Of("m", 1), Of("metre", 1), Of("metres", 1), Of("meter", 1), Of("meters", 1), Of("cm", 1e-2m), Of("mm", 1e-3m));

    private static readonly Dictionary<string, UnitWord> SquareMetre = Words(
        Of("mm²", 1e-6m), Of("mm2", 1e-6m), Of("mm^2", 1e-6m), Of("sqmm", 1e-6m), Of("sq mm", 1e-6m));

    private static readonly Dictionary<string, UnitWord> Farad = Words(
        Of("F", 1), Of("mF", 1e-3m), Of("µF", 1e-6m), Of("μF", 1e-6m), Of("uF", 1e-6m), Of("uf", 1e-6m), Of("nF", 1e-9m), Of("pF", 1e-12m));

    private static readonly Dictionary<string, UnitWord> Hertz = Words(
        Of("Hz", 1), Of("hz", 1), Of("HZ", 1), Of("hertz", 1));

    /// <summary>The factor from the spelled unit to <typeparamref name="TUnit"/>; false when it is not one of its spellings.</summary>
    public static bool TryFactor<TUnit>(ReadOnlySpan<char> word, out decimal factor)
        where TUnit : struct, IUnit
    {
        factor = 0;
        if (word.Length > LongestWord)
            return false;

        // Words (not symbols, whose case carries meaning) may be capitalised any way.
        var words = WordsOf<TUnit>();
        var text = word.ToString();
        if (!words.TryGetValue(text, out var unit) && (text.Length < 3 || !words.TryGetValue(text.ToLowerInvariant(), out unit)))
            return false;
        factor = unit.Factor;
        return true;
    }

    private static Dictionary<string, UnitWord> WordsOf<TUnit>() => default(TUnit) switch
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

    private static Dictionary<string, UnitWord> Words(params UnitWord[] words)
    {
        var table = new Dictionary<string, UnitWord>(words.Length, StringComparer.Ordinal);
        foreach (var word in words)
            table.Add(word.Text, word);
        return table;
    }

    private static UnitWord Of(string text, decimal factor) => new(text, factor);

    /// <summary>A spelling and its factor. A class, because tables of value types cannot be compiled ahead of start-up.</summary>
    private sealed record UnitWord(string Text, decimal Factor);
}
