using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Supplies with a selector for the mains: printed voltages between which nothing is allowed.</summary>
public sealed class MainsSelectorTests
{
    [Theory]
    [InlineData("115/230V~ 50/60Hz", 120, Severity.Margin, 115)]
    [InlineData("115/230V~ 50/60Hz", 230, Severity.Unsure, 230)]
    public void A_selector_may_be_set_wrong_and_that_is_told(string input, int mains, Severity severity, int choice)
    {
        var result = Check(input, mains);
        var finding = Assert.Single(result.Findings);
        Assert.Equal(severity, finding.Severity);
        Assert.Contains("how its selector is set is not given", finding.Message, StringComparison.Ordinal);
        Assert.Equal($"Set it to {choice} V before plugging in.", finding.Remedy);
    }

    [Theory]
    [InlineData("115/230V~ 50/60Hz", 180)]
    [InlineData("115/230V~ 50/60Hz", 100)]
    public void Between_the_settings_nothing_is_allowed(string input, int mains)
    {
        var finding = Assert.Single(Check(input, mains).Findings);
        Assert.Equal("mains-mismatch", finding.Rule);
        Assert.Contains("115 V or 230 V", finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Working);
    }

    [Theory]
    [InlineData("220/230/240V~ 50Hz", 230)]
    [InlineData("100-240V~ 50/60Hz", 180)]
    public void Neighbouring_voltages_and_ranges_need_no_selector(string input, int mains)
    {
        var result = Check(input, mains);
        Assert.Empty(result.Findings);
        Assert.DoesNotContain(result.Untold, untold => untold.Rule == "mains-mismatch");
    }

    private static CheckResult Check(string input, int mains) => NameplateCheck.Of(new Rig
    {
        Name = "r",
        Mains = new RigMains(new Volts(mains), new Frequency(50)),
        Supplies = [new Supply { Id = "s", Label = NameplateReader.Read($"INPUT {input}"), Outlets = [new Outlet { Id = "1", Label = NameplateReader.Read("9 V 1 A") }] }],
        Wired = (ValueList<Feed>)[],
    });
}
