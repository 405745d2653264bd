using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;

namespace Loadmark.Simulation.Tests;

/// <summary>Rigs whose steady state can be worked out on paper, through rig files.</summary>
public sealed class ClosedFormTests
{
    [Fact]
    public void A_straight_lead_has_two_contacts_in_each_conductor()
    {
        // Ohm's law: 1 A through a source of 10 mΩ and, both ways, 2 × 20 mΩ and ρ·L/A of 1 m of 0.5 mm² (ρ: IEC 60028).
        var settled = RigText.Settle(
            """
            rig: a
            loads: { drive-3: { kind: analog drive, label: 9 V 1 A, draws: current } }
            supplies: { wall: { regulated: yes, outlets: { 1: { label: 9 V 2 A, source_ohms: 10 mΩ } } } }
            leads: { mine: { length: 1 m, wire: 0.5 mm², contact_ohms: 20 mΩ } }
            wired: [ { from: wall/1, lead: mine, to: drive-3 } ]
            """);
        Assert.Equal(9 - 0.01 - (2 * (0.04 + (1.7241e-8 / 0.5e-6))), (double)settled.Loads[0].Volts!.Value.Value, 1e-7);
    }

    /// <summary>A load of constant power behind a lead: V = ½·(V₀ + √(V₀² − 4·R·P)) (maximum power transfer; docs/theory/collapse.md).</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.9)]
    [InlineData(1.8)]
    public void Constant_power_behind_a_lead(double amps)
    {
        var circuit = RigText.Circuit(Power("stops_below: 0.1 V, starts_below: 1 V", ohms: "0.5 Ω"));
        circuit.SetRun(0, amps);
        var settlement = new Settlement(circuit);
        Assert.True(settlement.Solve(TestContext.Current.CancellationToken));

        var (open, ohms, watts) = (9.0, 0.1 + (2 * 0.5), 9 * amps);
        var expected = (open + Math.Sqrt((open * open) - (4 * ohms * watts))) / 2;
        Assert.Equal(expected, settlement.LoadVolts(0), 1e-8 * open);
        Assert.Equal(watts / expected, settlement.LoadAmps(0), 1e-8);
    }

    /// <summary>Beyond P = V₀²/4R there is no state: that is an answer, with the limit in it.</summary>
    [Fact]
    public void Beyond_the_collapse_the_load_cycles_and_the_limit_is_told()
    {
        var text = Power("stops_below: 0.1 V, starts_below: 1 V", ohms: "3 Ω");
        var circuit = RigText.Circuit(text);
        var limit = 81 / (4 * 6.1);
        var settlement = new Settlement(circuit);
        circuit.SetRun(0, limit / 9 * 0.999);
        settlement.Solve(TestContext.Current.CancellationToken);
        Assert.False(settlement.LoadCycles(0));
        circuit.SetRun(0, limit / 9 * 1.001);
        settlement.Solve(TestContext.Current.CancellationToken);
        Assert.True(settlement.LoadCycles(0));
        Assert.Equal(LoadState.Off, settlement.LoadState(0));

        var load = RigText.Settle(text).Loads[0];
        Assert.Equal(LoadState.Off, load.State);
        Assert.True(load.Cycles);
        Assert.Equal("delay-2 asks for 8.1 W; no more than 3.32 W can reach it.", load.Because);
    }

    /// <summary>A daisy chain of constant currents is a ladder: every stretch carries what lies behind it.</summary>
    [Fact]
    public void A_daisy_chain_is_a_ladder()
    {
        double[] amps = [0.010, 0.045, 0.120, 0.030, 0.200];
        var loads = string.Join('\n', amps.Select((draw, place) => $"  L-{place}: {{ kind: analog drive, label: \"9V DC centre negative\", run: {draw} A }}"));
        var settled = RigText.Settle(
            $$"""
            rig: Ladder
            loads:
            {{loads}}
            supplies: { brick: { isolated: true, regulated: true, outlets: { 1: { label: 9 V DC 2 A, source_ohms: 0.05 Ω } } } }
            leads: { chain: { type: daisy chain, plugs: 5, tail: 1.2 m, pitch: 0.25 m, wire: 0.22 mm², contact_ohms: 0.02 Ω } }
            wired: [ { from: brick/1, lead: chain, to: [L-0, L-1, L-2, L-3, L-4] } ]
            """);

        const double perMetre = 1.7241e-8 / 0.22e-6; // IEC 60028
        var volts = 9 - (0.05 * amps.Sum());
        for (var plug = 0; plug < amps.Length; plug++)
        {
            var stretch = plug == 0 ? (1.2 * perMetre) + 0.02 : 0.25 * perMetre;
            volts -= 2 * stretch * amps[plug..].Sum();
            Assert.Equal(volts - (2 * 0.02 * amps[plug]), (double)settled.Loads[plug].Volts!.Value.Value, 2e-8);
        }

        Assert.Equal(amps.Sum(), (double)settled.Outlets[0].Amps!.Value.Value, 1e-7);
    }

    /// <summary>OpenStax University Physics vol. 2, example 10.1: 12.00 V, internal resistance 0.100 Ω.</summary>
    /// <param name="amps">What the load would draw at 12 V: 10.00 Ω or 0.500 Ω.</param>
    /// <param name="volts">Printed terminal voltage.</param>
    /// <param name="current">Printed current.</param>
    [Theory]
    [InlineData("1.2 A", 11.88, 1.188)]
    [InlineData("24 A", 10.00, 20.00)]
    public void Internal_resistance_as_in_a_textbook(string amps, double volts, double current)
    {
        var settled = RigText.Settle(
            $$"""
            rig: Textbook
            loads: { R: { label: "12V DC centre negative", run: {{amps}}, draws: resistance, starts_below: 1 V, stops_below: 1 V } }
            supplies: { battery: { isolated: true, regulated: true, outlets: { 1: { label: 12 V DC 100 A, source_ohms: 0.1 Ω } } } }
            leads: { stub: { ohms: 0 Ω, contact_ohms: 0 Ω } }
            wired: [ { from: battery/1, lead: stub, to: R } ]
            """);
        Assert.Equal(volts, (double)settled.Loads[0].Volts!.Value.Value, 0.005);
        Assert.Equal(current, (double)settled.Outlets[0].Amps!.Value.Value, 0.005);
    }

    private static string Power(string more, string ohms) =>
        $$"""
        rig: One load
        loads: { delay-2: { kind: digital, label: "9V DC 900mA centre negative", {{more}} } }
        supplies: { brick: { isolated: true, regulated: true, outlets: { 1: { label: 9 V DC 50 A, source_ohms: 0.1 Ω } } } }
        leads: { thin: { ohms: {{ohms}}, contact_ohms: 0 Ω } }
        wired: [ { from: brick/1, lead: thin, to: delay-2 } ]
        """;
}
