namespace Loadmark.Core.Nameplates.Reading;

/// <summary>The words that labels use, in the spellings people print and type; case does not matter.</summary>
internal static class Vocabulary
{
    private const int LongestWord = 13;

    private static readonly Dictionary<string, (WordMeaning Meaning, decimal Factor)>.AlternateLookup<ReadOnlySpan<char>> Words =
        Build().GetAlternateLookup<ReadOnlySpan<char>>();

    public static (WordMeaning Meaning, decimal Factor) Meaning(ReadOnlySpan<char> word) =>
        word.Length <= LongestWord && Words.TryGetValue(word, out var meaning) ? meaning : (WordMeaning.Unknown, 0);

    private static Dictionary<string, (WordMeaning Meaning, decimal Factor)> Build()
    {
        var words = new Dictionary<string, (WordMeaning, decimal)>(200, StringComparer.OrdinalIgnoreCase);
        Add(WordMeaning.Volt, 1, "V volt volts vlt");
        Add(WordMeaning.Volt, 1e-3m, "mV millivolt millivolts");
        Add(WordMeaning.VoltDirect, 1, "Vdc Vd");
        Add(WordMeaning.VoltAlternating, 1, "Vac");
        Add(WordMeaning.Ampere, 1, "A amp amps ampere amperes");
        Add(WordMeaning.Ampere, 1e-3m, "mA milliamp milliamps milliampere milliamperes mAmp mAmps");
        Add(WordMeaning.Ampere, 1e-6m, "µA μA uA microamp microamps");
        Add(WordMeaning.Watt, 1, "W watt watts VA");
        Add(WordMeaning.Watt, 1e-3m, "mW milliwatt milliwatts");
        Add(WordMeaning.Watt, 1e3m, "kW");
        Add(WordMeaning.Hertz, 1, "Hz hertz cps");
        Add(WordMeaning.Millimetre, 1, "mm millimetre millimetres millimeter millimeters");
        Add(WordMeaning.MillimetreTimes, 1, "mmx");
        Add(WordMeaning.Inch, 1, "inch inches");
        Add(WordMeaning.ForeignUnit, 0, "mAh Ah Wh kWh ohm ohms Ω kΩ kohm kohms MΩ kHz MHz GHz dB dBu dBV dBm g kg lb lbs oz F K cm m ft ms s min h hr hrs kV bit bits nF pF µF uF");
        Add(WordMeaning.Times, 0, "x by");
        Add(WordMeaning.Direct, 0, "dc d.c direct");
        Add(WordMeaning.Alternating, 0, "ac a.c alternating");
        Add(WordMeaning.Input, 0, "input in inp i/p pri primary mains line");
        Add(WordMeaning.Output, 0, "output out outp o/p sec secondary");
        Add(WordMeaning.Centre, 0, "centre center ctr cent cntr tip inner inside pin core middle");
        Add(WordMeaning.Sleeve, 0, "sleeve outer outside ring shell");
        Add(WordMeaning.Barrel, 0, "barrel");
        Add(WordMeaning.LetterC, 0, "C");
        Add(WordMeaning.Negative, 0, "negative neg minus negativ");
        Add(WordMeaning.Positive, 0, "positive pos plus");
        Add(WordMeaning.Ve, 0, "ve");
        Add(WordMeaning.Plug, 0, "plug socket connector coax coaxial");
        Add(WordMeaning.Jack, 0, "jack mini minijack phone");
        Add(WordMeaning.To, 0, "to thru through");
        Add(WordMeaning.Between, 0, "between from");
        Add(WordMeaning.And, 0, "and");
        Add(WordMeaning.Or, 0, "or");
        Add(WordMeaning.Most, 0, "max maximum peak");
        Add(WordMeaning.Typical, 0, "typ typical");
        Add(WordMeaning.Filler, 0, "nom nominal approx approximately about rated rating current voltage power supply adaptor adapter draw draws consumption polarity at of each per is uses takes up ca needs requires required outlet outlets");
        Add(WordMeaning.NumberMark, 0, "model serial sn pn sku ref barcode ean lot batch item pat patent patents mod part no");
        return words;

        void Add(WordMeaning meaning, decimal factor, string spellings)
        {
            foreach (var spelling in spellings.Split(' '))
                words[spelling] = (meaning, factor);
        }
    }
}
