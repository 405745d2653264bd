using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Starting;

namespace Loadmark.Simulation.Tests;

/// <summary>The first seconds, and how they are told.</summary>
public sealed class StartUpTests
{
    [Fact]
    public void A_load_starts_once_the_rising_voltage_has_sufficed_for_its_delay()
    {
        // 9 V in 10 ms: 7.2 V are there after 8 ms, but for the lead, which with 1 µF costs next to nothing; a digital load takes 100 ms.
        var started = RigText.StartUp(Rig("starts_below: 7.2 V, stops_below: 5 V, input_capacitance: 1 µF", "9 V DC 500 mA"));
        Assert.Equal(0.108, (double)started.Loads[0].RunsAfter!.Value.Value, 1e-5);
        Assert.Equal((0, LoadState.Runs), (started.Loads[0].Restarts, started.Loads[0].State));
        Assert.Equal("delay-2 starts, at 9 V: it takes 210 mA.", started.Events[0].Text);
    }

    [Fact]
    public void An_input_capacitor_draws_what_its_slope_asks_for()
    {
        // i = C·dV/dt = 330 µF × 9 V / 10 ms = 297 mA, once the lead's resistance no longer shapes it (τ = R·C = 0.1 ms).
        var started = RigText.StartUp(Rig("starts_below: 8.9 V, stops_below: 5 V, input_capacitance: 330 µF", "9 V DC 5 A"));
        Assert.Equal(0.297, Value(started, "brick/1", "A", 0.005), 0.001);
    }

    /// <summary>i = C·dV/dt: 220 µF × 9 V / 10 ms = 198 mA as assumed of a digital load, 99 mA with half of that, 396 mA with double.</summary>
    [Fact]
    public void A_charging_pulse_that_rests_on_an_assumed_capacitor_is_a_range()
    {
        var pulse = RigText.StartUp(Rig("run: 90 mA, starts_below: 8.9 V, stops_below: 5 V", "9 V DC 5 A")).Outlets[0].Pulse!;
        Assert.Equal(0.099, (double)pulse.Least.Value, 0.001);
        Assert.Equal(0.396, (double)pulse.Most.Value, 0.002);
        Assert.Equal((default, default), (pulse.OverLimitLeast, pulse.OverLimitMost));
        Assert.EndsWith(" (input capacitance assumed, at half and at double)", pulse.ToString(), StringComparison.Ordinal);

        // A limit bounds it, for as long as it takes to charge.
        var limited = RigText.StartUp(Rig("run: 90 mA, starts_below: 8.9 V, stops_below: 5 V", "9 V DC 150 mA")).Outlets[0].Pulse!;
        Assert.Equal(new Amps(0.15m), limited.Most);
        Assert.Equal(0.099, (double)limited.Least.Value, 0.001);
        Assert.Equal(440e-6 * 9 / 0.15, (double)limited.OverLimitMost.Value, 0.002);

        // Given, or drawn by a load when it starts, or at the limit either way: nothing is assumed of it.
        Assert.Null(RigText.StartUp(Rig("run: 90 mA, input_capacitance: 330 µF", "9 V DC 5 A")).Outlets[0].Pulse);
        Assert.Null(RigText.StartUp(Rig("run: 420 mA", "9 V DC 5 A")).Outlets[0].Pulse);
        Assert.Equal(0.21, (double)RigText.StartUp(Rig("run: 210 mA, draws: current", "9 V DC 5 A")).Outlets[0].Pulse!.Least.Value, 0.001);
        Assert.Null(RigText.StartUp(Rig("run: 30 mA", "9 V DC 50 mA")).Outlets[0].Pulse);
    }

    /// <summary>Nothing limits an unregulated outlet but its resistance, which is assumed too: 1.4 × 9 V, and 3.6 V lost over its rated current.</summary>
    [Fact]
    public void The_pulse_of_an_unregulated_outlet_may_go_over_its_limit_and_says_on_what_that_rests()
    {
        var outlet = RigText.StartUp(Rig("run: 30 mA, starts_below: 8 V", "9 V DC 200 mA").Replace("regulated: true", "regulated: false", StringComparison.Ordinal)).Outlets[0];
        var pulse = outlet.Pulse!;
        Assert.Equal(["input capacitance", "source resistance"], pulse.Assumed);
        Assert.InRange(outlet.PeakAmps!.Value.Value, pulse.Least.Value, pulse.Most.Value);
        Assert.True(pulse.Most > outlet.Limit && pulse.OverLimitMost > pulse.OverLimitLeast, $"{pulse}");
    }

