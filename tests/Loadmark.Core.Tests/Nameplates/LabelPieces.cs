using CsCheck;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>Generators of labels: pieces that mean something, pieces that do not, and characters that are in the way.</summary>
internal static class LabelPieces
{
    private static readonly string[] _meaning =
    [
        "9V", "9 V", "12V", "9-18V", "9 or 12 V", "9/12/18V", "100-240V", "230V~", "0V", "1500V", "300mA", "0,3 A", ".5A", "1,000 mA", "20-50mA", "0mA",
        "45W", "2.7 W", "10VA", "50/60Hz", "60Hz", "DC", "AC", "d.c.", "⎓", "~", "=", "===", "INPUT", "OUTPUT:", "OUTPUT 1-4:", "PRI", "SEC", "mains",
        "centre negative", "tip +", "(-) center", "sleeve positive", "⊖-(•-⊕", "+-(o--", "⊖–⦿–⊕", "C-", "5.5x2.1", "5.5 × 2,5 mm", "2.1mm barrel",
        "3.5 mm jack", "max", "typ.", "AC/DC adaptor", "between 9 and 18V", "9V/0.3A", "DC9V", "9VDC500mA", "1 200 mA", "~300mA",
        "regulated", "unregulated", "not", "do not use", "never", "total", "total 3A", "peak", "up to", "(max 18V)", "min 8V", "-9V", "+9V", "+/-15V", "OD 5.5 ID 2.1", "c-neg", "(-)-C-(+)",
        "OUTPUTS 1-3 9V 100mA", "4: 12V 200mA", "OUTPUT 5", "OUT1", "8 outputs", "6 x 9V 100mA", "x 4", "(x2)", "OUTPUT A:", "each", "per outlet", "total 18W",
        "isolated", "not isolated", "common ground", "positive ground", "ground -", "INPUT 12V⎓3A", "IN: 5V 2A", "OUT: 9V 1A", "12-0-12 V~", "l00mA", "1BV", "300rnA",
        "polarity?", "centre", "(-)", "USB-C", "USB-A", "LED on 5mA", "standby", "12AX7", "6V6", "HIGH VOLTAGE 300V", "1.5V AA", "10 mW RF", "CC", "d c",
        "1.000 mA", "9VDC.1A", "3 50mA", "(230V AC)", "T1A 250V", "9-V", "linear",
    ];

    private static readonly string[] _junk =
    [
        "MODEL: PX-9V3", "S/N 0012345", "CLASS 2", "Made in Freedonia", "For indoor use only", "IP20", "LPS", "4012345678901", "2019-05-12", "Pat. No. 1,234,567",
        "SA130A-0910U", "300", "20 kΩ", "500mAh", "±10%", "©", "😀", "\uD800", "\uDC00", "\0", "", "Ω", "only", "the", "fuse 2A", "x", "/", "-", "to", "or",
    ];

    private static readonly string[] _separators = [" ", " ", " ", ", ", "; ", "\n", "", "/", " - ", "\u00A0", "\u2009", " | "];

    public static Gen<string> Label { get; } =
        Gen.Select(Gen.OneOf(One(_meaning), One(_meaning), One(_junk)), One(_separators))
            .Select((piece, separator) => piece + separator)
            .Array[0, 12]
            .Select(string.Concat);

    /// <summary>Labels, and characters of every kind, lone surrogates among them.</summary>
    public static Gen<string> AnyText { get; } = Gen.OneOf(Label, Gen.Char.Array[0, 60].Select(characters => new string(characters)));

    private static Gen<string> One(string[] pieces) => Gen.Int[0, pieces.Length - 1].Select(index => pieces[index]);
}
