using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Ground, digital neighbours, returns of one's own and loops: all about which loads share a return.</summary>
public sealed class ReturnTests
{
    private static readonly string[] Noise = ["shared-return-digital", "return-not-its-own", "ground-loop"];

    private static Load PositiveGround(Load load) => load with { Ground = GroundSide.Positive };

    private static Load Isolate(Load load) => load with { Isolate = true };

    [Fact]
    public void Positive_ground_alone_on_an_isolated_outlet_is_fine() =>
        Expect.Good(Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("fuzz-1", Plate.Dc(9, 3), PositiveGround).Load("drive-3", Plate.Dc(9, 12))
            .Feed("brick/1", "fuzz-1").Feed("brick/2", "drive-3").Check());

    [Fact]
    public void Two_positive_grounds_may_share_a_return() =>
        Expect.Good(New().Load("fuzz-1", Plate.Dc(9, 3), PositiveGround).Load("fuzz-2", Plate.Dc(9, 3), PositiveGround)
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "fuzz-1", "fuzz-2").Check());

    [Fact]
    public void A_supply_that_is_not_isolated_joins_grounds_through_its_return_and_a_reversing_lead_does_not_help()
    {
        var rig = Two(Plate.Dc(9, 100), Plate.Dc(9, 100), NotIsolated).Load("fuzz-1", Plate.Dc(9, 3), load => PositiveGround(load) with { Polarity = Polarity.CentrePositive })
            .Load("drive-3", Plate.Dc(9, 12)).Lead("flip", LeadType.Reversing).FeedOver("flip", "brick/1", "fuzz-1").Feed("brick/2", "drive-3");
        var finding = Expect.Breaks(rig.Check(), "ground-short", "+ of the supply meets − through the screens of the audio leads");
        Assert.Equal(["fuzz-1", "drive-3", "brick"], finding.Subjects);
        Assert.Equal("fuzz-1 has the ground on the positive side and shares the return of brick with drive-3: the audio leads short the supply.", finding.Message);
    }

    [Fact]
    public void Banks_are_separate_returns()
    {
        RigBuilder Rig(string bank) => New().Load("fuzz-1", Plate.Dc(9, 3), PositiveGround).Load("drive-3", Plate.Dc(9, 12)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 100), InBank("left")).Outlet("2", Plate.Dc(9, 100), InBank(bank)).Feed("brick/1", "fuzz-1").Feed("brick/2", "drive-3");
        Expect.Good(Rig("right").Check());
        Expect.Breaks(Rig("left").Check(), "ground-short");
    }

    [Fact]
    public void Isolation_not_stated_is_taken_as_none_and_shown()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100), supply => supply with { Isolated = null })
            .Load("fuzz-1", Plate.Dc(9, 3), PositiveGround).Load("drive-3", Plate.Dc(9, 12)).Feed("brick/1", "fuzz-1").Feed("brick/2", "drive-3").Check();
        Expect.Breaks(result, "ground-short");
        Assert.Equal(["brick"], Expect.Breaks(result, "figure-assumed", "assumed not isolated").Subjects);
    }

    [Fact]
    public void A_ground_that_is_not_given_is_told_only_where_a_return_is_shared()
    {
        static Load Unstated(Load load) => load with { Ground = null };
        Expect.Good(One(Plate.Dc(9, 100), Plate.Dc(9, 12), Unstated).Check());

        var shared = New().Load("drive-3", Plate.Dc(9, 12), Unstated).Load("chorus-1", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "drive-3", "chorus-1").Check();
        Assert.Equal(["drive-3"], Expect.Says(shared, "figure-assumed", Severity.Note, "Taken from practice, look once: the ground on the negative side for drive-3.").Subjects);
        Expect.Keeps(shared, "ground-short");
    }

    [Fact]
    public void A_load_that_wants_its_own_return_is_fine_alone_even_on_a_bank()
    {
        RigBuilder Rig() => New().Load("delay-2", Plate.Dc(9, 50), Isolate).Load("drive-3", Plate.Dc(9, 12)).Supply("brick")
            .Outlet("1", Plate.Dc(9, 100), InBank("left")).Outlet("2", Plate.Dc(9, 100), InBank("left")).Outlet("3", Plate.Dc(9, 100));
        Expect.Good(Rig().Feed("brick/1", "delay-2").Feed("brick/3", "drive-3").Check());

        var finding = Expect.Breaks(Rig().Feed("brick/1", "delay-2").Feed("brick/2", "drive-3").Check(), "return-not-its-own", "2 loads on one return");
        Assert.Equal("delay-2 needs an isolated outlet and shares the return of brick with drive-3.", finding.Message);
    }

    [Fact]
    public void Two_that_want_their_own_return_are_told_together()
    {
        var result = New().Load("delay-1", Plate.Dc(9, 20), Isolate).Load("delay-2", Plate.Dc(9, 20), Isolate)
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "delay-1", "delay-2").Check();
        var finding = Expect.Breaks(result, "return-not-its-own");
        Assert.Equal("delay-1 and delay-2 need isolated outlets and share the return of brick/1.", finding.Message);
        Assert.Equal("Give delay-1 and delay-2 an isolated outlet each.", finding.Remedy);
    }

    [Fact]
    public void A_digital_load_alone_on_its_return_is_fine() =>
        Expect.Good(Two(Plate.Dc(9, 100), Plate.Dc(9, 500)).Digital("delay-2", Plate.Dc(9, 210), Starts(300)).Load("drive-3", Plate.Dc(9, 12))
            .Feed("brick/1", "drive-3").Feed("brick/2", "delay-2").Check());

    [Fact]
    public void Digital_loads_on_one_return_are_told_with_whom_they_share_it()
    {
        RigBuilder Rig() => Two(Plate.Dc(9, 500), Plate.Dc(9, 500), NotIsolated).Digital("delay-1", Plate.Dc(9, 50), Starts(50)).Digital("delay-2", Plate.Dc(9, 50), Starts(50));
        Assert.Equal(
            "delay-1 and delay-2 are digital and share the return of brick: each may be heard in the others.",
            Expect.Breaks(Rig().Feed("brick/1", "delay-1").Feed("brick/2", "delay-2").Check(), "shared-return-digital").Message);

        var mixed = Rig().Load("drive-3", Plate.Dc(9, 12)).Feed("brick/1", "delay-1").Chain("brick/2", "delay-2", "drive-3").Check();
        var finding = Expect.Breaks(mixed, "shared-return-digital", "3 loads on one return");
        Assert.Equal("delay-1 and delay-2 are digital and share the return of brick with drive-3: a whine may come through.", finding.Message);
        Assert.Equal(["delay-1", "delay-2", "drive-3", "brick"], finding.Subjects);
    }

    [Fact]
    public void A_kind_that_does_not_tell_is_told_on_a_shared_return_only()
    {
        static Load Unknown(Load load) => load with { Kind = new LoadKind("tuner") };
        Expect.Good(One(Plate.Dc(9, 100), Plate.Dc(9, 12), Unknown).Check());
        var shared = New().Load("tuner-1", Plate.Dc(9, 30), Unknown).Load("drive-3", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "tuner-1", "drive-3").Check();
        Assert.Equal(["tuner-1"], Expect.CannotTell(shared, "shared-return-digital", "taken as analog").Subjects);
        Expect.Keeps(shared, Noise);
    }

    [Fact]
    public void Two_analog_loads_on_one_return_are_no_noise() =>
        Expect.Good(New().Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 12)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "drive-3", "chorus-1")
            .Check(rig => rig with { Signal = ["drive-3", "chorus-1", "amp"] }));

    /// <summary>Old circuits with positive ground are centre positive: common practice, no source.</summary>
    [Fact]
    public void The_ground_of_a_load_that_is_centre_positive_is_to_be_found_out_where_it_shares_a_return()
    {
        static Load Old(Load load) => load with { Polarity = Polarity.CentrePositive, Ground = null };
        RigBuilder Rig() => New().Load("fuzz-1", Plate.Dc(9, 3), Old).Load("drive-3", Plate.Dc(9, 12)).Lead("flip", LeadType.Reversing);
        Expect.Good(Rig().Supply("brick").Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100)).FeedOver("flip", "brick/1", "fuzz-1").Feed("brick/2", "drive-3").Check());

        var shared = Rig().Supply("brick", NotIsolated).Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100)).FeedOver("flip", "brick/1", "fuzz-1").Feed("brick/2", "drive-3").Check();
        Assert.Equal(["fuzz-1", "drive-3", "brick"], Expect.Says(shared, "ground-short", Severity.Unsure, "Which side is the ground of fuzz-1 is not known").Subjects);
    }

    [Fact]
    public void The_ground_of_a_load_on_a_reversing_lead_is_not_taken_for_granted()
    {
        static Outlet CentrePositive(Outlet outlet) => outlet with { Polarity = Polarity.CentrePositive };
        RigBuilder Rig(GroundSide? ground) => New().Load("drive-3", Plate.Dc(9, 12), load => load with { Ground = ground }).Load("chorus-1", Plate.Dc(9, 12)).Lead("flip", LeadType.Reversing)
            .Supply("brick", NotIsolated).Outlet("1", Plate.Dc(9, 100), CentrePositive).Outlet("2", Plate.Dc(9, 100)).FeedOver("flip", "brick/1", "drive-3").Feed("brick/2", "chorus-1");
        Expect.Says(Rig(null).Check(), "ground-short", Severity.Unsure, "drive-3");
        Expect.Good(Rig(GroundSide.Negative).Check());
    }

    [Fact]
    public void Loads_for_alternating_current_on_one_winding_are_harm_where_their_grounds_meet()
    {
        RigBuilder Rig() => New().Load("mixer-1", Plate.Ac(9, 100)).Load("mixer-2", Plate.Ac(9, 100)).Supply("lump").Outlet("1", Plate.Ac(9, 500)).Outlet("2", Plate.Ac(9, 500));
        RigBuilder Shared() => Rig().Chain("lump/1", "mixer-1", "mixer-2");
        Assert.Equal(Severity.Harm, Expect.Breaks(Shared().Check(rig => rig with { Signal = ["mixer-1", "mixer-2", "amp"] }), "ac-shared", "2 a.c. loads with joined grounds > 1 on one winding").Severity);
        Expect.Breaks(Shared().Check(rig => rig with { Signal = [] }), "ac-shared");
        Expect.Keeps(Shared().Check(rig => rig with { Signal = ["mixer-1", "amp"] }), "ac-shared");
        Expect.Good(Rig().Feed("lump/1", "mixer-1").Feed("lump/2", "mixer-2").Check(rig => rig with { Signal = [] }));
    }

    [Fact]
    public void Windings_that_are_not_known_to_be_isolated_count_as_one()
    {
        var result = New().Load("mixer-1", Plate.Ac(9, 100)).Load("mixer-2", Plate.Ac(9, 100)).Supply("lump", supply => supply with { Isolated = null })
            .Outlet("1", Plate.Ac(9, 500)).Outlet("2", Plate.Ac(9, 500)).Feed("lump/1", "mixer-1").Feed("lump/2", "mixer-2").Check(rig => rig with { Signal = [] });
        Assert.Contains("nothing says that its outlets are isolated", Expect.Breaks(result, "ac-shared").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_for_alternating_current_beside_direct_ones_on_one_return_is_to_be_found_out_where_grounds_meet()
    {
        static Rig Unnamed(Rig rig) => rig with { Signal = [] };
        static Outlet Isolated(Outlet outlet) => outlet with { Isolated = true };
        RigBuilder Rig(Func<Supply, Supply>? supply = null, Func<Outlet, Outlet>? outlet = null) => New().Load("mixer-1", Plate.Ac(9, 100))
            .Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 12)).Supply("brick", supply ?? NotIsolated)
            .Outlet("1", Plate.Ac(9, 500), outlet).Outlet("2", Plate.Dc(9, 100)).Outlet("3", Plate.Dc(9, 100))
            .Feed("brick/1", "mixer-1").Feed("brick/2", "drive-3").Feed("brick/3", "chorus-1");
        var finding = Expect.Says(
            Rig().Check(rig => rig with { Signal = ["mixer-1", "drive-3", "amp"] }),
            "ac-shared", Severity.Unsure, "mixer-1 takes alternating current and drive-3 takes direct current from outlets of brick that share a return");
        Assert.Equal("1 a.c. load beside 1 d.c. load on one return, grounds joined", finding.Working);
        Assert.Equal(["mixer-1", "drive-3", "brick"], finding.Subjects);
        Assert.Equal(["mixer-1", "drive-3", "chorus-1", "brick"], Expect.Breaks(Rig().Check(Unnamed), "ac-shared").Subjects);
        Expect.Says(Rig(static supply => supply with { Isolated = null }).Check(Unnamed), "ac-shared", Severity.Unsure, "nothing says that its outlets are isolated");

        Expect.Good(Rig(outlet: Isolated).Check(Unnamed));
        Expect.Keeps(Rig().Check(rig => rig with { Signal = ["drive-3", "chorus-1", "amp"] }), "ac-shared");
        Expect.Keeps(Rig().Check(rig => rig with { Signal = ["mixer-1", "amp"] }), "ac-shared");
    }

    [Fact]
    public void Outlets_joined_by_a_lead_are_one_return()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Dc(9, 100)).Load("drive-3", Plate.Dc(9, 12)).Load("chorus-1", Plate.Dc(9, 12)).Load("fuzz-1", Plate.Dc(9, 3), PositiveGround)
            .Parallel("brick/1 brick/2", "drive-3").Feed("brick/2", "fuzz-1").Feed("brick/1", "chorus-1").Check();
        Assert.Equal(["fuzz-1", "drive-3", "chorus-1", "brick/1", "brick/2"], Expect.Breaks(result, "ground-short").Subjects);
    }
}
