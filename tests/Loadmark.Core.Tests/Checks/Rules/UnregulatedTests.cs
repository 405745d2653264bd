using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>That an unregulated adaptor stands up to √2 over its printed voltage is common practice, no source.</summary>
public sealed class UnregulatedTests
{
    private static CheckResult Adaptor(bool? regulated, Func<Outlet, Outlet>? outlet = null, Nameplate? mains = null) =>
        New().Load("drive-3", Plate.Dc(9, 12))
            .Supply("wall", supply => supply with { Regulated = regulated, Mains = mains ?? Plate.Mains(230, 230, 50, 50) })
            .Outlet("1", Plate.Dc(9, 500), outlet).Feed("wall/1", "drive-3").Check();

    [Fact]
    public void A_guess_is_to_be_found_out_and_no_proof_of_harm()
    {
        var result = Adaptor(false);
        Assert.Equal(Severity.Unsure, Expect.Breaks(result, "unregulated", "1.4 × 9 V = 12.6 V (1.4 assumed, common practice, no source)").Severity);
        Expect.Keeps(result, "over-voltage", "voltage-high");
    }

    /// <summary>Transformers are rated in VA: common practice, no source.</summary>
    [Theory]
    [InlineData("INPUT 230V~ 50Hz 12VA OUTPUT 9V⎓ 500mA", true)]
    [InlineData("12VA OUTPUT 9V⎓ 500mA", true)]
    [InlineData("OUTPUT 9V⎓ 500mA", false)]
    [InlineData("OUTPUT 9V⎓ 500mA 5W", false)]
    [InlineData("OUTPUT 9V⎓ 500mA 5VA", true)]
    [InlineData("INPUT 100-240V~ 50/60Hz 12VA OUTPUT 9V⎓ 500mA", false)]
    [InlineData("12VA OUTPUT 9V⎓ 500mA regulated", false)]
    public void An_adaptor_rated_in_volt_amperes_may_be_unregulated(string label, bool isUnsure)
    {
        var result = New().Load("drive-3", Plate.Dc(9, 12))
            .Supply("wall", supply => supply with { Regulated = null, Mains = null, Label = NameplateReader.Read(label) })
            .Outlet("1", NameplateReader.Read("")).Feed("wall/1", "drive-3").Check();
        Assert.Equal(isUnsure, result.Findings.Any(static finding => finding.Rule == RuleId.Unregulated && finding.Severity == Severity.Unsure));
    }

    [Fact]
    public void The_limit_of_direct_current_is_not_known_from_volt_amperes()
    {
        var result = New().Load("drive-3", Plate.Dc(9, 12)).Supply("wall").Outlet("1", NameplateReader.Read("9V DC 10VA")).Feed("wall/1", "drive-3").Check();
        Assert.Contains("Its VA are those of a transformer", Expect.Says(result, "figure-assumed", Severity.Margin, "The limit of wall/1 is not known").Message, StringComparison.Ordinal);
        var alternating = New().Load("mixer-1", Plate.Ac(9, 1200)).Supply("wall").Outlet("1", NameplateReader.Read("9V AC 10VA")).Feed("wall/1", "mixer-1").Check();
        Expect.Breaks(alternating, "outlet-overload");
    }

    /// <summary>The most that a load for direct current can draw; a supply's limit is computed where it is lowest.</summary>
    [Theory]
    [InlineData("9V DC 18VA", 2)]
    [InlineData("9V AC 18VA", 2)]
    [InlineData("9-18V AC 18VA", 2)]
    public void A_load_draws_at_most_what_its_volt_amperes_come_to(string label, int amps)
    {
        var rating = Loadmark.Core.Ratings.LoadRating.Of(new Load { Id = "a", Label = NameplateReader.Read(label) });
        Assert.Equal(new Loadmark.Core.Gear.Figure<Amps>(new Amps(amps), Loadmark.Core.Gear.Origin.Derived), rating.Rated);
        Assert.Contains("18 VA ÷ 9 V = 2 A", Assert.Single(rating.Derivations).Working, StringComparison.Ordinal);

        var supply = new Supply { Id = "s", Outlets = [new Outlet { Id = "1", Label = NameplateReader.Read("9-18V AC 18VA") }] };
        Assert.Equal(new Amps(1), Loadmark.Core.Ratings.OutletRating.Of(supply, supply.Outlets[0]).Modes[0].Limit!.Value.Value);
    }

