namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>The words of labels, in small letters. Switches, not tables: they need no start-up.</summary>
internal static partial class LabelWords
{
    /// <summary>What a word is; <see cref="Sign.Word"/> when it means nothing here.</summary>
    public static char SignOf(ReadOnlySpan<char> word) => word switch
    {
        "dc" or "vdc" or "直流" or "直流電源" or "gleichstrom" or "gleichspannung" or "continu" or "continua" or "contínua" or "continuo"
            or "gelijkstroom" or "gelijkspanning" or "постоянный" => Sign.Direct,
        "ac" or "vac" or "交流" or "交流電源" or "wechselstrom" or "wechselspannung" or "alternatif" or "alterna" or "alternata" or "alternada"
            or "wisselstroom" or "wisselspanning" or "переменный" => Sign.Alternating,
        "to" or "thru" or "through" or "bis" => Sign.To,
        "and" or "und" or "et" => Sign.And,
        "or" or "oder" or "ou" => Sign.Or,
        "x" or "by" => Sign.Times,
        "centre" or "center" or "ctr" or "cent" or "cntr" or "centr" or "inner" or "inside" or "tip" or "core" or "centra" or "mitte"
            or "innen" or "centro" or "centrale" or "central" or "centrum" or "midden" or "kern" or "mittelkontakt" or "innenkontakt"
            or "mittelstift" or "interno" or "センター" or "センタ" or "中心" => Sign.Centre,
        "pin" => Sign.Pin,
        "sleeve" or "outer" or "outside" or "ring" or "shell" or "shield" or "aussen" or "außen" or "extérieur" or "exterior" or "esterno"
            or "buiten" or "スリーブ" => Sign.Sleeve,
        "barrel" => Sign.Barrel,
        "positive" or "pos" or "plus" or "positiv" or "pluspol" or "positif" or "positivo" or "positief" or "プラス" or "正極" => Sign.Positive,
        "negative" or "neg" or "minus" or "negativ" or "minuspol" or "négatif" or "negatif" or "négative" or "negativo" or "negatief"
            or "マイナス" or "負極" => Sign.Negative,
        "plug" or "connector" or "conn" or "coaxial" or "coax" or "socket" or "mini" or "mono" or "miniature" or "receptacle" or "hollow" =>
            Sign.Connector,
        "jack" or "minijack" or "phone" => Sign.Jack,
        "input" or "inputs" or "vin" or "eingang" or "primary" or "prim" or "pri" or "entree" or "entrée" or "entrada" or "ingresso"
            or "ingang" or "输入" or "輸入" or "入力" or "charge" or "charging" or "вход" => Sign.Input,
        "mains" or "netz" or "secteur" => Sign.Mains,
        "max" or "maximum" or "min" or "minimum" or "typ" or "typical" or "typically" or "nom" or "nominal" => Sign.Qualifier,
        "rated" or "rating" or "ratings" or "approx" or "approximately" or "about" or "ca" or "circa" or "up"
            or "power" or "voltage" or "current" or "volt" or "volts" or "amp" or "amps" or "watt" or "watts"
            or "consumption" or "draw" or "draws" or "frequency" or "freq" or "polarity" or "requirement" or "requirements" or "requires"
            or "size" or "load" or "rms" or "contact" or "conductor" or "courant" or "corriente" or "corrente" or "stroom" or "spanning"
            or "定格" or "電源" or "電圧" or "電流" or "消費電流" or "ток" => Sign.Quiet,
        "each" or "every" or "jeweils" or "je" or "cadauna" or "cada" or "chaque" or "chacun" or "chacune" or "ciascuna" or "ciascuno"
            or "各" => Sign.Each,
        "id" or "od" => Sign.Diameter,
        "not" or "never" or "except" or "dont" or "cannot" or "avoid" or "nicht" => Sign.Not,
        "inrush" or "surge" or "peak" => Sign.Aside,
        "total" or "totals" or "sum" or "summe" or "combined" or "altogether" or "gesamt" or "insgesamt" or "totale" or "合計" => Sign.Total,
        "regulated" or "stabilised" or "stabilized" or "geregelt" or "stabilisiert" or "stabilisé" or "régulé" or "regulado"
            or "estabilizado" or "stabilizzato" or "gestabiliseerd" or "smps" or "switchmode" or "switch-mode" or "switching"
            or "schaltnetzteil" => Sign.Regulated,
        "unregulated" or "unstabilised" or "unstabilized" or "nonregulated" or "ungeregelt" => Sign.Unregulated,
        "isolated" or "isoliert" or "isolé" or "isolée" or "isolées" or "isolés" or "aislado" or "aisladas" or "aislados" or "isolato"
            or "isolate" or "isolati" or "isolado" or "isoladas" or "geïsoleerd" or "絶縁" => Sign.Isolated,
        "common" or "shared" or "gemeinsame" or "gemeinsamer" or "commune" or "común" or "comune" => Sign.Common,
        "return" or "returns" => Sign.Return,
        "ground" or "gnd" or "earth" or "chassis" or "masse" or "massa" or "tierra" or "terra" or "aarde" or "erde" or "アース" or "接地" =>
            Sign.Ground,
        "non" or "un" => Sign.Un,
        "linear" => Sign.Linear,
        "from" or "is" or "per" or "the" or "of" or "only" or "with" or "a" or "an" or "al" or "au" or "im" or "het" or "der" or "die"
            or "das" => Sign.Filler,
        "at" => Sign.At,
        "between" => Sign.Between,
        "adaptor" or "adapter" or "adaptors" or "adapters" or "charger" or "converter" or "psu" or "supply" or "supplies" => Sign.Adaptor,
        "model" or "mod" or "modell" or "serial" or "series" or "sn" or "pn" or "part" or "item" or "art" or "ref" or "cat" or "no" or "nr"
            or "sku" or "lot" or "batch" or "rev" or "ver" or "version" or "class" or "level" or "date" or "pat" or "patent" or "mfg"
            or "page" or "tel" or "fax" or "ic" => Sign.Name,
        "fuse" or "fused" => Sign.Fuse,
        "led" or "leds" or "on" or "off" or "standby" or "idle" or "bypass" or "bypassed" or "engaged" or "operating" or "active" or "sleep"
            or "quiescent" => Sign.State,
        _ => IsOutput(word) ? Sign.Output : ForeignTo(word) != default ? Sign.Foreign : Sign.Word,
    };