    [Fact]
    public void The_starting_draw_lasts_as_long_as_it_says()
    {
        var started = RigText.StartUp(Rig("starts_below: 7 V, start: 420 mA for 1.5 s", "9 V DC 2 A"));
        var events = started.Events.Items.Where(static happening => happening.Subject == "delay-2").ToList();
        Assert.Equal([StartUpEventKind.Starts, StartUpEventKind.HasStarted], events.Select(static happening => happening.Kind));
        Assert.Equal(1.5m, events[1].Time.Value - events[0].Time.Value, 6);
        Assert.Equal(events[1].Time, started.SettledAfter);
    }

    [Fact]
    public void An_outlet_that_hiccups_is_told_switching_off_and_trying_again()
    {
        var text = Rig("run: 800 mA, draws: current, starts_below: 2 V, stops_below: 0.1 V", "9 V DC 500 mA", "overload: hiccup,");
        var settled = RigText.Settle(text);
        Assert.True(settled.Outlets[0].Cycles);
        Assert.Equal((LoadState.Off, true), (settled.Loads[0].State, settled.Loads[0].Cycles));
        settled = RigText.Settle(text.Replace("draws: current", "draws: resistance", StringComparison.Ordinal));
        Assert.Equal((OutletState.Limiting, true), (settled.Outlets[0].State, settled.Outlets[0].Cycles));
        Assert.Equal("brick/1 is at its limit and switches off and on over and over.", settled.Loads[0].Because);

        var started = RigText.StartUp(text);
        Assert.Equal((LoadState.Off, true), (started.Loads[0].State, started.Loads[0].Cycles));
        Assert.Null(started.SettledAfter);
        var off = Times(started, StartUpEventKind.SwitchesOff);
        var again = Times(started, StartUpEventKind.TriesAgain);
        Assert.InRange(off.Count, 4, 6);
        Assert.Equal(0.5m, again[0] - off[0], 6);

        // 500 ms off, the rise up to 2 V, 100 ms until the load starts, 50 ms at the limit (docs/theory/outlets.md, loads.md).
        Assert.InRange(off[1] - off[0], 0.65m, 0.66m);
        Assert.Equal(off[2] - off[1], off[1] - off[0], 5);
    }

    [Fact]
    public void A_surge_counts_as_long_as_the_outlet_bears_it()
    {
        var enough = RigText.StartUp(Rig("starts_below: 7 V, start: 600 mA for 0.5 s, input_capacitance: 1 µF", "{ label: 9 V DC 300 mA, surge: 1 A for 0.6 s }"));
        Assert.Equal((LoadState.Runs, false), (enough.Loads[0].State, enough.Outlets[0].SurgeIsSpent));
        Assert.InRange(enough.Outlets[0].OverLimit.Value, 0.5m, 0.51m);

        var brief = RigText.StartUp(Rig("starts_below: 7 V, start: 600 mA for 0.5 s, input_capacitance: 1 µF", "{ label: 9 V DC 300 mA, surge: 1 A for 0.2 s }"));
        Assert.Equal((LoadState.Off, true), (brief.Loads[0].State, brief.Outlets[0].SurgeIsSpent));
    }

    [Fact]
    public void A_fuse_trips_and_the_load_goes_dark()
    {
        var started = RigText.StartUp(RigText.Read(Rig("run: 600 mA, draws: current", "9 V DC 200 mA", "overload: fuse,")), new StartUpOptions { Duration = new Seconds(10) });
        Assert.Contains(started.Events, static happening => happening is { Kind: StartUpEventKind.FuseTrips, Text: "The fuse of brick/1 trips." });
        Assert.Equal(LoadState.Off, started.Loads[0].State);
    }

    [Fact]
    public void A_heater_warms_up_and_its_draw_falls()
    {
        var started = RigText.StartUp(
            """
            rig: a
            loads: { preamp-1: { kind: valve, label: 12 V DC 300 mA } }
            supplies: { brick: { isolated: true, regulated: true, outlets: { 1: 12 V DC 3 A } } }
            wired: [ { from: brick/1, to: preamp-1 } ]
            """);

        // Cold it lets through 5 × 300 mA; its capacitor adds at most 220 µF × 12 V / 10 ms = 264 mA.
        Assert.InRange(started.Outlets[0].PeakAmps!.Value.Value, 1.5m, 1.764m);
        Assert.Equal(0.3, Value(started, "preamp-1", "A", (double)started.Duration.Value), 0.005);
        Assert.Equal(LoadState.Runs, started.Loads[0].State);
    }

