namespace Loadmark.Core.Nameplates.Reading;

/// <summary>The words of labels, in small letters.</summary>
internal static class LabelWords
{
    /// <summary>
    /// What a word is; <see cref="Sign.Word"/> when it means nothing here. A switch, not a table: it needs no start-up.
    /// </summary>
    public static char SignOf(ReadOnlySpan<char> word) => word switch
    {
        "dc" or "vdc" or "直流" => Sign.Direct,
        "ac" or "vac" or "交流" => Sign.Alternating,
        "to" or "thru" or "through" or "bis" => Sign.To,
        "and" or "und" or "et" => Sign.And,
        "or" or "oder" or "ou" => Sign.Or,
        "x" or "by" => Sign.Times,
        "centre" or "center" or "ctr" or "cent" or "cntr" or "centr" or "inner" or "inside" or "tip" or "core" or "centra" or "mitte" or "innen" => Sign.Centre,
        "pin" => Sign.Pin,
        "sleeve" or "outer" or "outside" or "ring" or "shell" or "shield" or "aussen" or "außen" => Sign.Sleeve,
        "barrel" => Sign.Barrel,
        "positive" or "pos" or "plus" or "positiv" => Sign.Positive,
        "negative" or "neg" or "minus" or "negativ" => Sign.Negative,
        "plug" or "connector" or "conn" or "coaxial" or "coax" or "socket" or "mini" or "mono" or "miniature" or "receptacle" or "hollow" => Sign.Connector,
        "jack" or "minijack" or "phone" => Sign.Jack,
        "input" or "inputs" or "vin" or "eingang" or "primary" or "prim" or "pri" or "entree" or "entrée" or "entrada" or "输入" or "入力" => Sign.Input,
        "output" or "outputs" or "vout" or "ausgang" or "secondary" or "sec" or "sortie" or "salida" or "o/p" or "输出" or "出力" or "outlet" or "outlets" => Sign.Output,
        "mains" or "netz" => Sign.Mains,
        "max" or "maximum" or "min" or "minimum" or "typ" or "typical" or "typically" or "nom" or "nominal" => Sign.Qualifier,
        "rated" or "rating" or "ratings" or "approx" or "approximately" or "about" or "ca" or "circa" or "up"
            or "power" or "voltage" or "current" or "volt" or "volts" or "amp" or "amps" or "watt" or "watts"
            or "consumption" or "draw" or "draws" or "frequency" or "freq" or "polarity" or "requirement" or "requirements" or "requires"
            or "each" or "size" or "load" or "rms" or "contact" or "conductor" => Sign.Quiet,
        "id" or "od" => Sign.Diameter,
        "not" or "never" or "except" or "dont" or "cannot" or "avoid" or "nicht" => Sign.Not,
        "total" or "inrush" or "surge" or "peak" => Sign.Aside,
        "regulated" or "stabilised" or "stabilized" or "geregelt" or "stabilisiert" => Sign.Regulated,
        "unregulated" or "unstabilised" or "unstabilized" or "nonregulated" or "ungeregelt" => Sign.Unregulated,
        "non" => Sign.Un,
        "linear" => Sign.Linear,
        "from" or "is" or "per" or "the" or "of" or "only" or "with" or "a" or "an" => Sign.Filler,
        "at" => Sign.At,
        "between" => Sign.Between,
        "adaptor" or "adapter" or "adaptors" or "adapters" or "charger" or "converter" or "psu" or "supply" or "supplies" => Sign.Adaptor,
        "model" or "mod" or "modell" or "serial" or "sn" or "pn" or "part" or "item" or "art" or "ref" or "cat" or "no" or "nr" or "sku" or "lot"
            or "batch" or "rev" or "ver" or "version" or "class" or "level" or "date" or "pat" or "patent" or "mfg" => Sign.Name,
        "fuse" or "fused" => Sign.Fuse,
        _ => Sign.Word,
    };

    /// <summary>The unit a word or abbreviation stands for, with its factor; false when it is none.</summary>
    /// <param name="lower">The word in small letters.</param>
    /// <param name="factor">To volts, amperes, watts or hertz; 1 for millimetres.</param>
    /// <param name="sign">The unit's sign.</param>
    public static bool TryUnit(ReadOnlySpan<char> lower, out char sign, out decimal factor)
    {
        (sign, factor) = lower switch
        {
            "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" or "㎜" => (Sign.Millimetre, 1m),
            "в" or "вольт" => (Sign.Volt, 1m),
            "а" or "㏂" => (Sign.Ampere, 1m),
            "ма" or "㎃" or "mamp" or "mamps" => (Sign.Ampere, 1e-3m),
            "вт" or "ва" => (Sign.Watt, 1m),
            "гц" or "㎐" => (Sign.Hertz, 1m),
            _ => (Sign.Word, 0m),
        };
        if (sign != Sign.Word)
            return true;

        sign = UnitWords.TryFactor<Volt>(lower, out factor) ? Sign.Volt
            : UnitWords.TryFactor<Ampere>(lower, out factor) ? Sign.Ampere
            : UnitWords.TryFactor<Watt>(lower, out factor) ? Sign.Watt
            : UnitWords.TryFactor<Hertz>(lower, out factor) ? Sign.Hertz
            : Sign.Word;
        return sign != Sign.Word;
    }
}
