using System.Xml.Linq;
using Loadmark.Core.Gear;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Gear;

/// <summary>The IEC 60417 numbers that the program's documentation gives for symbols, against the list of them.</summary>
[Trait("Source", "IEC 60417 numbers, read in a maker's symbol table")]
public sealed class SymbolNumberTests
{
    [Theory]
    [InlineData("F:Loadmark.Core.Gear.SupplyForm.Direct", "direct current")]
    [InlineData("F:Loadmark.Core.Gear.SupplyForm.Alternating", "alternating current")]
    [InlineData("T:Loadmark.Core.Gear.Polarity", "polarity of d.c. power connector")]
    public void Documentation_gives_the_number_of_the_symbol(string member, string meaning)
    {
        var row = ReferenceTable.Row("symbols_iec60417", "meaning", meaning);
        Assert.True(row.WasRead);

        var summary = Documentation().Single(entry => entry.Attribute("name")?.Value == member).Value;

        Assert.Contains($"IEC 60417-{row["number"]}", summary, StringComparison.Ordinal);
    }

    /// <summary>Every number the documentation of the gear gives is one of the list.</summary>
    [Fact]
    public void Documentation_gives_no_other_number()
    {
        var known = ReferenceTable.Read("symbols_iec60417").Where(row => row.WasRead).Select(row => row["number"]).ToHashSet();
        var given = Documentation().SelectMany(entry => entry.Value.Split("IEC 60417-").Skip(1)).Select(rest => rest[..4]).ToHashSet();

        Assert.Superset(given, known);
        Assert.NotEmpty(given);
    }

    /// <summary>The two lists of symbols agree on the numbers of direct and of alternating current.</summary>
    [Theory]
    [InlineData("U+2393", "direct current")]
    [InlineData("U+23E6", "alternating current")]
    public void Lists_agree_on_the_number(string codePoint, string meaning) => Assert.Equal(
        ReferenceTable.Row("symbols_unicode", "code_point", codePoint)["iec_60417"],
        $"IEC 60417-{ReferenceTable.Row("symbols_iec60417", "meaning", meaning)["number"]}");

    private static IEnumerable<XElement> Documentation() =>
        XDocument.Load(Path.ChangeExtension(typeof(SupplyForm).Assembly.Location, ".xml")).Descendants("member");
}
