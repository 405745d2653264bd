using Loadmark.Core.Checks;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>
/// What the rule <c>ac-shared</c> says, by a reference program: two loads on one winding of 9 V and 1.5 Ω, one with a bridge, one with a
/// half-wave rectifier, 470 µF and 100 Ω behind each, and the screen of an audio lead, 50 mΩ, from ground to ground.
/// </summary>
[Trait("Source", "ngspice")]
public sealed class SharedWindingTests(ITestOutputHelper output)
{
    private const double WindingOhms = 1.5;
    private const double ScreenOhms = 0.05;
    private const double NoScreenOhms = 1e6;
    private const double End = 0.4;

    [Fact]
    public void The_winding_current_rises_tenfold_through_the_screen_where_rectifiers_differ()
    {
        var apart = WindingAmps(isShared: true, isBridge: true, NoScreenOhms);
        var joined = WindingAmps(isShared: true, isBridge: true, ScreenOhms);
        output.WriteLine(FormattableString.Invariant($"One winding: {apart:0.000} A without the screen, {joined:0.000} A with it, {joined / apart:0.0} times"));

        // 0.365 A and 3.68 A: the half-wave load's ground is one end of the winding, the bridge puts the other's at the other end in turn.
        Assert.InRange(apart, 0.3, 0.45);
        Assert.InRange(joined / apart, 8, 12);

        // The half wave is shorted over one diode and the screen: what the peak leaves of its voltage, over the winding.
        var half = ((9 * Math.Sqrt(2)) - 1) / (WindingOhms + ScreenOhms) / 2;
        Assert.InRange(joined / half, 0.9, 1.1);
    }

    [Fact]
    public void Each_on_its_own_winding_the_screen_changes_nothing()
    {
        var apart = WindingAmps(isShared: false, isBridge: true, NoScreenOhms);
        Assert.Equal(1, WindingAmps(isShared: false, isBridge: true, ScreenOhms) / apart, 0.01);
    }

    /// <summary>"What is inside decides": two half-wave rectifiers that are alike have their grounds at the same end.</summary>
    [Fact]
    public void Two_alike_rectifiers_bear_it()
    {
        var apart = WindingAmps(isShared: true, isBridge: false, NoScreenOhms);
        Assert.Equal(1, WindingAmps(isShared: true, isBridge: false, ScreenOhms) / apart, 0.05);
    }

    [Theory]
    [InlineData("supplies: { heaters: { outlets: { 1: 9V AC 1A } } }", "[ { from: heaters/1, lead: chain, to: [preamp-1, preamp-2] } ]", true)]
    [InlineData("supplies: { heaters: { isolated: yes, outlets: { 1-2: 9V AC 1A } } }", "[ { from: heaters/1, to: preamp-1 }, { from: heaters/2, to: preamp-2 } ]", false)]
    public void The_rule_calls_the_one_harm_and_the_other_not(string supplies, string wired, bool isHarm)
    {
        var check = NameplateCheck.Of(RigText.Read(
            $$"""
            rig: a
            loads: { preamp-1: { label: 9V AC 100mA }, preamp-2: { label: 9V AC 100mA } }
            {{supplies}}
            leads: { chain: { type: daisy chain, plugs: 2 } }
            wired: {{wired}}
            """));
        Assert.Equal(isHarm, check.Findings.Items.Any(static finding => finding is { Severity: Severity.Harm } && finding.Rule == RuleId.AcShared));
    }

    /// <summary>Effective current of the first winding over the last five periods of 50 Hz, A.</summary>
    private static double WindingAmps(bool isShared, bool isBridge, double screenOhms)
    {
        using var batch = new NgSpiceBatch();
        var number = batch.AddTransient(Deck(isShared, isBridge, screenOhms), End, 5e-5, ["s1", "w1"], isGear: true, rectifies: true);
        batch.Run();
        var (times, volts) = batch.Transient(number);
        Assert.True(times.Length > 1000 && times[^1] >= 0.999 * End, "ngspice stopped early.");
        var (sum, seconds) = (0.0, 0.0);
        for (var point = 1; point < times.Length; point++)
        {
            if (times[point - 1] < End - 0.1)
                continue;
            var amps = (volts[0][point] + volts[0][point - 1] - volts[1][point] - volts[1][point - 1]) / (2 * WindingOhms);
            var step = times[point] - times[point - 1];
            (sum, seconds) = (sum + (amps * amps * step), seconds + step);
        }

        return Math.Sqrt(sum / seconds);
    }

    /// <summary>Load A between w1 and s2 by a bridge or by one diode, load B by one diode from the same winding or from its own.</summary>
    private static string Deck(bool isShared, bool isBridge, double screenOhms)
    {
        const string winding = "sin(0 12.7279 50)";
        var own = isShared
            ? "RB1 w1 b1 1m\nRB2 b2 s2 1m\n"
            : FormattableString.Invariant($"V2 t1 t2 {winding}\nRW2 t1 b1 {WindingOhms}\nRB2 b2 t2 1m\n");
        var first = isBridge ? "D1 w1 pa dr\nD2 s2 pa dr\nD3 ga w1 dr\nD4 ga s2 dr\n" : "D1 w1 pa dr\nRGA s2 ga 1m\n";
        return FormattableString.Invariant($"V1 s1 s2 {winding}\nRW1 s1 w1 {WindingOhms}\n{own}{first}CA pa ga 470u\nRA pa ga 100\nD5 b1 pb dr\nRG b2 gb 1m\nCB pb gb 470u\nRB pb gb 100\nRS ga gb {screenOhms}\nRREF ga 0 1\n.model dr D(is=14n rs=0.03 n=1.8 cjo=20p)\n");
    }
}
