using Loadmark.Core.Gear;

namespace Loadmark.Core.Tests.Gear;

public sealed class GearTests
{
    [Theory]
    [InlineData("analog drive", LoadClass.AnalogDrive, false)]
    [InlineData("Overdrive", LoadClass.AnalogDrive, false)]
    [InlineData("analogue chorus", LoadClass.AnalogModulation, false)]
    [InlineData("complex analog delay", LoadClass.ComplexAnalog, false)]
    [InlineData("digital delay", LoadClass.Digital, true)]
    [InlineData("large digital", LoadClass.LargeDigital, true)]
    [InlineData("valve preamp", LoadClass.Valve, false)]
    [InlineData("tube drive", LoadClass.Valve, false)]
    [InlineData("delay", LoadClass.Unknown, null)] // analog or digital: the word does not tell
    [InlineData("tuner", LoadClass.Unknown, null)]
    [InlineData("overdriven tuner", LoadClass.Unknown, null)]
    public void A_kind_is_classed_by_its_words(string text, LoadClass expected, bool? isDigital)
    {
        Assert.Equal(expected, new LoadKind(text).Class);
        Assert.Equal(isDigital, new LoadKind(text).IsDigital);
    }

    [Fact]
    public void Every_kind_that_completion_offers_has_a_class() =>
        Assert.All(LoadKind.Known, kind => Assert.NotEqual(LoadClass.Unknown, new LoadKind(kind).Class));

    [Fact]
    public void Every_known_class_has_figures_whose_stand_in_is_in_their_range()
    {
        // The figures are those of the task (common practice, no source).
        Assert.Equal(new ClassDraw(new Amps(0.004m), new Amps(0.02m)), ClassDraw.Of(LoadClass.AnalogDrive));
        Assert.Equal(new ClassDraw(new Amps(0.02m), new Amps(0.05m)), ClassDraw.Of(LoadClass.AnalogModulation));
        Assert.Equal(new ClassDraw(new Amps(0.1m), new Amps(0.3m)), ClassDraw.Of(LoadClass.Digital));
        Assert.Null(ClassDraw.Of(LoadClass.Unknown));
        foreach (var one in Enum.GetValues<LoadClass>())
        {
            if (ClassDraw.Of(one) is { } figures)
                Assert.True(figures.StandIn >= figures.Low && (figures.High is null || figures.StandIn <= figures.High.Value));
        }
    }

    [Fact]
    public void An_assumed_figure_says_so() => Assert.Equal("9 V (assumed)", new Figure<Volts>(new Volts(9), Origin.Assumed).ToString());
}
