using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Ratings;

public sealed class LabelledOutletsTests
{
    [Theory]
    [InlineData("9V 2A")]
    [InlineData("9V 500mA; 12V 400mA")]
    [InlineData("INPUT 100-240V~ OUTPUT 9V 45W")]
    [InlineData("2A")]
    public void One_output_is_one_outlet(string label)
    {
        var outlet = Assert.Single(LabelledOutlets.Of(NameplateReader.Read(label), out var problem)!.Value);
        Assert.Equal(("1", "", null), (outlet.Id, outlet.Label.Text, problem));
    }

    [Theory]
    [InlineData(null, "nothing is said of what is printed on it")]
    [InlineData(" ", "nothing is said of what is printed on it")]
    [InlineData("INPUT 100-240V~ 50/60Hz 0.6A", "its label says nothing of what it gives")]
    [InlineData("the black one", "its label says nothing of what it gives")]
    public void A_label_that_does_not_tell_says_why(string? label, string because)
    {
        Assert.Null(LabelledOutlets.Of(label is null ? null : NameplateReader.Read(label), out var problem));
        Assert.Equal(because, problem);
    }

    [Fact]
    public void Figures_for_each_outlet_do_not_tell_how_many_there_are()
    {
        Assert.Null(LabelledOutlets.Of(new Nameplate("9V 100mA each") { EachOutlet = true, Modes = [Mode(9, 0.1m)] }, out var problem));
        Assert.Equal("its label says what each outlet gives and not how many there are", problem);
    }

    [Fact]
    public void Printed_ids_are_the_outlets_ids_and_their_figures_stand_beside_them()
    {
        var supply = Of(Group("1-4", 4, Mode(9, 0.1m)), Group("5", 1, Mode(9, 0.5m), Mode(12, 0.4m)), Group("A-B", 2, Mode(18, 0.1m)));
        Assert.Equal(["1", "2", "3", "4", "5", "A", "B"], supply.Outlets.Select(outlet => outlet.Id));
        Assert.Equal([new OutletMode(QuantityRange<Volt>.Single(new Volts(9)), new Figure<Amps>(new Amps(0.1m), Origin.Stated), null)], OutletRating.Of(supply, supply.Outlets[3]).Modes);
        Assert.Equal(2, OutletRating.Of(supply, supply.Outlets[4]).Modes.Length);
        Assert.Equal(0.1m, OutletRating.Of(supply, supply.Outlets[6]).Modes[0].Limit!.Value.Value.Value);
        Assert.True(LabelledOutlets.AreOf(supply));
    }

    [Fact]
    public void Where_only_counts_are_printed_outlets_are_numbered() =>
        Assert.Equal(["1", "2", "3", "7", "8", "9"], Of(Group(null, 3, Mode(9, 0.1m)), Group("7", 1, Mode(9, 0.5m)), Group(null, 2, Mode(12, 0.1m))).Outlets.Select(outlet => outlet.Id));

    [Fact]
    public void A_name_that_is_printed_twice_tells_nothing()
    {
        Assert.Null(LabelledOutlets.Of(Label(Group("1-4", 4, Mode(9, 0.1m)), Group("4-5", 2, Mode(12, 0.1m))), out var problem));
        Assert.Equal("its label names the outlet 4 twice", problem);
    }

    [Fact]
    public void Outlets_of_the_label_follow_it_and_listed_ones_do_not()
    {
        var adaptor = new Supply { Id = "s", Label = NameplateReader.Read("9V 2A"), Outlets = LabelledOutlets.Of(NameplateReader.Read("9V 2A"), out _)!.Value };
        var four = Label(Group("1-4", 4, Mode(9, 0.1m)));
        Assert.Equal(4, LabelledOutlets.After(adaptor, four).Count);
        Assert.Equal(adaptor.Outlets, LabelledOutlets.After(adaptor, NameplateReader.Read("INPUT 230V~")));
        var listed = adaptor with { Outlets = [new Outlet { Id = "x", Label = NameplateReader.Read("9V 1A") }] };
        Assert.False(LabelledOutlets.AreOf(listed));
        Assert.Equal(listed.Outlets, LabelledOutlets.After(listed, four));
    }

    private static Supply Of(params ReadOnlySpan<PrintedOutlets> groups)
    {
        var label = Label(groups);
        return new Supply { Id = "brick", Label = label, Outlets = LabelledOutlets.Of(label, out _)!.Value };
    }

    private static Nameplate Label(params ReadOnlySpan<PrintedOutlets> groups) => new("as printed") { Outlets = [.. groups] };

    private static PrintedOutlets Group(string? ids, int count, params ImmutableArray<Mode> modes) => new(ids, count, modes, new Place(0, 1));

    private static Mode Mode(decimal volts, decimal amps) =>
        new(QuantityRange<Volt>.Single(new Volts(volts)), new Figure<Amps>(new Amps(amps), Origin.Stated), null);
}
