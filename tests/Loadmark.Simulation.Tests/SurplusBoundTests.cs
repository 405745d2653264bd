using Loadmark.Core.Ratings;
using Loadmark.Simulation.Checks;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests;

/// <summary>An outlet that is called ample is never one on which something sags or drops out: held against the solved circuit.</summary>
public sealed class SurplusBoundTests
{
    [Fact]
    public void What_is_called_ample_settles_and_starts_when_it_is_solved()
    {
        var random = new Random(20260411);
        var (settles, starts, fails) = (0, 0, 0);
        for (var round = 0; round < 400; round++)
        {
            var rig = RigText.Read(Rig(random));
            var laid = Assert.Single(new CircuitBuilder(WiredRig.Of(rig)).Lay());
            var circuit = RigCircuit.Of(WiredRig.Of(rig));
            var settlement = new Settlement(circuit);
            settlement.Solve(TestContext.Current.CancellationToken);
            var settled = Enumerable.Range(0, circuit.Loads.Length).All(load => settlement.LoadState(load) == LoadState.Runs);
            if (!SurplusBound.Settles(laid))
                continue;
            settles++;
            Assert.True(settled, $"{round}: {rig.Name}");
            Assert.Equal(OutletState.Regulating, settlement.OutletState(0));
            var run = new StartUpRun(circuit);
            var isFine = run.Run(TestContext.Current.CancellationToken)
                && Enumerable.Range(0, circuit.Loads.Length).All(load => run.LoadState(load) == LoadState.Runs && run.LoadRestarts(load) == 0);
            fails += isFine ? 0 : 1;
            if (!SurplusBound.Starts(laid))
                continue;
            starts++;
            Assert.True(isFine, $"round {round}");
        }

        // Or it would say nothing: many are ample, and some that settle do not start.
        Assert.InRange(settles, 100, 390);
        Assert.InRange(starts, 40, settles - 20);
        Assert.InRange(fails, 10, settles);
    }

    [Theory]
    [InlineData("9 V 500 mA", "start: 330 mA for 0.8 s", "", true)]
    [InlineData("9 V 500 mA", "start: 470 mA for 0.8 s", "", false)] // 470 mA × 9 V ÷ 7.5 V is more than 500 mA
    [InlineData("9 V 500 mA", "start: 330 mA for 0.8 s", "overload: hiccup,", false)] // with what its capacitor takes
    [InlineData("9 V 700 mA", "start: 330 mA for 0.8 s", "overload: hiccup,", true)]
    [InlineData("9 V 700 mA", "start: 330 mA for 0.8 s", "overload: fuse,", false)] // a fuse is always solved
    [InlineData("9 V 500 mA", "run: 80 mA, starts_below: 8.8 V, stops_below: 8.79 V", "", true)] // its voltage is up before it starts
    [InlineData("9 V 500 mA", "run: 80 mA, starts_below: 8.95 V, stops_below: 8.94 V", "", false)]
    [InlineData("9 V 600 mA", "start: 330 mA for 0.8 s", "overload: foldback,", false)] // 198 mA charge the capacitor, and at rest it gives 180 mA
    [InlineData("9 V 700 mA", "start: 330 mA for 0.8 s", "overload: foldback,", true)]
    public void An_outlet_is_ample_where_the_start_leaves_it_current_and_voltage(string outlet, string load, string supply, bool isAmple)
    {
        var rig = RigText.Read(
            $$"""
            rig: a
            loads: { delay-2: { kind: digital, label: 9 V DC 210 mA, {{load}} } }
            supplies: { brick: { regulated: yes, {{supply}} outlets: { 1: {{outlet}} } } }
            wired: [ { from: brick/1, to: delay-2 } ]
            """);
        Assert.Equal(isAmple, SurplusBound.Starts(Assert.Single(new CircuitBuilder(WiredRig.Of(rig)).Lay())));
    }

    [Fact]
    public void A_heater_alone_comes_up_at_a_limit_just_over_its_hot_current()
    {
        var text = "rig: a\nloads: { valve-41: { kind: valve, label: 12 V DC 360 mA, draws: resistance } }\nsupplies: { keys: { regulated: yes, outlets: { 1: 12 V 400 mA } } }\nwired: [ { from: keys/1, to: valve-41 } ]";
        var laid = Assert.Single(new CircuitBuilder(WiredRig.Of(RigText.Read(text))).Lay());
        Assert.True(SurplusBound.Settles(laid) && SurplusBound.Starts(laid));
        var started = RigText.StartUp(text);
        Assert.Equal((LoadState.Runs, 0), (started.Loads[0].State, started.Loads[0].Restarts));
        Assert.False(SurplusBound.Settles(Assert.Single(new CircuitBuilder(WiredRig.Of(RigText.Read(text.Replace("12 V 400 mA", "12 V 350 mA", StringComparison.Ordinal)))).Lay())));
    }

    /// <summary>The bound rests on it: a load starts only after the outlets' voltage has risen.</summary>
    [Fact]
    public void No_load_starts_sooner_than_voltages_rise() =>
        Assert.All(Figures.LoadClassDefaults.All, static defaults => Assert.True(defaults.DelaySeconds >= Figures.CircuitDefaults.SoftStartSeconds.Value));

    private static string Rig(Random random)
    {
        var count = random.Next(1, 5);
        string[] kinds = ["digital", "analog drive", "large digital", "digital"];
        string[] ways = ["", "", "overload: hiccup,", "overload: foldback,"];
        var total = 0;
        var loads = new List<string>();
        for (var load = 0; load < count; load++)
        {
            var run = random.Next(20, 400);
            var start = random.Next(3) == 0 ? run : (int)(run * (1 + random.NextDouble()));
            var capacitor = random.Next(3) == 0 ? $", input_capacitance: {random.Next(1, 1500)} µF" : "";
            total += start;
            loads.Add($"L{load}: {{ kind: {kinds[random.Next(kinds.Length)]}, label: 9 V DC {run} mA, start: {start} mA for 0.{random.Next(1, 9)} s{capacitor} }}");
        }

        var limit = (int)(total * (0.7 + (1.2 * random.NextDouble()))) + 1;
        return $$"""
            rig: a
            loads: { {{string.Join(", ", loads)}} }
            supplies: { wall: { regulated: yes, {{ways[random.Next(ways.Length)]}} outlets: { 1: { label: 9 V {{limit}} mA, source_ohms: {{random.Next(1, 400)}} mΩ } } } }
            leads: { chain: { type: daisy chain, plugs: 5, tail: {{random.Next(2, 30)}} dm, pitch: {{random.Next(1, 6)}} dm, wire: 0.5 mm² } }
            wired: [ { from: wall/1, lead: chain, to: [{{string.Join(", ", Enumerable.Range(0, count).Select(static load => $"L{load}"))}}] } ]
            """.Replace(" dm", "0 cm", StringComparison.Ordinal);
    }
}
