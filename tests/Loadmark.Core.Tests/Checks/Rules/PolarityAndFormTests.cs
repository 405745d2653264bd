using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

public sealed class PolarityAndFormTests
{
    private static readonly string[] Form = ["ac-into-dc", "dc-into-ac"];

    private static Load CentrePositive(Load load) => load with { Polarity = Polarity.CentrePositive };

    private static Outlet CentrePositive(Outlet outlet) => outlet with { Polarity = Polarity.CentrePositive };

    [Fact]
    public void A_reversing_lead_mends_one_load()
    {
        var rig = New().Load("fuzz-1", Plate.Dc(9, 3), CentrePositive).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Lead("flip", LeadType.Reversing);
        Expect.Good(rig.FeedOver("flip", "brick/1", "fuzz-1").Check());

        var straight = One(Plate.Dc(9, 100), Plate.Dc(9, 3), CentrePositive).Check();
        var finding = Expect.Breaks(straight, "reversed-polarity", "centre negative at the plug ≠ centre positive");
        Assert.Equal("drive-3 is centre positive; brick/1 is centre negative.", finding.Message);
        Assert.Equal("Use a reversing lead, for drive-3 alone.", finding.Remedy);
    }

    [Fact]
    public void A_reversing_lead_harms_a_load_that_needs_none()
    {
        var result = New().Load("drive-3", Plate.Dc(9, 12)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Lead("flip", LeadType.Reversing)
            .FeedOver("flip", "brick/1", "drive-3").Check();
        var finding = Expect.Breaks(result, "reversed-polarity", "centre positive at the plug ≠ centre negative");
        Assert.Contains("the lead flip reverses it", finding.Message, StringComparison.Ordinal);
        Assert.Equal("Use a lead that does not reverse, for drive-3 alone.", finding.Remedy);
    }

    [Fact]
    public void Both_centre_positive_is_fine() =>
        Expect.Good(New().Load("fuzz-1", Plate.Dc(9, 3), CentrePositive).Supply("brick").Outlet("1", Plate.Dc(9, 100), CentrePositive)
            .Feed("brick/1", "fuzz-1").Check());

    [Fact]
    public void On_a_mixed_chain_only_the_wrong_load_is_named()
    {
        var result = New().Load("fuzz-1", Plate.Dc(9, 3), CentrePositive).Load("drive-3", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "fuzz-1", "drive-3").Check();
        Assert.Equal(["fuzz-1", "brick/1"], Expect.Breaks(result, "reversed-polarity").Subjects);
    }

    [Fact]
    public void Outlets_of_unlike_polarity_in_series_do_not_add()
    {
        var result = New().Load("preamp-2", Plate.Dc(18, 50)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100), CentrePositive)
            .Series("brick/1 brick/2", "preamp-2").Check();
        Expect.Breaks(result, "reversed-polarity", "brick/1 centre negative ≠ brick/2 centre positive");
    }

    [Fact]
    public void Polarity_that_nobody_gives_is_assumed_aloud()
    {
        var result = One(Plate.Dc(9, 100), Plate.Dc(9, 12), load => load with { Polarity = null }).Check();
        Expect.Keeps(result, "reversed-polarity");
        Assert.Equal("Taken from practice, look once: centre negative for drive-3.", Expect.Breaks(result, "figure-assumed", "assumed centre negative").Message);

        var wrong = New().Load("drive-3", Plate.Dc(9, 12), load => load with { Polarity = null })
            .Supply("brick").Outlet("1", Plate.Dc(9, 100), CentrePositive).Feed("brick/1", "drive-3").Check();
        Assert.Contains("drive-3 is centre negative (assumed)", Expect.Breaks(wrong, "reversed-polarity").Message, StringComparison.Ordinal);
    }

