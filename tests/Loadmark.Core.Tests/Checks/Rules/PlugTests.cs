using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Sizes from IEC 60130-10 type A; that a wide bore holds badly on a thin pin is common practice, no source.</summary>
public sealed class PlugTests
{
    [Theory]
    [InlineData("5.5x2.1", "5.5x2.1", null)]
    [InlineData("5.5x2.5", "5.5x2.5", null)]
    [InlineData("5.5x2.5", "5.5x2.1", "plug-loose")]
    [InlineData("5.5x2.1", "5.5x2.5", "plug-mismatch")]
    [InlineData("5.5x2.1", "3.5 mm jack", "plug-mismatch")]
    [InlineData("3.5 mm jack", "5.5x2.1", "plug-mismatch")]
    [InlineData("3.5 mm jack", "3.5 mm jack", null)]
    public void A_plug_suits_its_own_size(string plug, string jack, string? rule)
    {
        var result = New().Load("drive-3", Plate.Dc(9, 12), load => load with { Plug = new Plug(jack) })
            .Supply("brick").Outlet("1", Plate.Dc(9, 100), outlet => outlet with { Plug = new Plug(plug) }).Feed("brick/1", "drive-3").Check();
        if (rule is null)
            Expect.Good(result);
        else
            Assert.Equal(rule, Assert.Single(result.Findings).Rule);
    }

    [Fact]
    public void A_plug_that_nobody_gives_is_assumed_aloud()
    {
        var same = One(Plate.Dc(9, 100), Plate.Dc(9, 12), load => load with { Plug = null }).Check();
        Expect.Keeps(same, "plug-mismatch", "plug-loose");
        Assert.Equal("Taken from practice, look once: a plug of 5.5x2.1 for drive-3.", Expect.Breaks(same, "figure-assumed", "assumed 5.5x2.1").Message);

        var other = New().Load("drive-3", Plate.Dc(9, 12), load => load with { Plug = Plug.WidePin })
            .Supply("brick").Outlet("1", Plate.Dc(9, 100), outlet => outlet with { Plug = null }).Feed("brick/1", "drive-3").Check();
        Assert.Contains("a plug of 5.5x2.1 (assumed)", Expect.Breaks(other, "plug-mismatch").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plug_that_no_convention_stands_for_may_not_fit()
    {
        var result = One(Plate.Dc(12, 500), Plate.Dc(12, 12), load => load with { Plug = null }).Check();
        Expect.Says(result, "figure-assumed", Severity.Margin, "The plug of drive-3 is not known");
        Expect.Keeps(result, "plug-mismatch", "plug-loose");
    }

    [Fact]
    public void An_alternating_load_has_a_plug_too() =>
        Expect.Breaks(One(Plate.Ac(9, 100), Plate.Ac(9, 12), load => load with { Plug = Plug.WidePin }).Check(), "plug-mismatch", "5.5x2.1 ≠ 5.5x2.5");
}
