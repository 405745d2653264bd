using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Tests;

/// <summary>What is plugged in how, and what is not computed, is said.</summary>
public sealed class WiringTests
{
    private const string Outlets = "supplies: { brick: { isolated: true, regulated: true, outlets: { 1-4: { label: 9 V DC 500 mA, polarity: centre negative } } } }";

    [Fact]
    public void What_is_not_wired_is_off_and_not_a_fault()
    {
        var text = $"rig: a\nloads: {{ drive-3: {{ label: 9 V DC 12 mA }} }}\n{Outlets}";
        var settled = RigText.Settle(text);
        Assert.Equal((LoadState.Off, null, "drive-3 is not fed."), (settled.Loads[0].State, settled.Loads[0].Volts, settled.Loads[0].Because));
        Assert.All(settled.Outlets, outlet => Assert.Equal((true, OutletState.Regulating, 9m), (outlet.IsFree, outlet.State, outlet.Volts!.Value.Value)));
        var started = RigText.StartUp(text);
        Assert.Equal((LoadState.Off, null, 0), (started.Loads[0].State, started.Loads[0].RunsAfter, started.Loads[0].Restarts));
    }

    [Fact]
    public void A_reversed_load_gets_its_voltage_the_wrong_way_round_and_draws_nothing()
    {
        var settled = RigText.Settle($"rig: a\nloads: {{ drive-3: {{ label: 9 V DC 12 mA centre positive }} }}\n{Outlets}\nwired: [ {{ from: brick/1, to: drive-3 }} ]");
        Assert.Equal((-9m, 0m, LoadState.Off), (Math.Round(settled.Loads[0].Volts!.Value.Value, 6), settled.Loads[0].Amps!.Value.Value, settled.Loads[0].State));
        Assert.Contains(settled.Untold, untold => untold.Because.Contains("the wrong way round", StringComparison.Ordinal));
    }

    [Fact]
    public void A_reversing_lead_turns_it_round()
    {
        var settled = RigText.Settle(
            $"rig: a\nloads: {{ drive-3: {{ label: 9 V DC 12 mA centre positive }} }}\n{Outlets}\nleads: {{ flip: {{ type: reversing }} }}\nwired: [ {{ from: brick/1, lead: flip, to: drive-3 }} ]");
        Assert.Equal(LoadState.Runs, settled.Loads[0].State);
    }

    [Fact]
    public void Outlets_in_series_add_and_in_parallel_share()
    {
        var settled = RigText.Settle(
            $$"""
            rig: a
            loads: { preamp-2: { label: 18 V DC 40 mA }, reverb-2: { label: 9 V DC 800 mA } }
            {{Outlets}}
            leads: { in line: { type: series }, side by side: { type: parallel } }
            wired:
              - { from: [brick/1, brick/2], joined: series, lead: in line, to: preamp-2 }
              - { from: [brick/3, brick/4], joined: parallel, lead: side by side, to: reverb-2 }
            """);
        Assert.Equal(17.99, (double)settled.Loads[0].Volts!.Value.Value, 0.01);
        Assert.Equal([0.04, 0.04, 0.4, 0.4], settled.Outlets.Items.Select(outlet => Math.Round((double)outlet.Amps!.Value.Value, 6)));
        Assert.All(settled.Loads, load => Assert.Equal(LoadState.Runs, load.State));
    }

    [Fact]
    public void Outlets_in_series_on_one_return_short_one_of_them()
    {
        var settled = RigText.Settle(
            """
            rig: a
            loads: { preamp-2: { label: 18 V DC 40 mA centre negative } }
            supplies: { brick: { isolated: false, regulated: true, outlets: { 1-2: 9 V DC 500 mA centre negative } } }
            leads: { in line: { type: series } }
            wired: [ { from: [brick/1, brick/2], joined: series, lead: in line, to: preamp-2 } ]
            """);
        Assert.Contains(settled.Outlets, outlet => outlet.State == OutletState.Limiting);
        Assert.NotEqual(LoadState.Runs, settled.Loads[0].State);
    }

