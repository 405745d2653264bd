using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Nominal voltages and the tolerance of 10 % are those of IEC 60038 (values from memory).</summary>
public sealed class MainsMismatchTests
{
    private static Core.Checks.CheckResult Check(Nameplate? supply, decimal? volts, decimal? hertz = 50) =>
        New().Supply("wall", wall => wall with { Mains = supply })
            .Check(rig => rig with { Mains = volts is { } given ? new RigMains(new Volts(given), hertz is { } at ? new Frequency(at) : null) : null });

    [Theory]
    [InlineData(100, 240, 100)]
    [InlineData(100, 240, 120)]
    [InlineData(100, 240, 230)]
    [InlineData(220, 240, 230)]
    [InlineData(230, 230, 240)]
    [InlineData(230, 230, 253)] // exactly 10 % over
    [InlineData(230, 230, 207)] // exactly 10 % under
    [InlineData(220, 220, 230)]
    public void Mains_within_the_printed_range_and_its_tolerance_is_fine(int low, int high, int volts) => Expect.Good(Check(Plate.Mains(low, high), volts));

    [Theory]
    [InlineData(120, 230, "230 V > 1.10 × 120 V = 132 V")]
    [InlineData(230, 120, "120 V < 0.90 × 230 V = 207 V")]
    [InlineData(230, 254, "254 V > 1.10 × 230 V = 253 V")]
    [InlineData(230, 206, "206 V < 0.90 × 230 V = 207 V")]
    [InlineData(100, 120, "120 V > 1.10 × 100 V = 110 V")]
    public void Other_mains_is_harm(int printed, int volts, string working)
    {
        var finding = Expect.Breaks(Check(Plate.Mains(printed, printed), volts), "mains-mismatch", working);
        Assert.Equal($"wall is for mains of {printed} V; here it is {volts} V 50 Hz.", finding.Message);
        Assert.Equal(["wall"], finding.Subjects);
    }

    [Fact]
    public void A_lower_frequency_overheats_a_transformer_a_higher_one_is_told()
    {
        Expect.Breaks(Check(Plate.Mains(230, 230, 60, 60), 230), "mains-mismatch", "50 Hz < 60 Hz");
        Expect.Good(Check(Plate.Mains(230, 230), 230));
        var higher = Check(Plate.Mains(230, 230, 50, 50), 230, 60);
        Expect.Keeps(higher, "mains-mismatch");
        Expect.CannotTell(higher, "mains-mismatch", "wall is printed for 50 Hz and the mains here is 60 Hz");
    }

    [Fact]
    public void What_is_missing_is_told()
    {
        Expect.CannotTell(Check(null, 230), "mains-mismatch", "The mains input of wall is not known");
        Expect.CannotTell(Check(Plate.Mains(230, 230), null), "mains-mismatch", "does not say on which mains it is played; wall is for 230 V");
        Expect.CannotTell(Check(Plate.Mains(230, 230, 60, 60), 230, hertz: null), "mains-mismatch", "The rig does not give the frequency");
        Expect.Good(Check(Plate.Mains(100, 240), null));
        Expect.Good(Check(Plate.Mains(230, 230), 230, hertz: null));
    }

    [Fact]
    public void The_mains_on_the_supplys_label_counts_where_none_is_typed() =>
        Expect.Breaks(
            New().Supply("wall", wall => wall with { Mains = null, Label = Plate.Mains(120, 120) }).Check(),
            "mains-mismatch",
            "230 V > 1.10 × 120 V = 132 V");
}