    [Fact]
    public void A_supplys_total_is_judged_by_its_peak()
    {
        var started = RigText.StartUp(Rig("starts_below: 7 V, start: 700 mA for 0.5 s", "9 V DC 2 A", "total: 5 W,"));
        var total = Assert.Single(started.Totals);
        Assert.True(total.IsOver);
        Assert.InRange(total.Given.Watts!.Value.Value, 6.2m, 20m);
    }

    [Fact]
    public void Waveforms_hold_every_event_and_stay_in_order()
    {
        var started = RigText.StartUp(Rig("starts_below: 7 V, start: 420 mA for 1.5 s", "9 V DC 2 A"));
        var seconds = started.Waveforms.Seconds;
        Assert.Equal(seconds.Order(), seconds);
        Assert.All(started.Events, happening => Assert.Contains(seconds, time => Math.Abs(time - (double)happening.Time.Value) < 1e-6));
        Assert.Equal(["delay-2 V", "delay-2 A", "brick/1 V", "brick/1 A"], started.Waveforms.Series.Select(static series => $"{series.Subject} {series.Unit}"));
        Assert.All(started.Waveforms.Series, series => Assert.Equal(seconds.Length, series.Values.Length));
        Assert.DoesNotContain(started.Waveforms.Series, series => series.Values.Any(double.IsNaN));
    }

    [Fact]
    public void A_run_can_be_stopped() =>
        Assert.Throws<OperationCanceledException>(() => RigSimulator.StartUp(RigText.Example("festival"), cancellation: new CancellationToken(canceled: true)));

    private static List<decimal> Times(StartUpResult started, StartUpEventKind kind) =>
        [.. started.Events.Items.Where(happening => happening.Kind == kind).Select(static happening => happening.Time.Value)];

    private static double Value(StartUpResult started, string subject, string unit, double seconds)
    {
        var place = started.Waveforms.Seconds.Select((time, index) => (Distance: Math.Abs(time - seconds), index)).Min().index;
        return started.Waveforms.Series.Single(series => series.Subject == subject && series.Unit == unit).Values[place];
    }

    /// <summary>What is told of a start that repeats is what the whole computation tells, but for a start more or less at the end.</summary>
    [Fact]
    public void A_start_that_never_ends_is_told_as_if_it_had_been_computed_to_the_end()
    {
        var rig = RigText.Example("chain-start");
        var whole = RigText.StartUp(rig, new StartUpOptions { Duration = new(9), RepeatsAfter = double.PositiveInfinity });
        var told = RigText.StartUp(rig, new StartUpOptions { Duration = new(9) });
        var repeats = Assert.Single(told.Events.Items, static happening => happening.Kind == StartUpEventKind.Repeats);
        Assert.Matches("^From here on this happens over and over, every 105 ms.$", repeats.Text);
        Assert.Equal(repeats, told.Events.Items[^1]);
        Assert.True(repeats.Time.Value < 4 && told.IsComplete, $"{repeats.Time}");
        Assert.DoesNotContain(whole.Events.Items, static happening => happening.Kind == StartUpEventKind.Repeats);
        Assert.Equal((whole.Duration, whole.SettledAfter), (told.Duration, told.SettledAfter));
        for (var load = 0; load < whole.Loads.Count; load++)
        {
            Assert.Equal(whole.Loads[load] with { Restarts = 0, LowestVolts = null }, told.Loads[load] with { Restarts = 0, LowestVolts = null });
            Assert.InRange(told.Loads[load].Restarts, whole.Loads[load].Restarts - 1, whole.Loads[load].Restarts + 1);
        }

        Assert.InRange((double)(told.Outlets[0].OverLimit.Value / whole.Outlets[0].OverLimit.Value), 0.98, 1.02);
        foreach (var seconds in Enumerable.Range(0, 180).Select(static place => place * 0.05))
            Assert.Equal(Value(whole, "wall/1", "V", seconds), Value(told, "wall/1", "V", seconds), 0.3);
    }

    private static string Rig(string load, string outlet, string supply = "") =>
        $$"""
        rig: a
        loads: { delay-2: { kind: digital, label: "9V DC centre negative", {{(load.Contains("run:", StringComparison.Ordinal) ? "" : "run: 210 mA, ")}}{{load}} } }
        supplies: { brick: { isolated: true, regulated: true, {{supply}} outlets: { 1: {{outlet}} } } }
        wired: [ { from: brick/1, to: delay-2 } ]
        """;
}