    [Fact]
    public void An_unknown_draw_is_said_and_the_rest_is_computed()
    {
        var settled = RigText.Settle(
            $"rig: a\nloads: {{ X-1: {{ label: 9 V DC }}, drive-3: {{ label: 9 V DC 12 mA }} }}\n{Outlets}\nwired: [ {{ from: brick/1, to: X-1 }}, {{ from: brick/2, to: drive-3 }} ]");
        Assert.Equal((null, LoadState.Off), (settled.Loads[0].Amps, settled.Loads[0].State));
        Assert.Equal("What X-1 draws is not known: the circuit is computed without it.", settled.Loads[0].Because);
        Assert.Equal(LoadState.Runs, settled.Loads[1].State);
    }

    [Fact]
    public void An_outlet_without_a_voltage_cannot_be_computed_and_that_is_said()
    {
        var settled = RigText.Settle(
            "rig: a\nloads: { drive-3: { label: 9 V DC 12 mA } }\nsupplies: { wall: { outlets: { 1: 500 mA } } }\nwired: [ { from: wall/1, to: drive-3 } ]");
        Assert.Equal((null, "What drive-3 gets cannot be computed."), (settled.Loads[0].Volts, settled.Loads[0].Because));
        Assert.Equal((null, null), (settled.Outlets[0].Volts, settled.Outlets[0].Amps));
        Assert.Contains(settled.Untold, untold => untold.Because.StartsWith("The voltage of wall/1 is not known", StringComparison.Ordinal));
    }

    [Fact]
    public void Alternating_current_is_computed_with_effective_values_and_does_not_feed_a_load_for_direct()
    {
        var settled = RigText.Settle(
            """
            rig: a
            loads: { mixer-1: { label: AC 9 V 800 mA, draws: resistance }, drive-3: { label: 9 V DC 12 mA } }
            supplies: { lump: { outlets: { 1: 9 V AC 1 A, 2: 9 V AC 1 A } } }
            wired: [ { from: lump/1, to: mixer-1 }, { from: lump/2, to: drive-3 } ]
            """);
        var ohms = 9 / 0.8;
        var lead = 2 * ((2 * 0.02) + (0.5 * 1.7241e-8 / 0.22e-6));
        Assert.Equal(9 * ohms / (ohms + lead + 0.001), (double)settled.Loads[0].Volts!.Value.Value, 1e-6);
        Assert.Contains(settled.Assumptions, assumption => assumption.Figure == "alternating current");
        Assert.Equal((LoadState.Off, "drive-3 takes direct current and gets alternating current: computed as drawing nothing."), (settled.Loads[1].State, settled.Loads[1].Because));
    }

    [Fact]
    public void A_load_fed_twice_is_computed_once_and_that_is_said()
    {
        var settled = RigText.Settle($"rig: a\nloads: {{ drive-3: {{ label: 9 V DC 12 mA }} }}\n{Outlets}\nwired: [ {{ from: brick/1, to: drive-3 }}, {{ from: brick/2, to: drive-3 }} ]");
        Assert.Equal([0.012m, 0m], settled.Outlets.Items.Take(2).Select(outlet => Math.Round(outlet.Amps!.Value.Value, 6)));
        Assert.Contains(settled.Untold, untold => untold.Because.Contains("more than once", StringComparison.Ordinal));
    }

    [Fact]
    public void An_unregulated_outlet_loses_its_no_load_voltage_as_it_is_loaded()
    {
        // 13 V with nothing drawn, 9 V at 500 mA: 8 Ω. At 200 mA it stands at 13 V − 0.2 A × 8 Ω = 11.4 V.
        var settled = RigText.Settle(
            """
            rig: a
            loads: { drive-3: { kind: analog drive, label: 9-18 V DC, run: 200 mA } }
            supplies: { wall: { regulated: no, outlets: { 1: { label: 9 V DC 500 mA, no_load: 13 V } } } }
            wired: [ { from: wall/1, to: drive-3 } ]
            """);
        Assert.Equal(11.4, (double)settled.Outlets[0].Volts!.Value.Value, 1e-6);
    }
}
