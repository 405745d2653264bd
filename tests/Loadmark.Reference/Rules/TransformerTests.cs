using System.Globalization;
using System.Text.RegularExpressions;
using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Rules;

/// <summary>
/// What frequency does to a transformer's core and what its rectifier stands at with nothing drawn, against published figures: the law of the
/// transformer is V = √2·π·f·N·Φ, or 4.44·f·N·Φ.
/// </summary>
[Trait("Source", "transformer.csv")]
public sealed partial class TransformerTests
{
    private static readonly double PerTurn = Math.Sqrt(2) * Math.PI;

    [Theory]
    [InlineData("TREMOLO-6", 400, 50, 500)]
    [InlineData("TREMOLO-7", 88, 50, 10)]
    public void The_law_of_the_transformer_gives_the_published_flux(string id, int volts, int hertz, int turns)
    {
        var row = Row(id);
        Printed.Agrees(row.Number("published"), (decimal)(1000 * Flux(volts, hertz, turns)), row["source"]);
    }

    /// <summary>The rule's own working, for a supply of one nominal voltage on the mains of the example and its neighbours.</summary>
    [Theory]
    [InlineData(120, 60, 120, 50, Severity.Harm)]
    [InlineData(230, 60, 230, 50, Severity.Harm)]
    [InlineData(120, 60, 110, 50, Severity.Margin)]
    [InlineData(240, 60, 220, 50, Severity.Margin)]
    public void The_rule_on_mains_reckons_flux_as_the_law_does(int printedVolts, int printedHertz, int volts, int hertz, Severity expected)
    {
        var finding = Assert.Single(Mains($"{printedVolts}V~ {printedHertz}Hz", volts, hertz), static finding => finding.Working.Contains("V/Hz", StringComparison.Ordinal));
        Assert.Equal(expected, finding.Severity);
        var ratio = Flux(volts, hertz, 100) / Flux(printedVolts, printedHertz, 100);
        Assert.Equal(ratio > 1.1 + 1e-9, finding.Severity == Severity.Harm);
        var told = PerHertz().Matches(finding.Working).Select(static match => decimal.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture)).ToList();
        Printed.Within(0.005m, told[0], (decimal)volts / hertz, "V/f");
        Printed.Within(0.005m, told[1], (decimal)printedVolts / printedHertz, "V/f");
    }

    [Fact]
    public void The_working_on_120_volts_is_the_published_one()
    {
        var finding = Assert.Single(Mains("120V~ 60Hz", 120, 50), static finding => finding.Severity == Severity.Harm);
        var figures = new[] { "TREMOLO-2", "TREMOLO-1", "TREMOLO-3" }.Select(static id => Row(id).Number("published")).ToList();
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"120 V ÷ 50 Hz = {figures[0]} V/Hz; 120 V ÷ 60 Hz = {figures[1]} V/Hz: {figures[2]} times"), finding.Working);
    }

    /// <summary>Published as the same flux: whatever the rule says of the lower voltage, it must not be that the core saturates.</summary>
    [Theory]
    [InlineData(480, 60, 400, 50)]
    [InlineData(120, 60, 100, 50)]
    public void The_same_volts_per_hertz_are_the_same_flux(int printedVolts, int printedHertz, int volts, int hertz)
    {
        Assert.Equal(Row("TREMOLO-4").Number("published"), Row("TREMOLO-5").Number("published"));
        Assert.Equal(1, Flux(volts, hertz, 100) / Flux(printedVolts, printedHertz, 100), 9);
        Assert.DoesNotContain(Mains($"{printedVolts}V~ {printedHertz}Hz", volts, hertz), static finding => finding.Severity == Severity.Harm);
    }

    /// <summary>A reservoir charges to the peak of the wave and no further; less a diode's drop, which the published ratio does not have.</summary>
    [Fact]
    public void A_plain_adaptor_stands_at_the_peak_of_its_wave_when_nothing_is_drawn()
    {
        var published = Row("TREMOLO-8").Number("published") / 120;
        Assert.InRange(OpenVoltage.AssumedRatio, published * (1 - Printed.CoarsestShare), published);
        var rig = WiredRig.Of(new Rig
        {
            Name = "Plain adaptor",
            Loads = [SmallRig.Load("drive-3", "9V DC centre negative", 20)],
            Supplies = [new Supply { Id = "brick", Regulated = false, Outlets = [SmallRig.Outlet("1", "9V⎓ 500mA centre negative")] }],
            Wired = [SmallRig.Feed("1", "drive-3")],
        });
        Assert.Equal(new Volts(9) * OpenVoltage.AssumedRatio, OpenVoltage.Of(rig.Feeds[0].Outlets[0], new Volts(9))!.Value.Value);
        var finding = Assert.Single(NameplateCheck.Of(rig).Findings, static finding => finding.Rule == RuleId.Unregulated);
        Assert.Equal(Severity.Unsure, finding.Severity);
        Assert.Contains("1.4 × 9 V = 12.6 V", finding.Working, StringComparison.Ordinal);
    }

    private static ReferenceRow Row(string id) => ReferenceTable.Row("transformer", "id", id);

    /// <summary>The peak flux in a core, Wb.</summary>
    private static double Flux(double volts, double hertz, double turns) => volts / (PerTurn * hertz * turns);

    private static IEnumerable<Finding> Mains(string label, int volts, int hertz) => SmallRig.Of(
        NameplateCheck.Of(new Rig
        {
            Name = "Abroad",
            Mains = new RigMains(new Volts(volts), new Frequency(hertz)),
            Loads = [SmallRig.Load("drive-3", "9V DC centre negative", 20)],
            Supplies = [new Supply { Id = "brick", Isolated = true, Mains = NameplateReader.Read(label), Outlets = [SmallRig.Outlet("1", "9V⎓ 500mA centre negative")] }],
            Wired = [SmallRig.Feed("1", "drive-3")],
        }),
        "mains-mismatch");

    [GeneratedRegex(@"= (?<value>[\d.]+) V/Hz", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PerHertz();
}
