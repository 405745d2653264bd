using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Outlets in series and in parallel (Kirchhoff's voltage law).</summary>
public sealed class JoinedOutletsTests
{
    [Fact]
    public void Isolated_outlets_may_be_joined_in_series() =>
        Expect.Good(Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("preamp-2", Plate.Dc(18, 50)).Series("brick/1 brick/2", "preamp-2").Check());

    [Fact]
    public void So_may_outlets_of_two_supplies_that_are_not_isolated()
    {
        var rig = New().Load("preamp-2", Plate.Dc(18, 50)).Supply("one", NotIsolated).Outlet("1", Plate.Dc(9, 100)).Supply("two", NotIsolated).Outlet("1", Plate.Dc(9, 100));
        Expect.Good(rig.Series("one/1 two/1", "preamp-2").Check());
    }

    [Theory]
    [InlineData("left", true)]
    [InlineData("right", false)]
    public void Outlets_of_one_bank_may_not(string bank, bool isShort)
    {
        var result = New().Load("preamp-2", Plate.Dc(18, 50)).Supply("brick").Outlet("1", Plate.Dc(9, 100), InBank("left")).Outlet("2", Plate.Dc(9, 100), InBank(bank))
            .Series("brick/1 brick/2", "preamp-2").Check();
        if (isShort)
            Expect.Breaks(result, "series-short", "output of one outlet joined to its own return");
        else
            Expect.Good(result);
    }

    [Fact]
    public void Other_loads_on_both_returns_short_the_pair_on_one_it_depends_on_the_lead()
    {
        RigBuilder Rig() => New().Load("preamp-2", Plate.Dc(18, 50)).Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 12))
            .Supply("one", NotIsolated).Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
            .Supply("two", NotIsolated).Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100)).Series("one/1 two/1", "preamp-2");

        var both = Rig().Feed("one/2", "drive-3").Feed("two/2", "chorus-1").Check();
        Assert.Contains("the returns of one/1 and two/1 carry other loads", Expect.Breaks(both, "series-short").Message, StringComparison.Ordinal);

        var single = Rig().Feed("one/2", "drive-3").Check();
        Expect.Says(single, "series-short", Severity.Unsure, "only if the series lead takes the load's 0 V from one/1");
    }

    [Fact]
    public void Isolation_not_stated_is_a_short_in_series() =>
        Expect.Says(
            Two(Plate.Dc(9, 100), Plate.Dc(9, 100), supply => supply with { Isolated = null }).Load("preamp-2", Plate.Dc(18, 50)).Series("brick/1 brick/2", "preamp-2").Check(),
            "series-short",
            Severity.Harm,
            "nothing says that they are isolated");

    [Fact]
    public void Equal_outlets_may_be_joined_in_parallel_whatever_their_limits_and_returns()
    {
        Expect.Good(Two(Plate.Dc(9, 100), Plate.Dc(9, 500)).Load("preamp-2", Plate.Dc(9, 50)).Parallel("brick/1 brick/2", "preamp-2").Check());
        Expect.Good(Two(Plate.Dc(9, 100), Plate.Dc(9, 100), NotIsolated).Load("preamp-2", Plate.Dc(9, 50)).Parallel("brick/1 brick/2", "preamp-2").Check());
    }

    [Fact]
    public void Unlike_polarity_kind_of_current_or_setting_is_harm()
    {
        var polarity = New().Load("preamp-2", Plate.Dc(9, 50)).Supply("brick").Outlet("1", Plate.Dc(9, 100))
            .Outlet("2", Plate.Dc(9, 100), outlet => outlet with { Polarity = Polarity.CentrePositive }).Parallel("brick/1 brick/2", "preamp-2").Check();
        Expect.Breaks(polarity, "parallel-unequal", "brick/1 centre negative ≠ brick/2 centre positive");

        var mixed = Two(Plate.Dc(9, 100), Plate.Ac(9, 100)).Load("preamp-2", Plate.Dc(9, 50)).Parallel("brick/1 brick/2", "preamp-2").Check();
        Expect.Breaks(mixed, "parallel-unequal", "brick/1 and brick/2: d.c. joined to a.c.");

        var alternating = Two(Plate.Ac(9, 100), Plate.Ac(9, 100)).Load("preamp-2", Plate.Ac(9, 50)).Parallel("brick/1 brick/2", "preamp-2").Check();
        Expect.Breaks(alternating, "parallel-unequal", "two a.c. outlets: their phase is not known");

        var settings = Two(Plate.Modes((9, 500), (12, 400)), Plate.Modes((9, 500), (12, 400))).Load("preamp-2", Plate.Range(9, 12, 50)).Parallel("brick/1 brick/2", "preamp-2")
            .Build(rig => rig with { Wired = (ValueList<Feed>?)[rig.Wired!.Value[0] with { At = [new Volts(9), new Volts(12)] }] });
        Expect.Breaks(Core.Checks.NameplateCheck.Of(settings), "parallel-unequal", "brick/1 9 V ≠ brick/2 12 V");
    }

    [Fact]
    public void A_voltage_that_is_not_known_is_told() =>
        Expect.Says(
            Two(Plate.Dc(9, 100), Plate.AmpsOnly(100)).Load("preamp-2", Plate.Dc(9, 50)).Parallel("brick/1 brick/2", "preamp-2").Check(),
            "parallel-unequal",
            Severity.Unsure,
            "whether they are equal cannot be told");
}