    [Fact]
    public void A_measured_voltage_with_nothing_drawn_is_judged()
    {
        var harm = Adaptor(false, outlet => outlet with { NoLoad = new Volts(13) });
        Expect.Keeps(harm, "unregulated");
        Assert.Contains("until it draws its current", Expect.Breaks(harm, "over-voltage", "13 V > 1.10 × 9 V = 9.9 V").Message, StringComparison.Ordinal);

        var high = Adaptor(false, outlet => outlet with { NoLoad = new Volts(9.8m) });
        Expect.Keeps(high, "over-voltage");
        Assert.Contains("until it draws its current", Expect.Breaks(high, "voltage-high").Message, StringComparison.Ordinal);
    }

    /// <summary>What is printed counts as what is measured, and is no setting that a plan could choose.</summary>
    [Fact]
    public void A_printed_voltage_with_nothing_drawn_is_judged()
    {
        var harm = Adaptor(null, static outlet => outlet with { Label = NameplateReader.Read("9V DC 500mA, 14V no load") });
        Expect.Keeps(harm, "unregulated");
        Expect.Breaks(harm, "over-voltage", "14 V > 1.10 × 9 V = 9.9 V");
    }

    [Fact]
    public void A_source_resistance_gives_the_voltage_by_Ohms_law()
    {
        // V = R·I: 4 Ω × 500 mA = 2 V (OpenStax University Physics vol. 2, section 9.4).
        var result = Adaptor(false, outlet => outlet with { SourceOhms = new Ohms(4) });
        Expect.Keeps(result, "unregulated");
        Expect.Breaks(result, "over-voltage", "11 V > 1.10 × 9 V = 9.9 V");
    }

    [Fact]
    public void A_measured_voltage_counts_even_where_no_voltage_is_printed()
    {
        var result = New().Load("drive-3", Plate.Dc(9, 12)).Supply("wall").Outlet("1", Plate.AmpsOnly(500), outlet => outlet with { NoLoad = new Volts(13) })
            .Feed("wall/1", "drive-3").Check();
        Expect.Breaks(result, "over-voltage", "13 V > 1.10 × 9 V = 9.9 V");
    }

    [Fact]
    public void In_series_the_voltages_with_nothing_drawn_add()
    {
        var result = New().Load("preamp-2", Plate.Dc(18, 12))
            .Supply("one", supply => supply with { Regulated = false }).Outlet("1", Plate.Dc(9, 100), outlet => outlet with { NoLoad = new Volts(12) })
            .Supply("two").Outlet("1", Plate.Dc(9, 100))
            .Series("one/1 two/1", "preamp-2").Check();
        Expect.Breaks(result, "over-voltage", "21 V > 1.10 × 18 V = 19.8 V");
    }

    /// <summary>One leg measured says nothing of the other: 12 V + 1.4 × 9 V is over 1.10 × 21 V, 12 V + 9 V is not.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(null)]
    public void In_series_what_the_leg_that_was_not_measured_may_stand_at_counts(bool? regulated)
    {
        CheckResult Pair(decimal measured) => New().Load("preamp-2", Plate.Dc(21, 12))
            .Supply("one").Outlet("1", Plate.Dc(9, 100), outlet => outlet with { NoLoad = new Volts(measured) })
            .Supply("two", supply => supply with { Regulated = regulated, Mains = Plate.Mains(230, 230, 50, 50) }).Outlet("1", Plate.Dc(9, 100))
            .Series("one/1 two/1", "preamp-2").Check();
        var unsure = Pair(12);
        Assert.Equal("9 V + 9 V = 18 V as printed, 24.6 V with nothing drawn", Expect.Says(unsure, "unregulated", Severity.Unsure, "two").Working);
        Expect.Keeps(unsure, "over-voltage");

        // What is known is harm enough, whatever the other leg does.
        Expect.Breaks(Pair(15), "over-voltage", "24 V > 1.10 × 21 V = 23.1 V");
        Expect.Keeps(Pair(15), "unregulated");
        Expect.Keeps(Pair(9.2m), "unregulated", "over-voltage");
    }

