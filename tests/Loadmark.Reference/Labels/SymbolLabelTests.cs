using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Labels;

/// <summary>The signs for direct and alternating current by their Unicode code points, as labels print them.</summary>
[Trait("Source", "Unicode character database; IEC 60417-5031 and 5032")]
public sealed class SymbolLabelTests
{
    public static IEnumerable<TheoryDataRow<string, SupplyForm>> Symbols() =>
    [
        Symbol("U+2393", SupplyForm.Direct),
        Symbol("U+23E6", SupplyForm.Alternating),
        Symbol("U+223F", SupplyForm.Alternating),
        Symbol("U+007E", SupplyForm.Alternating),
    ];

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Sign_tells_the_form_of_the_current(string codePoint, SupplyForm form)
    {
        var character = char.ConvertFromUtf32(int.Parse(codePoint.AsSpan(2), NumberStyles.HexNumber));
        Assert.Equal(ReferenceTable.Row("symbols_unicode", "code_point", codePoint)["char"], character);

        foreach (var label in new[] { $"9V{character}1A", $"9 V {character} 1 A", $"OUTPUT: 9V{character} 1A" })
        {
            var nameplate = NameplateReader.Read(label);

            Assert.Equal(form, nameplate.Form.Value);
            var mode = Assert.Single(nameplate.Modes);
            Assert.Equal(QuantityRange<Volt>.Single(new Volts(9)), mode.Volts);
            Assert.Equal(new Amps(1), mode.Amps?.Value);
        }
    }

    private static TheoryDataRow<string, SupplyForm> Symbol(string codePoint, SupplyForm form)
    {
        var row = ReferenceTable.Row("symbols_unicode", "code_point", codePoint);
        return new(codePoint, form) { TestDisplayName = $"{codePoint} {row["unicode_name"]} is {form} [Unicode]" };
    }
}
