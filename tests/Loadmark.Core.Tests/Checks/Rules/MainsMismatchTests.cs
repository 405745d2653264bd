using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using static Loadmark.Core.Tests.Checks.RuleSamples;

namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Nominal voltages and the tolerance of 10 % are those of IEC 60038 (values from memory).</summary>
public sealed class MainsMismatchTests
{
    private static CheckResult Check(Nameplate? supply, decimal? volts, decimal? hertz = 50) =>
        New().Supply("wall", wall => wall with { Mains = supply })
            .Check(rig => rig with { Mains = volts is { } given ? new RigMains(new Volts(given), hertz is { } at ? new Frequency(at) : null) : null });

    private static Nameplate FedByAdaptor { get; } = new("INPUT 12V DC 3A")
    {
        Input = new LowVoltageInput(QuantityRange<Volt>.Single(new Volts(12)), new Amps(3), null, default),
    };

    [Theory]
    [InlineData(100, 240, 100)]
    [InlineData(100, 240, 120)]
    [InlineData(100, 240, 230)]
    [InlineData(220, 240, 230)]
    [InlineData(230, 230, 240)]
    [InlineData(230, 230, 253)] // exactly 10 % over
    [InlineData(230, 230, 207)] // exactly 10 % under
    [InlineData(220, 220, 230)]
    public void Mains_within_the_printed_range_and_its_tolerance_is_fine(int low, int high, int volts) => Expect.Open(Check(Plate.Mains(low, high), volts));

    [Theory]
    [InlineData(120, 230, "230 V > 1.10 × 120 V = 132 V")]
    [InlineData(230, 254, "254 V > 1.10 × 230 V = 253 V")]
    [InlineData(100, 120, "120 V > 1.10 × 100 V = 110 V")]
    public void Mains_that_is_too_high_is_harm(int printed, int volts, string working)
    {
        var finding = Expect.Breaks(Check(Plate.Mains(printed, printed), volts), "mains-mismatch", working);
        Assert.Equal($"wall is for mains of {printed} V; here it is {volts} V.", finding.Message);
        Assert.Equal(["wall"], finding.Subjects);
        Assert.Equal(Severity.Harm, finding.Severity);
    }

    [Theory]
    [InlineData(230, 120, "120 V < 0.90 × 230 V = 207 V")]
    [InlineData(230, 206, "206 V < 0.90 × 230 V = 207 V")]
    public void Mains_that_is_too_low_fails_and_harms_nothing(int printed, int volts, string working)
    {
        var finding = Expect.Breaks(Check(Plate.Mains(printed, printed), volts), "mains-mismatch", working);
        Assert.Equal($"wall is for mains of {printed} V; here it is {volts} V, too little for it to hold its voltage.", finding.Message);
        Assert.Equal(Severity.Fails, finding.Severity);
    }

    /// <summary>Flux goes with voltage over frequency (Faraday's law, OpenStax University Physics vol. 2, section 13.1).</summary>
    [Fact]
    public void Voltage_over_frequency_is_what_saturates_iron()
    {
        var same = Check(Plate.Mains(230, 230, 60, 60), 230);
        Assert.Equal(Severity.Harm, Expect.Breaks(same, "mains-mismatch", "230 V ÷ 50 Hz = 4.6 V/Hz; 230 V ÷ 60 Hz = 3.83 V/Hz: 1.2 times").Severity);
        var less = Check(Plate.Mains(110, 110, 60, 60), 100);
        Assert.Equal(Severity.Margin, Expect.Breaks(less, "mains-mismatch", "100 V ÷ 50 Hz = 2 V/Hz; 110 V ÷ 60 Hz = 1.83 V/Hz").Severity);
        Assert.Equal(Severity.Margin, Expect.Breaks(Check(Plate.Mains(100, 240, 60, 60), 230), "mains-mismatch").Severity);
        Expect.Open(Check(Plate.Mains(230, 230), 230));
    }

    [Fact]
    public void A_higher_frequency_is_only_told()
    {
        var higher = Check(Plate.Mains(230, 230, 50, 50), 230, 60);
        Expect.Keeps(higher, "mains-mismatch");
        Expect.CannotTell(higher, "mains-mismatch", "wall is printed for 50 Hz and the mains here is 60 Hz");
    }

    [Fact]
    public void What_is_missing_is_told()
    {
        Expect.Says(Check(null, 230), "mains-mismatch", Severity.Note, "The mains input of wall is not given: taken as made for the mains here, 230 V.");
        Expect.CannotTell(Check(null, null), "mains-mismatch", "The mains input of wall is not known");
        Expect.Says(Check(Plate.Mains(230, 230), null), "mains-mismatch", Severity.Note, "does not say on which mains it is played; wall is for 230 V");
        Expect.Says(Check(Plate.Mains(230, 230, 60, 60), 230, hertz: null), "mains-mismatch", Severity.Note, "The rig does not give the frequency");
        Expect.Open(Check(Plate.Mains(100, 240), null));
        Expect.Open(Check(Plate.Mains(230, 230), 230, hertz: null));
    }

    [Fact]
    public void A_supply_that_is_fed_by_an_adaptor_has_no_mains_input()
    {
        var result = New().Supply("brick", supply => supply with { Mains = null, Label = FedByAdaptor }).Check();
        Expect.Keeps(result, "mains-mismatch");
    }

    [Fact]
    public void The_mains_on_the_supplys_label_counts_where_none_is_typed() =>
        Expect.Breaks(
            New().Supply("wall", wall => wall with { Mains = null, Label = Plate.Mains(120, 120) }).Check(),
            "mains-mismatch",
            "230 V > 1.10 × 120 V = 132 V");
}