    /// <summary>Whether a word says output or outlet.</summary>
    private static bool IsOutput(ReadOnlySpan<char> word) =>
        word is "output" or "vout" or "ausgang" or "secondary" or "sec" or "sortie" or "salida" or "uscita"
        or "saída" or "saida" or "uitgang" or "o/p" or "输出" or "輸出" or "出力" or "outlet" or "выход" || IsPlural(word);

    /// <summary>Whether a word says outputs or outlets, several of them.</summary>
    public static bool IsPlural(ReadOnlySpan<char> word) =>
        word is "outputs" or "outlets" or "outs" or "ausgänge" or "ausgaenge" or "sorties" or "salidas"
        or "uscite" or "saídas" or "saidas" or "uitgangen";

    /// <summary>What a word speaks of whose meaning was not understood.</summary>
    public static LabelTopics TopicOf(ReadOnlySpan<char> word) => word switch
    {
        "form" or "rectified" or "unrectified" or "pulsed" or "pulsating" or "unsmoothed" or "waveform" => LabelTopics.Form,
        "polarity" or "polarité" or "polarität" or "polung" or "polaridad" or "polarità" or "polaridade" or "polariteit" or "極性"
            or "reversed" or "reversible" or "inverted" or "centre" or "center" or "ctr" or "tip" or "sleeve" or "centro" or "mittelkontakt"
            or "センター" or "negtive" or "postive" or "possitive" => LabelTopics.Polarity,
        "grounded" or "grounding" or "earthed" => LabelTopics.Ground,
        "usb" or "xlr" or "din" or "molex" or "proprietary" or "kettle" or "locking" or "lemo" or "powercon" => LabelTopics.Plug,
        "regulation" => LabelTopics.Regulation,
        _ => LabelTopics.None,
    };

    /// <summary>A number from one to twelve in words; 0 for any other word.</summary>
    public static int NumberOf(ReadOnlySpan<char> word) => word switch
    {
        "one" => 1,
        "two" => 2,
        "three" => 3,
        "four" => 4,
        "five" => 5,
        "six" => 6,
        "seven" => 7,
        "eight" => 8,
        "nine" => 9,
        "ten" => 10,
        "eleven" => 11,
        "twelve" => 12,
        _ => 0,
    };

    /// <summary>Whether a unit that is spelled as one of power is the volt-ampere.</summary>
    /// <param name="lower">The unit in small letters.</param>
    public static bool IsVoltAmpere(ReadOnlySpan<char> lower) => lower[0] == 'v' || lower is "ва";

    /// <summary>The unit a word or abbreviation stands for, with its factor; false when it is none.</summary>
    /// <param name="lower">The word in small letters.</param>
    /// <param name="factor">To volts, amperes, watts or hertz; 1 for millimetres.</param>
    /// <param name="sign">The unit's sign.</param>
    public static bool TryUnit(ReadOnlySpan<char> lower, out char sign, out decimal factor)
    {
        (sign, factor) = lower switch
        {
            "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" or "㎜" => (Sign.Millimetre, 1m),
            "в" or "вольт" or "ボルト" => (Sign.Volt, 1m),
            "а" or "㏂" or "アンペア" => (Sign.Ampere, 1m),
            "ма" or "㎃" or "mamp" or "mamps" or "ミリアンペア" => (Sign.Ampere, 1e-3m),
            "вт" or "ва" or "ワット" => (Sign.Watt, 1m),
            "гц" or "㎐" or "ヘルツ" => (Sign.Hertz, 1m),
            _ => (Sign.Word, 0m),
        };
        if (sign != Sign.Word)
            return true;

        // The first letter leaves few units to try: most words after a number are none.
        sign = lower[0] switch
        {
            'v' => UnitWords.TryFactor<Volt>(lower, out factor)
                ? Sign.Volt
                : UnitWords.TryFactor<VoltAmpere>(lower, out factor) ? Sign.Watt : Sign.Word,
            'a' or 'µ' or 'μ' or 'u' => UnitWords.TryFactor<Ampere>(lower, out factor) ? Sign.Ampere : Sign.Word,
            'w' or 'k' => UnitWords.TryFactor<Watt>(lower, out factor) ? Sign.Watt : Sign.Word,
            'h' => UnitWords.TryFactor<Hertz>(lower, out factor) ? Sign.Hertz : Sign.Word,
            'm' => UnitWords.TryFactor<Ampere>(lower, out factor) ? Sign.Ampere
                : UnitWords.TryFactor<Volt>(lower, out factor) ? Sign.Volt
                : UnitWords.TryFactor<Watt>(lower, out factor) ? Sign.Watt : Sign.Word,
            _ => Sign.Word,
        };
        return sign != Sign.Word;
    }
}
