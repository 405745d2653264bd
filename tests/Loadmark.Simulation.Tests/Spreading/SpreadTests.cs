using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests.Spreading;

/// <summary>What becomes of a rig's answer when its figures are not known exactly.</summary>
public sealed class SpreadTests
{
    private static readonly StartUpOptions Short = new() { Duration = new Seconds(0.2m) };

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    public void The_same_seed_gives_the_same_answer_on_any_number_of_threads(int threads)
    {
        var circuit = RigText.Circuit(Text("run: 210 mA"));
        Assert.Equal(Settle(circuit, new SpreadOptions { Samples = 500, Threads = 1 }), Settle(circuit, new SpreadOptions { Samples = 500, Threads = threads }));
        Assert.Equal(StartUp(circuit, new SpreadOptions { Samples = 20, Threads = 1 }), StartUp(circuit, new SpreadOptions { Samples = 20, Threads = threads }));
        Assert.NotEqual(Settle(circuit, new SpreadOptions { Samples = 500, Seed = 2 }).Loads, Settle(circuit, new SpreadOptions { Samples = 500 }).Loads);
    }

    [Fact]
    public void Without_widths_every_sample_is_the_plain_answer()
    {
        var circuit = RigText.Circuit(Text("run: 210 mA"));
        var options = new SpreadOptions { Samples = 9, Widths = SpreadWidths.None };
        var settled = RigSimulator.Settle(circuit, cancellation: TestContext.Current.CancellationToken);
        var spread = Settle(circuit, options);
        foreach (var (load, plain) in spread.Loads.Items.Zip(settled.Loads.Items))
        {
            Assert.Equal(new Percentiles<Volt>(plain.Volts, plain.Volts, plain.Volts, plain.Volts, 9), load.Volts);
            Assert.Equal(new Percentiles<Ampere>(plain.Amps, plain.Amps, plain.Amps, plain.Amps, 9), load.Amps);
        }

        var started = RigSimulator.StartUp(circuit, Short, TestContext.Current.CancellationToken);
        foreach (var (load, plain) in StartUp(circuit, options).Loads.Items.Zip(started.Loads.Items))
        {
            Assert.Equal(new Percentiles<Volt>(plain.LowestVolts, plain.LowestVolts, plain.LowestVolts, plain.LowestVolts, 9), load.Volts);
            Assert.Equal(new Percentiles<Second>(plain.RunsAfter, plain.RunsAfter, plain.RunsAfter, plain.RunsAfter, 9), load.RunsAfter);
        }

        Assert.Empty(spread.Assumptions);
        Assert.Equal(settled.Loads, RigSimulator.Settle(circuit, cancellation: TestContext.Current.CancellationToken).Loads);
    }

    /// <summary>More draw, less voltage and a longer lead never raise a voltage here, nor lower a current: the corner bounds all.</summary>
    [Fact]
    public void The_corner_bounds_every_sample_where_voltages_fall_with_draws()
    {
        var circuit = RigText.Circuit(Text("run: 210 mA"));
        for (ulong seed = 1; seed <= 200; seed++)
        {
            var spread = Settle(circuit, new SpreadOptions { Samples = 1, Seed = seed, Threads = 1 });
            Assert.All(spread.Loads, static load => Assert.True(load.Volts.Corner <= load.Volts.Low && load.Amps!.Corner >= load.Amps.High));
            Assert.All(spread.Outlets, static outlet => Assert.True(outlet.Volts!.Corner <= outlet.Volts.Low && outlet.Amps.Corner >= outlet.Amps.High));
        }
    }

    /// <summary>A draw known as a range of 100 mA to 300 mA, each value as likely: 5 % at 110 mA, half at 200 mA, 95 % at 290 mA.</summary>
    [Fact]
    public void A_draw_known_as_a_range_is_a_range()
    {
        var circuit = RigText.Circuit(Text("draws: current", "9V DC"));
        var amps = Settle(circuit, new SpreadOptions { Samples = 20_000 }).Loads[0].Amps!;
        Assert.Equal(0.110, (double)amps.Low!.Value.Value, 0.003);
        Assert.Equal(0.200, (double)amps.Median!.Value.Value, 0.004);
        Assert.Equal(0.290, (double)amps.High!.Value.Value, 0.003);
        Assert.Equal(new Amps(0.3m), amps.Corner);

        var rated = Settle(RigText.Circuit(Text("draws: current")), new SpreadOptions { Samples = 20_000 }).Loads[0].Amps!;
        Assert.Equal(0.1575, (double)rated.Low!.Value.Value, 0.003);
        Assert.Equal(0.2925, (double)rated.High!.Value.Value, 0.003);
        var measured = Settle(RigText.Circuit(Text("draws: current, run: 200 mA")), new SpreadOptions { Samples = 20_000 }).Loads[0].Amps!;
        Assert.Equal(0.1964, (double)measured.Low!.Value.Value, 0.0002);
        Assert.Equal(0.2036, (double)measured.High!.Value.Value, 0.0002);
    }

