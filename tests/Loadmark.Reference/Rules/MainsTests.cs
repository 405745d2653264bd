using System.Globalization;
using System.Text.RegularExpressions;
using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Rules;

/// <summary>The rule <c>mains-mismatch</c> against the mains of 203 countries and the tolerance of IEC 60038.</summary>
[Trait("Source", "IEC 60038; country list of the fluids library (MIT)")]
public sealed partial class MainsTests
{
    private static readonly string[] WideRange = ["100-240V~ 50/60Hz", "INPUT 100-240V~ 50/60Hz 0.6A OUTPUT 9V⎓1A"];

    public static IEnumerable<TheoryDataRow<string>> Countries() => ReferenceTable.Read("mains_by_country")
        .Select(row => new TheoryDataRow<string>(row["iso2"])
        {
            TestDisplayName = $"{row["country"].Trim()}, {row["voltage_V"]} V {row["frequency_Hz"]} Hz [fluids country list]",
        });

    [Theory]
    [MemberData(nameof(Countries))]
    public void Country_takes_the_supplies_made_for_it(string iso2)
    {
        var row = ReferenceTable.Row("mains_by_country", "iso2", iso2);
        var (volts, hertz) = (row.Number("voltage_V"), row.Number("frequency_Hz"));
        var low = volts is >= 100 and <= 127;
        Assert.True(low ^ (volts is >= 220 and <= 240), $"{volts} V is neither of the world's two ranges.");

        foreach (var label in WideRange)
            Assert.Null(Refusal(label, volts, hertz));

        // Half the voltage: it does not hold its own. Double: it is destroyed.
        if (low)
            Assert.Equal(Severity.Fails, Refusal("230V~ 50Hz", volts, hertz));
        else if (hertz == 50)
            Assert.Null(Refusal("230V~ 50Hz", volts, hertz));
        if (!low)
            Assert.Equal(Severity.Harm, Refusal("120V~ 60Hz", volts, hertz));
    }

    [Fact]
    public void A_230_volt_supply_takes_the_tolerance_of_the_standard_and_no_more()
    {
        var row = ReferenceTable.Row("mains_voltage_standards", "quantity", "tolerance since 2003");
        Assert.True(row.WasRead);
        var range = Range().Match(row["value"]);
        var (lowest, highest) = (Number(range.Groups["low"].Value), Number(range.Groups["high"].Value));
        Assert.Equal(new Volts(230) * 0.9m, new Volts(lowest));
        Assert.Equal(new Volts(230) * 1.1m, new Volts(highest));

        Assert.Null(Refusal("230V~ 50Hz", lowest, 50));
        Assert.Null(Refusal("230V~ 50Hz", 230, 50));
        Assert.Null(Refusal("230V~ 50Hz", highest, 50));
        Assert.Equal(Severity.Fails, Refusal("230V~ 50Hz", lowest - 1, 50));
        Assert.Equal(Severity.Harm, Refusal("230V~ 50Hz", highest + 1, 50));
    }

    /// <summary>How bad the rule calls a supply with this label on this mains; null where it does not refuse it.</summary>
    private static Severity? Refusal(string label, decimal volts, decimal hertz)
    {
        var nameplate = NameplateReader.Read(label);
        var inputOnly = !label.Contains("OUTPUT", StringComparison.Ordinal);
        var supply = new Supply
        {
            Id = "brick",
            Isolated = true,
            Label = inputOnly ? null : nameplate,
            Mains = inputOnly ? nameplate : null,
            Outlets = [SmallRig.Outlet("1", "9V⎓ 500mA")],
        };
        var result = NameplateCheck.Of(new Rig
        {
            Name = "Abroad",
            Mains = new RigMains(new Volts(volts), new Frequency(hertz)),
            Loads = [SmallRig.Load("drive-3", "9V DC centre negative", 20)],
            Supplies = [supply],
            Wired = [SmallRig.Feed("1", "drive-3")],
        });

        // A rule that cannot tell has not accepted anything.
        Assert.DoesNotContain(result.Untold, untold => untold.Rule == "mains-mismatch");
        Assert.Single(result.Outlets);
        var findings = SmallRig.Of(result, "mains-mismatch");
        return findings.Where(static finding => finding.Severity >= Severity.Fails).Select(static finding => (Severity?)finding.Severity).Max();
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\((?<low>\d+)\.\.(?<high>\d+) V\)", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Range();
}