    /// <summary>Centre negative is usual for ordinary pedals of 9 V and for supplies made for them: common practice, no source.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(12)]
    [InlineData(18)]
    [InlineData(24)]
    public void Elsewhere_polarity_is_never_taken_for_granted(int volts)
    {
        var load = One(Plate.Dc(volts, 500), Plate.Dc(volts, 12), load => load with { Polarity = null }).Check();
        Assert.Equal(["drive-3"], Expect.Says(load, "reversed-polarity", Severity.Unsure, "The polarity of drive-3 is not known").Subjects);
        Assert.Equal(Severity.Unsure, load.Verdict);

        var outlet = Two(Plate.Dc(volts, 500), Plate.Dc(9, 100)).Load("drive-3", Plate.Dc(volts, 12)).Feed("brick/1", "drive-3");
        Expect.Good(outlet.Check());
        var bare = New().Load("drive-3", Plate.Dc(volts, 12)).Supply("brick").Outlet("1", Plate.Dc(volts, 500), one => one with { Polarity = null }).Outlet("2", Plate.Dc(9, 100)).Feed("brick/1", "drive-3");
        Assert.Equal(["brick/1", "drive-3"], Expect.Says(bare.Check(), "reversed-polarity", Severity.Unsure, "The polarity of brick/1 is not known").Subjects);
    }

    [Fact]
    public void The_polarity_of_an_adaptor_without_a_drawing_is_to_be_found_out_that_of_a_brick_is_practice()
    {
        static Outlet Unmarked(Outlet outlet) => outlet with { Polarity = null };
        var adaptor = New().Load("drive-3", Plate.Dc(9, 12)).Supply("wall").Outlet("1", Plate.Dc(9, 500), Unmarked).Feed("wall/1", "drive-3").Check();
        Expect.Says(adaptor, "reversed-polarity", Severity.Unsure, "The polarity of wall/1 is not known: the other way round it can destroy drive-3.");

        var brick = New().Load("drive-3", Plate.Dc(9, 12)).Supply("brick").Outlet("1", Plate.Dc(9, 500), Unmarked).Outlet("2", Plate.Dc(9, 500), Unmarked).Feed("brick/1", "drive-3").Check();
        Expect.Says(brick, "figure-assumed", Severity.Note, "centre negative for brick/1");
        Assert.Equal(Severity.Note, brick.Verdict);
    }

    [Theory]
    [InlineData(9, Severity.Note)]
    [InlineData(12, Severity.Unsure)]
    [InlineData(18, Severity.Unsure)]
    public void The_kind_of_current_is_taken_for_granted_up_to_9_V(int volts, Severity verdict)
    {
        var bare = new Nameplate($"{volts}V") { Modes = [Plate.Mode(volts, volts, 100)] };
        static Outlet NoPolarity(Outlet outlet) => outlet with { Polarity = null };
        var result = New().Load("drive-3", Plate.Dc(volts, 12)).Supply("brick").Outlet("1", bare, NoPolarity).Outlet("2", Plate.Dc(9, 100)).Feed("brick/1", "drive-3").Check();
        Assert.Equal(verdict, result.Verdict);
        if (verdict == Severity.Unsure)
            Expect.Says(result, "ac-into-dc", Severity.Unsure, "Whether brick/1 gives direct or alternating current is not known");

        // A printed polarity belongs to direct current.
        Expect.Good(New().Load("drive-3", Plate.Dc(volts, 12)).Supply("brick").Outlet("1", bare).Feed("brick/1", "drive-3").Check());
    }

    [Fact]
    public void What_a_load_is_made_for_is_to_be_found_out_where_it_is_no_ordinary_pedal()
    {
        var bare = new Nameplate("12V 100mA") { Modes = [Plate.Mode(12, 12, 100)] };
        static Load NoPolarity(Load load) => load with { Polarity = null };
        Expect.Says(One(Plate.Dc(12, 500), bare, NoPolarity).Check(), "dc-into-ac", Severity.Unsure, "Whether drive-3 is made for direct or alternating current is not known");
        Expect.Says(One(Plate.Ac(12, 500), bare, NoPolarity).Check(), "ac-into-dc", Severity.Unsure, "whether drive-3 is made for that is not known");
    }

    /// <summary>A polarity, a form or a ground that stands on a label in words that were not understood must not be taken for granted.</summary>
    [Theory]
    [InlineData(LabelTopics.Polarity, "reversed-polarity")]
    [InlineData(LabelTopics.Form, "dc-into-ac")]
    public void What_a_label_says_in_words_that_were_not_understood_stops_the_default(LabelTopics topic, string rule)
    {
        var odd = new Nameplate("9V 12mA, something") { Modes = [Plate.Mode(9, 9, 12)], NotUnderstood = topic };
        var result = One(Plate.Dc(9, 500), odd, load => load with { Polarity = null }).Check();
        Assert.Equal(Severity.Unsure, Expect.Breaks(result, rule).Severity);
    }

