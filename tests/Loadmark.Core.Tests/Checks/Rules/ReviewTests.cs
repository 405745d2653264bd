using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Cases that an independent reading of the rules brought up, each from labels as they are typed.</summary>
public sealed class ReviewTests
{
    [Fact]
    public void A_load_for_either_kind_of_current_takes_both()
    {
        Assert.DoesNotContain(Check("9V AC 500mA", "9V AC/DC 100mA").Findings, finding => finding.Severity == Severity.Harm);
        Assert.DoesNotContain(Check("9V DC 500mA", "9V AC/DC 100mA").Findings, finding => finding.Severity == Severity.Harm);
        Assert.Contains(Check("9V AC 500mA", "9V DC 100mA").Findings, finding => finding.Rule == "ac-into-dc");
    }

    [Fact]
    public void A_current_that_can_be_read_two_ways_counts_with_the_higher()
    {
        var result = Check("9V DC 500mA", "9V DC 1,000 mA");
        Assert.Contains(result.Findings, finding => finding.Rule == "outlet-overload");
        Assert.Contains(result.Findings, finding => finding.Rule == "figure-assumed" && finding.Message.Contains("1 mA or 1 A: taken as 1 A", StringComparison.Ordinal));
    }

    [Fact]
    public void An_outlet_whose_limit_is_not_printed_makes_a_margin()
    {
        var finding = Assert.Single(Check("9V DC", "9V DC 100mA").Findings, finding => finding.Message.StartsWith("The limit", StringComparison.Ordinal));
        Assert.Equal("The limit of s/1 is not known; it is enough only if it gives 100 mA or more.", finding.Message);
    }

    [Fact]
    public void A_digital_load_measured_running_may_boot_at_its_rating()
    {
        var load = new Load { Id = "delay-2", Kind = new LoadKind("digital"), Label = NameplateReader.Read("9V DC 300mA"), Run = new Amps(0.1m) };
        Assert.Contains(Check("9V DC 150mA", load).Findings, finding => finding.Rule == "figure-assumed" && finding.Working == "300 mA > 150 mA");
        Assert.DoesNotContain(Check("9V DC 350mA", load).Findings, finding => finding.Working.StartsWith("300 mA", StringComparison.Ordinal));
        Assert.DoesNotContain(Check("9V DC 150mA", load with { Start = new TimedCurrent(new Amps(0.14m), null) }).Findings, finding => finding.Working == "300 mA > 150 mA");
    }

    [Theory]
    [InlineData("tube-style overdrive", LoadClass.AnalogDrive)]
    [InlineData("tube preamp", LoadClass.Valve)]
    [InlineData("valve", LoadClass.Valve)]
    public void What_imitates_a_valve_has_no_heater(string kind, LoadClass expected) => Assert.Equal(expected, new LoadKind(kind).Class);

    [Theory]
    [InlineData("9V DC 500mA unregulated", true)]
    [InlineData("9V DC 500mA regulated", false)]
    public void What_a_label_says_of_regulation_counts(string outlet, bool isUnregulated)
    {
        var result = Check(outlet, "9V DC 100mA");
        Assert.Equal(isUnregulated, result.Findings.Items.Any(finding => finding.Rule == "unregulated"));
        Assert.DoesNotContain(result.Untold, untold => untold.Rule == "unregulated");
    }

    [Fact]
    public void A_slip_in_a_tag_of_the_signal_path_is_told()
    {
        var rig = Rig("9V DC 500mA", new Load { Id = "drive-3", Label = NameplateReader.Read("9V DC 12mA") }) with { Signal = ["drive3", "amp"] };
        Assert.Contains(NameplateCheck.Of(rig).Findings, finding => finding.Rule == "figure-conflict" && finding.Message == "'drive3' in the signal path is no load of this rig; is drive-3 meant?");
    }

    [Fact]
    public void Unequal_outlets_side_by_side_are_harm_even_where_a_voltage_is_not_known()
    {
        var rig = Rig("500mA centre negative", new Load { Id = "A", Label = NameplateReader.Read("9V DC 12mA") });
        var supply = rig.Supplies[0] with { Outlets = [.. rig.Supplies[0].Outlets, new Outlet { Id = "2", Label = NameplateReader.Read("9V DC 500mA centre positive") }] };
        rig = rig with { Supplies = [supply], Wired = (ValueList<Feed>)[new Feed { From = [new("s", "1"), new("s", "2")], Joined = Joint.Parallel, To = ["A"] }] };
        Assert.Contains(NameplateCheck.Of(rig).Findings, finding => finding.Rule == "parallel-unequal");
    }

    [Fact]
    public void A_straight_lead_without_a_count_may_be_used_again()
    {
        var rig = Rig("9V DC 500mA", new Load { Id = "A", Label = NameplateReader.Read("9V DC 12mA") });
        var feeds = new[] { "1", "2" }.Select(id => new Feed { From = [new OutletRef("s", id)], Lead = "blue", To = [id == "1" ? "A" : "B"] });
        rig = rig with
        {
            Loads = [.. rig.Loads, new Load { Id = "B", Label = NameplateReader.Read("9V DC 12mA") }],
            Supplies = [rig.Supplies[0] with { Outlets = [.. rig.Supplies[0].Outlets, new Outlet { Id = "2", Label = NameplateReader.Read("9V DC 500mA") }] }],
            Leads = [new Lead { Id = "blue" }],
            Wired = new ValueList<Feed>([.. feeds]),
        };
        Assert.DoesNotContain(NameplateCheck.Of(rig).Findings, finding => finding.Rule == "lead-short-of-plugs");
        Assert.Contains(NameplateCheck.Of(rig with { Leads = [new Lead { Id = "blue", Count = 1 }] }).Findings, finding => finding.Rule == "lead-short-of-plugs");
    }

    [Fact]
    public void A_lead_may_end_in_another_plug()
    {
        var rig = Rig("9V DC 500mA 5.5x2.1", new Load { Id = "A", Label = NameplateReader.Read("9V DC 12mA 5.5x2.5") });
        Assert.Contains(NameplateCheck.Of(rig).Findings, finding => finding.Rule == "plug-mismatch");
        var lead = new Lead { Id = "wide", Plug = Plug.WidePin };
        rig = rig with { Leads = [lead], Wired = (ValueList<Feed>)[rig.Wired!.Value[0] with { Lead = "wide" }] };
        Assert.DoesNotContain(NameplateCheck.Of(rig).Findings, finding => finding.Rule == "plug-mismatch");
    }

    private static CheckResult Check(string outlet, string load) => Check(outlet, new Load { Id = "A", Label = NameplateReader.Read(load) });

    private static CheckResult Check(string outlet, Load load) => NameplateCheck.Of(Rig(outlet, load));

    private static Rig Rig(string outlet, Load load) => new()
    {
        Name = "r",
        Loads = [load],
        Supplies = [new Supply { Id = "s", Isolated = true, Outlets = [new Outlet { Id = "1", Label = NameplateReader.Read(outlet) }] }],
        Wired = (ValueList<Feed>)[new Feed { From = [new OutletRef("s", "1")], To = [load.Id] }],
    };
}