    [Fact]
    public void In_parallel_a_leg_that_was_measured_says_nothing_of_the_other()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Supply("wall", supply => supply with { Regulated = false })
            .Outlet("1", Plate.Dc(9, 100)).Load("drive-3", Plate.Dc(9, 12)).Parallel("brick/1 wall/1", "drive-3")
            .Check(rig => rig with
            {
                Supplies = [.. rig.Supplies.Items.Select(static supply => supply.Id == "wall" ? supply
                : supply with { Outlets = [.. supply.Outlets.Items.Select(static outlet => outlet with { NoLoad = new Volts(9.1m) })] })]
            });
        Expect.Says(result, "unregulated", Severity.Unsure, "may stand at 12.6 V");
    }

    [Fact]
    public void In_parallel_the_highest_voltage_with_nothing_drawn_counts()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Supply("wall", supply => supply with { Regulated = false })
            .Outlet("1", Plate.Dc(9, 100), outlet => outlet with { NoLoad = new Volts(12) })
            .Load("drive-3", Plate.Dc(9, 12)).Parallel("brick/1 wall/1", "drive-3").Check();
        Expect.Breaks(result, "over-voltage", "12 V > 1.10 × 9 V = 9.9 V");
    }

    [Fact]
    public void An_adaptor_that_looks_like_a_transformer_is_to_be_found_out_a_switched_one_is_not()
    {
        Expect.Says(Adaptor(null), "unregulated", Severity.Unsure, "wall looks like a plain transformer adaptor: wall/1 may stand at 12.6 V");
        Expect.Says(Adaptor(null, mains: Plate.Mains(220, 240)), "unregulated", Severity.Unsure, "12.6 V");
        Expect.Good(Adaptor(null, mains: Plate.Mains(100, 240)));
    }

    [Fact]
    public void Where_the_label_shows_nothing_of_the_mains_it_is_only_told()
    {
        var result = Adaptor(null, mains: Plate.Empty);
        Expect.Keeps(result, "unregulated");
        Expect.CannotTell(result, "unregulated", "Whether wall is regulated is not given");
    }

    [Fact]
    public void A_load_that_bears_the_voltage_with_nothing_drawn_is_not_concerned()
    {
        var result = New().Load("drive-3", Plate.Range(9, 18, 12)).Supply("wall", supply => supply with { Regulated = false })
            .Outlet("1", Plate.Dc(9, 500)).Feed("wall/1", "drive-3").Check();
        Expect.Good(result);
    }

    [Fact]
    public void Outlets_that_are_stated_to_be_isolated_have_regulators_of_their_own()
    {
        RigBuilder Brick(bool? isolated) => New().Load("drive-3", Plate.Dc(9, 12)).Supply("brick", supply => supply with { Regulated = null, Isolated = isolated, Mains = Plate.Mains(230, 230, 50, 50) })
            .Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100)).Feed("brick/1", "drive-3");
        Expect.Keeps(Brick(true).Check(), "unregulated");
        Expect.Breaks(Brick(null).Check(), "unregulated");
    }

    [Fact]
    public void A_supply_that_feeds_nothing_and_an_alternating_one_say_nothing()
    {
        Expect.Open(New().Supply("wall", supply => supply with { Regulated = false }).Outlet("1", Plate.Dc(9, 100)).Check());
        Expect.Good(New().Load("preamp-1", Plate.Ac(9, 12)).Supply("wall", supply => supply with { Regulated = false }).Outlet("1", Plate.Ac(9, 100))
            .Feed("wall/1", "preamp-1").Check());
    }
}
