using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Ratings;

public sealed class WiredRigTests
{
    private static RigBuilder Rig() => One(Plate.Dc(9, 100), Plate.Dc(9, 12));

    [Fact]
    public void A_rig_that_refers_to_what_it_does_not_have_is_the_callers_mistake()
    {
        Assert.Throws<InvalidRigException>(() => Rig().Feed("brick/9", "drive-3").Check());
        Assert.Throws<InvalidRigException>(() => Rig().Feed("brick/1", "drive-99").Check());
        Assert.Throws<InvalidRigException>(() => Rig().FeedOver("no lead", "brick/1", "drive-3").Check());
        Assert.Throws<InvalidRigException>(() => Rig().Load("drive-3", null).Check());
        Assert.Throws<InvalidRigException>(() => Rig().Outlet("1", Plate.Dc(9, 100)).Check());
        Assert.Throws<InvalidRigException>(() => Rig().Lead("one", LeadType.Straight).Lead("one", LeadType.Straight).Check());
        Assert.Throws<InvalidRigException>(() => New().Load("A", null).Supply("brick").Outlet("1", Plate.Dc(9, 100)).FeedAt("brick/1", 12, "A").Check());
        Assert.Throws<InvalidRigException>(() => Rig().Feed("brick/1", lead: null, at: null, Joint.Series, "drive-3").Check());
    }

    [Theory]
    [InlineData(9, 300, 9)] // the first that suits
    [InlineData(12, 300, 12)]
    [InlineData(18, 100, 18)]
    [InlineData(5, 100, 9)] // none suits: the first
    public void Where_the_setting_is_not_given_the_mode_that_suits_is_taken(int volts, int draw, int setting)
    {
        var rig = WiredRig.Of(New().Load("A", Plate.Dc(volts, draw)).Supply("brick").Outlet("5", Plate.Modes((9, 500), (12, 400), (18, 250))).Feed("brick/5", "A").Build());
        Assert.Equal(new Volts(setting), rig.Outlets[0].Volts);
        Assert.False(rig.Outlets[0].SettingIsStated);
    }

    [Fact]
    public void A_mode_that_bears_the_loads_is_taken_before_one_that_does_not()
    {
        var rig = WiredRig.Of(New().Load("A", Plate.Range(9, 12, 400)).Supply("brick").Outlet("5", Plate.Modes((9, 300), (12, 500))).Feed("brick/5", "A").Build());
        Assert.Equal(new Volts(12), rig.Outlets[0].Volts);
    }

    [Fact]
    public void A_printed_range_is_set_to_what_all_loads_take()
    {
        var rig = WiredRig.Of(New().Load("A", Plate.Range(9, 15, 10)).Load("B", Plate.Range(12, 18, 10)).Supply("brick").Outlet("1", Plate.Range(9, 18, 500)).Chain("brick/1", "A", "B").Build());
        Assert.Equal(new Volts(12), rig.Outlets[0].Volts);
    }

    [Fact]
    public void Returns_list_each_load_once_and_only_those_that_carry_loads()
    {
        var rig = WiredRig.Of(New().Load("A", Plate.Dc(9, 10)).Load("B", Plate.Dc(9, 10)).Supply("one", NotIsolated).Outlet("1", Plate.Dc(9, 100)).Outlet("2", Plate.Dc(9, 100))
            .Supply("two").Outlet("1", Plate.Dc(9, 100)).Feed("one/1", "A").Feed("one/2", "B", "A").Build());
        var group = Assert.Single(rig.Returns);
        Assert.Equal(["A", "B"], group.Loads.Select(load => load.Id));
        Assert.Equal(["one"], group.Names);
        Assert.Empty(rig.Outlets[2].ReturnGroup.Loads);
    }

    [Fact]
    public void A_row_of_joined_outlets_is_one_return()
    {
        var rig = New().Supply("brick");
        for (var number = 1; number <= 40; number++)
            rig.Outlet($"{number}", Plate.Dc(9, 100)).Load($"L-{number}", Plate.Dc(9, 10));
        for (var number = 1; number < 40; number++)
            rig.Parallel($"brick/{number} brick/{number + 1}", $"L-{number}");
        var group = Assert.Single(WiredRig.Of(rig.Build()).Returns);
        Assert.Equal(39, group.Loads.Count);
        Assert.Equal(40, group.Names.Count);
    }
}