    [Fact]
    public void A_ground_in_words_that_were_not_understood_is_to_be_found_out_where_a_return_is_shared()
    {
        var odd = new Nameplate("9V DC 12mA, something") { Form = Field<SupplyForm>.Read(SupplyForm.Direct, default), Modes = [Plate.Mode(9, 9, 12)], NotUnderstood = LabelTopics.Ground };
        var result = New().Load("fuzz-1", odd, load => load with { Ground = null }).Load("drive-3", Plate.Dc(9, 12)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "fuzz-1", "drive-3").Check();
        Expect.Says(result, "ground-short", Severity.Unsure, "Which side is the ground of fuzz-1 is not known");
    }

    [Fact]
    public void A_load_for_either_kind_of_current_takes_both_and_either_way_round()
    {
        var either = new Nameplate("12V AC/DC 100mA") { Form = Field<SupplyForm>.Ambiguous([SupplyForm.Alternating, SupplyForm.Direct], default), Modes = [Plate.Mode(12, 12, 100)] };
        static Load NoPolarity(Load load) => load with { Polarity = null };
        Expect.Good(One(Plate.Dc(12, 500), either, NoPolarity).Check());
        Expect.Good(One(Plate.Ac(12, 500), either, NoPolarity).Check());
    }

    [Fact]
    public void Alternating_current_has_no_polarity()
    {
        var rig = New().Load("preamp-1", Plate.Ac(9, 500), CentrePositive).Supply("brick").Outlet("1", Plate.Ac(9, 1000)).Feed("brick/1", "preamp-1");
        Expect.Good(rig.Check());

        // Nor is a missing one worth a word there.
        var unknown = New().Load("preamp-1", Plate.Ac(9, 500), load => load with { Polarity = null })
            .Supply("brick").Outlet("1", Plate.Ac(9, 1000), outlet => outlet with { Polarity = null }).Feed("brick/1", "preamp-1");
        Expect.Good(unknown.Check());
    }

    [Fact]
    public void The_wrong_kind_of_current_is_harm_either_way_and_says_nothing_of_polarity()
    {
        var ac = One(Plate.Ac(9, 500), Plate.Dc(9, 12), CentrePositive).Check();
        Assert.Equal("Feed drive-3 from a d.c. outlet of 9 V.", Expect.Breaks(ac, "ac-into-dc", "a.c. ~ into d.c. ⎓").Remedy);
        Expect.Keeps(ac, "reversed-polarity", "dc-into-ac");

        var dc = One(Plate.Dc(9, 500), Plate.Ac(9, 12), CentrePositive).Check();
        Expect.Breaks(dc, "dc-into-ac", "d.c. ⎓ into a.c. ~");
        Expect.Keeps(dc, "reversed-polarity", "ac-into-dc");
    }

    [Fact]
    public void A_pair_in_series_alternates_when_one_of_it_does()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Ac(9, 100)).Load("preamp-2", Plate.Dc(18, 50)).Series("brick/1 brick/2", "preamp-2").Check();
        Expect.Breaks(result, "ac-into-dc");
    }

    [Fact]
    public void Where_neither_is_printed_direct_current_is_taken_and_told_once()
    {
        var bare = new Nameplate("9V 12mA") { Modes = [Plate.Mode(9, 9, 12)] };
        static Load NoPolarity(Load load) => load with { Polarity = null };
        var result = New().Load("drive-3", bare, NoPolarity).Load("chorus-1", bare, NoPolarity).Supply("brick").Outlet("1", bare).Chain("brick/1", "drive-3", "chorus-1").Check();
        Expect.Keeps(result, Form);
        var note = Expect.Says(result, "figure-assumed", Severity.Note, "direct current for drive-3 and chorus-1");
        Assert.Equal(["drive-3", "chorus-1"], note.Subjects);

        var alternating = New().Load("drive-3", bare, NoPolarity).Supply("brick").Outlet("1", Plate.Ac(9, 100)).Feed("brick/1", "drive-3").Check();
        Assert.Contains("assumed", Expect.Breaks(alternating, "ac-into-dc").Message, StringComparison.Ordinal);
        var direct = New().Load("preamp-1", Plate.Ac(9, 10)).Supply("brick").Outlet("1", bare, outlet => outlet with { Polarity = null }).Outlet("2", bare).Feed("brick/1", "preamp-1").Check();
        Assert.Contains("assumed", Expect.Breaks(direct, "dc-into-ac").Message, StringComparison.Ordinal);
    }
}
