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
        var rig = New().Load("FZ-01", Plate.Dc(9, 3), CentrePositive).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Lead("flip", LeadType.Reversing);
        Expect.Good(rig.FeedOver("flip", "brick/1", "FZ-01").Check());

        var straight = One(Plate.Dc(9, 100), Plate.Dc(9, 3), CentrePositive).Check();
        var finding = Expect.Breaks(straight, "reversed-polarity", "centre negative at the plug ≠ centre positive");
        Assert.Equal("OD-03 is centre positive; brick/1 is centre negative.", finding.Message);
        Assert.Equal("Use a reversing lead, for OD-03 alone.", finding.Remedy);
    }

    [Fact]
    public void A_reversing_lead_harms_a_load_that_needs_none()
    {
        var result = New().Load("OD-03", Plate.Dc(9, 12)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Lead("flip", LeadType.Reversing)
            .FeedOver("flip", "brick/1", "OD-03").Check();
        var finding = Expect.Breaks(result, "reversed-polarity", "centre positive at the plug ≠ centre negative");
        Assert.Contains("the lead flip reverses it", finding.Message, StringComparison.Ordinal);
        Assert.Equal("Use a lead that does not reverse, for OD-03 alone.", finding.Remedy);
    }

    [Fact]
    public void Both_centre_positive_is_fine() =>
        Expect.Good(New().Load("FZ-01", Plate.Dc(9, 3), CentrePositive).Supply("brick").Outlet("1", Plate.Dc(9, 100), CentrePositive)
            .Feed("brick/1", "FZ-01").Check());

    [Fact]
    public void On_a_mixed_chain_only_the_wrong_load_is_named()
    {
        var result = New().Load("FZ-01", Plate.Dc(9, 3), CentrePositive).Load("OD-03", Plate.Dc(9, 12))
            .Supply("brick").Outlet("1", Plate.Dc(9, 100)).Chain("brick/1", "FZ-01", "OD-03").Check();
        Assert.Equal(["FZ-01", "brick/1"], Expect.Breaks(result, "reversed-polarity").Subjects);
    }

    [Fact]
    public void Outlets_of_unlike_polarity_in_series_do_not_add()
    {
        var result = New().Load("PR-02", Plate.Dc(18, 50)).Supply("brick").Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100), CentrePositive)
            .Series("brick/1 brick/2", "PR-02").Check();
        Expect.Breaks(result, "reversed-polarity", "brick/1 centre negative ≠ brick/2 centre positive");
    }

    [Fact]
    public void Polarity_that_nobody_gives_is_assumed_aloud()
    {
        var result = One(Plate.Dc(9, 100), Plate.Dc(9, 12), load => load with { Polarity = null }).Check();
        Expect.Keeps(result, "reversed-polarity");
        Assert.Equal("The polarity of OD-03 is not known: taken as centre negative.", Expect.Breaks(result, "figure-assumed", "assumed centre negative").Message);

        var wrong = New().Load("OD-03", Plate.Dc(9, 12), load => load with { Polarity = null })
            .Supply("brick").Outlet("1", Plate.Dc(9, 100), CentrePositive).Feed("brick/1", "OD-03").Check();
        Assert.Contains("OD-03 is centre negative (assumed)", Expect.Breaks(wrong, "reversed-polarity").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Alternating_current_has_no_polarity()
    {
        var rig = New().Load("PR-01", Plate.Ac(9, 500), CentrePositive).Supply("brick").Outlet("1", Plate.Ac(9, 1000)).Feed("brick/1", "PR-01");
        Expect.Good(rig.Check());

        // Nor is a missing one worth a word there.
        var unknown = New().Load("PR-01", Plate.Ac(9, 500), load => load with { Polarity = null })
            .Supply("brick").Outlet("1", Plate.Ac(9, 1000), outlet => outlet with { Polarity = null }).Feed("brick/1", "PR-01");
        Expect.Good(unknown.Check());
    }

    [Fact]
    public void The_wrong_kind_of_current_is_harm_either_way_and_says_nothing_of_polarity()
    {
        var ac = One(Plate.Ac(9, 500), Plate.Dc(9, 12), CentrePositive).Check();
        Assert.Equal("Feed OD-03 from a d.c. outlet of 9 V.", Expect.Breaks(ac, "ac-into-dc", "a.c. ~ into d.c. ⎓").Remedy);
        Expect.Keeps(ac, "reversed-polarity", "dc-into-ac");

        var dc = One(Plate.Dc(9, 500), Plate.Ac(9, 12), CentrePositive).Check();
        Expect.Breaks(dc, "dc-into-ac", "d.c. ⎓ into a.c. ~");
        Expect.Keeps(dc, "reversed-polarity", "ac-into-dc");
    }

    [Fact]
    public void A_pair_in_series_alternates_when_one_of_it_does()
    {
        var result = Two(Plate.Dc(9, 100), Plate.Ac(9, 100)).Load("PR-02", Plate.Dc(18, 50)).Series("brick/1 brick/2", "PR-02").Check();
        Expect.Breaks(result, "ac-into-dc");
    }

    [Fact]
    public void Where_neither_is_printed_direct_current_is_taken_and_told_once()
    {
        var bare = new Nameplate("9V 12mA") { Modes = [Plate.Mode(9, 9, 12)] };
        var result = New().Load("OD-03", bare).Load("CH-01", bare).Supply("brick").Outlet("1", bare).Chain("brick/1", "OD-03", "CH-01").Check();
        Expect.Keeps(result, Form);
        var untold = Expect.CannotTell(result, "ac-into-dc", "OD-03, CH-01 and brick/1");
        Assert.Equal(["OD-03", "CH-01", "brick/1"], untold.Subjects);

        var alternating = New().Load("OD-03", bare).Supply("brick").Outlet("1", Plate.Ac(9, 100)).Feed("brick/1", "OD-03").Check();
        Assert.Contains("assumed", Expect.Breaks(alternating, "ac-into-dc").Message, StringComparison.Ordinal);
        var direct = New().Load("PR-01", Plate.Ac(9, 10)).Supply("brick").Outlet("1", bare).Feed("brick/1", "PR-01").Check();
        Assert.Contains("assumed", Expect.Breaks(direct, "dc-into-ac").Message, StringComparison.Ordinal);
    }
}
