using Loadmark.Core.Ratings;
using Loadmark.Simulation.Bounds;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests.Bounds;

/// <summary>Between which voltages a plug must be found.</summary>
public sealed class RigBoundsTests
{
    /// <summary>Ohm's law at both corners: 9 V ± 5 % less what 1 Ω there, 1 Ω back and four contacts of 20 mΩ lose of 100 mA, and of half of that.</summary>
    [Fact]
    public void A_regulated_outlet_is_bounded_by_its_tolerance_and_by_what_its_lead_loses()
    {
        var bounds = Of("loads: { drive-1: { label: 9V DC 100mA, draws: current } }", "INPUT 100-240V~ 50/60Hz", "9V DC 500mA", "ohms: 1 ohm");
        Assert.Equal((8.55, 9.45), Ends(bounds.Open));
        Assert.Equal(8.55 - 0.208, Ends(bounds.Loaded).Low, 2e-3);
        Assert.Equal(9.45 - 0.104, Ends(bounds.Loaded).High, 2e-3);
        Assert.Equal((0.05, 0.1), (Math.Round((double)bounds.Draw!.Value.Low.Value, 4), Math.Round((double)bounds.Draw.Value.High.Value, 4)));
    }

    /// <summary>A supply that looks like a plain transformer may be one, and then stands at 1.4 times its printed voltage; it may be none.</summary>
    [Theory]
    [InlineData("INPUT 120V~ 60Hz 15W", "")]
    [InlineData("INPUT 120V~ 60Hz 15W", "regulated: false")]
    [InlineData("INPUT 100-240V~ 50/60Hz", "regulated: false")]
    public void An_outlet_of_doubtful_regulation_is_bounded_by_both(string label, string more)
    {
        var bounds = Of("loads: { drive-1: { label: 9V DC 100mA, draws: current } }", label, "9V DC 500mA", "ohms: 1 ohm", more);
        Assert.Equal(9 * 0.9, Ends(bounds.Open).Low, 2e-3);
        Assert.Equal(9 * 1.4 * 1.1, Ends(bounds.Open).High, 2e-3);
        Assert.Equal((9 * 0.9) - 0.208, Ends(bounds.Loaded).Low, 3e-3);

        // At half of the draw the transformer, 3.6 V softer at its 500 mA, has lost 0.36 V, and the lead 0.1 V.
        Assert.Equal((9 * 1.4 * 1.1) - 0.36 - 0.104, Ends(bounds.Loaded).High, 0.02);
    }

    [Theory]
    [InlineData("regulated: true", 9.45)]
    [InlineData("isolated: true", 13.86)]
    public void What_is_stated_of_its_regulation_narrows_it(string more, double highest) =>
        Assert.Equal(
            highest,
            Ends(Of("loads: { drive-1: 9V DC 100mA }", "INPUT 120V~ 60Hz 15W", "9V DC 500mA", "ohms: 1 ohm", more).Open).High, 2e-3);

    [Fact]
    public void A_measured_no_load_voltage_counts_alone() =>
        Assert.Equal((9.9, 12.1), Ends(Of(
            "loads: { drive-1: 9V DC 100mA }", "INPUT 120V~ 60Hz 15W", "9V DC 500mA, no_load: 11 V", "ohms: 1 ohm", "regulated: false").Open));

    [Fact]
    public void A_transformer_of_alternating_current_stands_over_its_print_too() =>
        Assert.Equal(
            (8.1, Math.Round(9 * 1.25 * 1.1, 3)),
            Ends(Of("loads: { echo-1: 9V AC 500mA }", "INPUT 230V~ 50Hz", "9V AC 1A", "ohms: 1 ohm").Open));

    /// <summary>Where a load's draw has no highest, the lowest voltage is not known; the open one is.</summary>
    [Fact]
    public void A_class_without_a_highest_draw_leaves_the_loaded_voltage_untold()
    {
        var bounds = Of("loads: { amp-1: { kind: large digital, label: 9V DC } }", "INPUT 100-240V~ 50/60Hz", "9V DC 2A", "ohms: 1 ohm");
        Assert.Null(bounds.Loaded);
        Assert.Null(bounds.Draw);
        Assert.Equal((8.55, 9.45), Ends(bounds.Open));
    }

    [Fact]
    public void A_draw_that_is_not_known_leaves_the_open_voltage_told()
    {
        var bounds = Of("loads: { thing-1: 9V DC }", "INPUT 100-240V~ 50/60Hz", "9V DC 2A", "ohms: 1 ohm");
        Assert.Null(bounds.Loaded);
        Assert.Equal((8.55, 9.45), Ends(bounds.Open));
    }

    /// <summary>The bounds beside an independent way: the quantiles of samples lie within, in every example.</summary>
    [Theory]
    [InlineData("pit")]
    [InlineData("abroad")]
    [InlineData("festival")]
    public void Samples_lie_within_the_bounds(string example)
    {
        var circuit = RigCircuit.Of(WiredRig.Of(RigText.Example(example)));
        var bounds = RigBounds.Of(circuit, cancellation: TestContext.Current.CancellationToken);
        var spread = RigSpread.Settle(circuit, new SpreadOptions { Samples = 300 }, TestContext.Current.CancellationToken);
        var seen = 0;
        foreach (var (bound, sample) in bounds.Items.Zip(spread.Loads.Items))
        {
            if (bound.Loaded is not { } range || sample.Volts is not { Low: { } low, High: { } high })
                continue;
            seen++;
            Assert.InRange(low.Value, range.Low.Value - 0.001m, range.High.Value + 0.001m);
            Assert.InRange(high.Value, range.Low.Value - 0.001m, range.High.Value + 0.001m);
        }

        Assert.True(seen > 2);
    }

    private static PlugBounds Of(string loads, string label, string outlet, string lead, string more = "") => RigBounds.Of(
        RigText.Circuit($$"""
            rig: one load
            mains: 230 V 50 Hz
            {{loads}}
            supplies:
              brick:
                label: "{{label}}"
                outlets: { 1: { label: {{outlet}} } }
                {{more}}
            leads:
              lead-1: { type: straight, {{lead}} }
            wired:
              - { from: brick/1, lead: lead-1, to: [{{loads.Split(':')[1].Trim(' ', '{')}}] }
            """), cancellation: TestContext.Current.CancellationToken)[0];

    private static (double Low, double High) Ends(QuantityRange<Volt>? range)
    {
        Assert.NotNull(range);
        return (Math.Round((double)range.Value.Low.Value, 3), Math.Round((double)range.Value.High.Value, 3));
    }
}
