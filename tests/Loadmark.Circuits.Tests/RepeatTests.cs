using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>A course that repeats is not computed again and again; one that only seems to is.</summary>
public sealed class RepeatTests
{
    /// <summary>Off for the off time, at the limit for the trip time: on a short the round is their sum (by hand).</summary>
    [Fact]
    public void Hiccup_on_a_short_repeats_after_the_sum_of_its_times()
    {
        var network = Compiled(Hiccup(0.02, 0.3), new Resistor("R", "a", "0", 0.01));
        var (watch, result) = Run(network, new TransientOptions(600) { RepeatsAfter = 1 });
        Assert.Equal(TransientStatus.Repeats, result.Status);
        Assert.InRange(result.Seconds, 1.3, 4);
        Near(0.32, watch.Repetition / watch.Rounds, 1e-5);
        Near(watch.Since + watch.Repetition, result.Seconds, 1e-9);
        Assert.Equal(watch.Repetition, result.RepetitionSeconds);
    }

    /// <summary>A load that drops out and starts again, whose round is the closed form of two exponentials, beside the whole course.</summary>
    [Fact]
    public void A_load_that_cycles_goes_on_as_the_repetition_says()
    {
        Device[] devices =
        [
            new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 10), new Capacitor("C", "a", "0", 1000e-6),
            new LoadDevice("L", "a", "0", LoadLaw.Current, 0.6) { StartsAbove = 6, StopsBelow = 4 },
        ];
        var (watch, result) = Run(Compiled(devices), new TransientOptions(30) { RepeatsAfter = 0.1 });
        Assert.Equal(TransientStatus.Repeats, result.Status);
        Assert.True(result.Seconds < 3, $"computed up to {result.Seconds} s of 30 s");
        const double Time = 0.01;
        var round = Time * (Math.Log((9.0 - 4) / (9 - 6)) + Math.Log((6.0 - 3) / (4 - 3)));
        Near(round, watch.Repetition / watch.Rounds, 1e-3);

        var (whole, _) = Run(Compiled(devices), new TransientOptions(30));
        var rounds = (watch.Starts - watch.StartsBefore) / watch.Repetition;
        Assert.InRange(watch.StartsBefore + (rounds * (30 - watch.Since)), 0.999 * whole.Starts, 1.001 * whole.Starts);
    }

    /// <summary>
    /// Each round warms the fuse a little, by less than 0.3 %. Its mean heat is 1 after τ·ln(1 / (1 − 1/1.5625)) = 204.3 s, 638 rounds; it
    /// peaks half a round's rise above that (0.00125, at a slope of 0.0028 /s), so that it trips up to 0.45 s before.
    /// </summary>
    [Fact]
    public void A_fuse_that_warms_from_round_to_round_is_waited_for()
    {
        var network = Compiled(
            Hiccup(0.02, 0.3), new ResettableFuse("F", "a", "b", 0.01, 0.1, 200), new Resistor("R", "b", "0", 0.01));
        var (watch, _) = Run(network, new TransientOptions(2000) { RepeatsAfter = 1 });
        Assert.InRange(watch.Trip, 203.85, 204.33);
    }

    /// <summary>Each round puts I·t/C = 5 mV on a large capacitor, so that the load starts at 6 V after 1,200 rounds.</summary>
    [Fact]
    public void A_capacitor_that_is_pumped_up_is_waited_for()
    {
        var network = Compiled(
            Hiccup(0.001, 0.1), new Capacitor("C", "a", "0", 0.1),
            new LoadDevice("L", "a", "0", LoadLaw.Current, 0.01) { StartsAbove = 6, StopsBelow = 4 });
        var (watch, _) = Run(network, new TransientOptions(200) { RepeatsAfter = 1 });
        Assert.Equal(1, watch.Starts);
    }

    /// <summary>What goes by time, as a source that comes on late, does not repeat.</summary>
    [Fact]
    public void Nothing_repeats_while_a_source_goes_by_time()
    {
        var network = Compiled(
            Hiccup(0.02, 0.3), new Resistor("R", "a", "0", 0.01), new VoltageSource("V", "b", "0", new StepWaveform(0, 9, 5)),
            new Resistor("Q", "b", "0", 100));
        var (_, result) = Run(network, new TransientOptions(10) { RepeatsAfter = 1 });
        Assert.Equal(TransientStatus.Completed, result.Status);
    }

    private static OutletDevice Hiccup(double trip, double off) =>
        new("O", "a", "0", 9, 0.1) { Overload = OverloadBehaviour.Hiccup, LimitAmps = 0.5, TripSeconds = trip, OffSeconds = off };

    private static (Watch Watch, TransientResult Result) Run(Network network, TransientOptions options)
    {
        var watch = new Watch();
        return (watch, new Transient(network, options).Run(watch, TestContext.Current.CancellationToken));
    }

    /// <summary>Counts what happens, and notes from when on it repeats.</summary>
    private sealed class Watch : ITransientObserver
    {
        public int Starts { get; private set; }

        public int StartsBefore { get; private set; }

        public double Trip { get; private set; } = double.NaN;

        public double Since { get; private set; }

        public double Repetition { get; private set; }

        public int Rounds { get; private set; }

        public void OnPoint(double seconds, Network network)
        {
            // Only changes are counted.
        }

        public void OnEvent(in TransientEvent change)
        {
            Starts += change.To == DeviceState.Running ? 1 : 0;
            if (change.To == DeviceState.Tripped && double.IsNaN(Trip))
                Trip = change.Seconds;
        }

        public void OnRepeat(double seconds, double repetition, int rounds) =>
            (Since, Repetition, Rounds, StartsBefore) = (seconds, repetition, rounds, Starts);
    }
}