    /// <summary>One load of constant current behind a lead of known ohms: it runs while 9 V·(1 + t) − 2·R·I is 8.1 V or more, so with t even over ±5 %.</summary>
    [Fact]
    public void The_chance_is_what_the_closed_form_says()
    {
        var circuit = RigText.Circuit(
            """
            rig: a
            loads: { delay-2: { kind: digital, label: 9V DC, run: 400 mA, draws: current, stops_below: 1 V, starts_below: 1 V } }
            supplies: { wall: { regulated: yes, outlets: { 1: { label: 9 V DC 1 A, source_ohms: 0.001 Ω } } } }
            leads: { mine: { ohms: 1 Ω, contact_ohms: 0.01 Ω } }
            wired: [ { from: wall/1, lead: mine, to: delay-2 } ]
            """);
        const double drop = 0.4 * (0.001 + (2 * (1 + 0.02)));
        var expected = (0.05 - ((8.1 + drop) / 9) + 1) / 0.10;
        var runs = Settle(circuit, new SpreadOptions { Samples = 20_000, Widths = SpreadWidths.None with { OutletShare = 0.05 } }).Runs;
        Assert.InRange(expected, 0.4, 0.6);
        Assert.InRange(runs.Share, expected - 0.015, expected + 0.015);
        Assert.True(runs.Low < runs.Share && runs.Share < runs.High);
    }

    [Fact]
    public void One_that_is_stopped_tells_what_was_sampled_so_far()
    {
        using var source = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var spread = RigSpread.Settle(
            RigText.Circuit(Text("run: 210 mA")),
            new SpreadOptions { Samples = 100_000, Progress = new Stopper(source) },
            source.Token);
        Assert.False(spread.IsComplete);
        Assert.InRange(spread.Samples, 500, 99_999);
        Assert.Equal(spread.Samples, spread.Runs.Samples);
        Assert.NotNull(spread.Loads[0].Volts.Median);
    }

    [Fact]
    public void What_cannot_be_told_is_left_out_and_what_is_not_fed_does_not_run()
    {
        const string rest = "supplies: { wall: { outlets: { 1: 9 V DC 500 mA, 2: 9 V DC 500 mA } } }\nwired: [ { from: wall/1, to: A }, { from: wall/2, to: B } ]";
        var untold = Settle(RigText.Circuit($"rig: a\nloads: {{ A: {{ label: 9 V DC 10 mA }}, B: {{ label: 9 V DC }} }}\n{rest}"), new SpreadOptions { Samples = 50 });
        Assert.Equal(["B"], untold.LeftOut);
        Assert.Equal(50, untold.Runs.Held);
        var unfed = Settle(RigText.Circuit("rig: a\nloads: { A: { label: 9 V DC 10 mA }, C: { label: 9 V DC 10 mA } }\nsupplies: { wall: { outlets: { 1: 9 V DC 500 mA } } }\nwired: [ { from: wall/1, to: A } ]"), new SpreadOptions { Samples = 50 });
        Assert.Empty(unfed.LeftOut);
        Assert.Equal((0, 50), (unfed.Runs.Held, unfed.Loads[0].Runs.Held));
    }

    [Fact]
    public void A_class_without_a_high_end_is_told()
    {
        var spread = Settle(
            RigText.Circuit("rig: a\nloads: { A: { kind: large digital, label: 9 V DC }, B: { kind: digital, label: 9 V DC } }\nsupplies: { wall: { outlets: { 1: 9 V DC 5 A, 2: 9 V DC 5 A } } }\nwired: [ { from: wall/1, to: A }, { from: wall/2, to: B } ]"),
            new SpreadOptions { Samples = 20 });
        Assert.Equal(["A"], spread.OpenUpwards);
        Assert.Equal(0.3, (double)spread.Loads[0].Amps!.Corner!.Value.Value, 0.05);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused()
    {
        var circuit = RigText.Circuit(Text("run: 210 mA"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Settle(circuit, new SpreadOptions { Samples = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Settle(circuit, new SpreadOptions { Samples = SpreadOptions.MostSamples + 1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Settle(circuit, new SpreadOptions { Threads = 0 }));
    }

    private static SpreadResult Settle(RigCircuit circuit, SpreadOptions options) => RigSpread.Settle(circuit, options, TestContext.Current.CancellationToken);

    private static SpreadResult StartUp(RigCircuit circuit, SpreadOptions options) => RigSpread.StartUp(circuit, options, Short, TestContext.Current.CancellationToken);

    private static string Text(string figure, string label = "9V DC 300mA") =>
        $$"""
        rig: a
        loads: { delay-2: { kind: digital, label: "{{label}} centre negative", {{figure}} }, drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" } }
        supplies: { wall: { regulated: yes, outlets: { 1: "9 V DC 1 A centre negative" } } }
        leads: { long chain: { type: daisy chain, plugs: 2, tail: 1.2 m, pitch: 0.25 m, wire: 0.22 mm² } }
        wired: [ { from: wall/1, lead: long chain, to: [delay-2, drive-3] } ]
        """;

    private sealed class Stopper(CancellationTokenSource source) : IProgress<SpreadProgress>
    {
        public void Report(SpreadProgress value) => source.Cancel();
    }
}
