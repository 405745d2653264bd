using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>Transients whose course can be written down.</summary>
public sealed class TransientTests
{
    internal static (TransientRecorder Record, TransientResult Result) Run(Network network, TransientOptions options, params string[] nodes)
    {
        var recorder = new TransientRecorder([.. nodes.Select(network.Node)]);
        var result = new Transient(network, options).Run(recorder, TestContext.Current.CancellationToken);
        Assert.Equal(TransientStatus.Completed, result.Status);
        return (recorder, result);
    }

    /// <summary>v = V·(1 − exp(−t/RC)) at every point of ten time constants.</summary>
    [Theory]
    [InlineData(1e-4, 4e-4)]
    [InlineData(1e-6, 2e-5)]
    public void Capacitor_charges_through_a_resistance(double error, double allowed)
    {
        var network = Compiled(new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 100), new Capacitor("C", "a", "0", 100e-6));
        var (record, _) = Run(network, new TransientOptions(0.1) { RelativeError = error, AbsoluteError = error }, "a");
        Assert.Equal(0.1, record.Times[^1]);
        for (var index = 0; index < record.Times.Count; index++)
            Near(9 * (1 - Math.Exp(-record.Times[index] / 0.01)), record.Voltages(0)[index], 0, 9 * allowed);
    }

    /// <summary>Off for the off time, at the limit for the trip time: on a short the period is their sum.</summary>
    [Fact]
    public void Hiccup_period_by_hand()
    {
        var network = Compiled(
            new OutletDevice("O", "a", "0", 9, 0.1) { Overload = OverloadBehaviour.Hiccup, LimitAmps = 0.5, TripSeconds = 0.02, OffSeconds = 0.3 },
            new Resistor("R", "a", "0", 0.01));
        var (record, _) = Run(network, new TransientOptions(2), "a");
        var off = record.Events.Where(change => change.To == DeviceState.Off).Select(change => change.Seconds).ToArray();
        Assert.Equal(7, off.Length);
        for (var index = 0; index < off.Length; index++)
            Near(0.02 + (0.32 * index), off[index], 0, 1e-6);
    }

    /// <summary>With a soft start the limit is met when the ramp reaches limit·(source + load resistance).</summary>
    [Fact]
    public void Hiccup_with_soft_start_trips_later()
    {
        var network = Compiled(
            new OutletDevice("O", "a", "0", 9, 0.1) { Overload = OverloadBehaviour.Hiccup, LimitAmps = 0.5, TripSeconds = 0.02, OffSeconds = 0.3, SoftStartSeconds = 0.09 },
            new Resistor("R", "a", "0", 7.9));
        var (record, _) = Run(network, new TransientOptions(2), "a");
        var first = record.Events.First(change => change.To == DeviceState.Off).Seconds;
        Near(0.04 + 0.02, first, 0, 1e-6);
        var second = record.Events.Where(change => change.To == DeviceState.Off).ElementAt(1).Seconds;
        Near(0.04 + 0.02 + 0.3, second - first, 0, 1e-6);
    }

    /// <summary>An outlet at its limit charges a capacitor in a straight line: t = C·V/I to the knee.</summary>
    [Fact]
    public void Limit_charges_in_a_straight_line_and_is_left_at_the_knee()
    {
        var network = Compiled(
            new OutletDevice("O", "a", "0", 9, 0.5) { Overload = OverloadBehaviour.ConstantCurrent, LimitAmps = 1 },
            new Capacitor("C", "a", "0", 1000e-6, 0));
        var (record, _) = Run(network, new TransientOptions(0.02), "a");
        var left = record.Events.Single(change => change.From == DeviceState.Limiting);
        Near(1000e-6 * 8.5 / 1, left.Seconds, 1e-4);
        Near(4, record.At(0, 0.004), 1e-3);
    }

    /// <summary>A load that starts at 6 V, boots, and pulls the voltage below its drop-out starts again and again: period by hand.</summary>
    [Fact]
    public void Load_that_drops_out_starts_again()
    {
        var network = Compiled(
            new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 10), new Capacitor("C", "a", "0", 1000e-6),
            new LoadDevice("L", "a", "0", LoadLaw.Current, 0.6) { StartsAbove = 6, StopsBelow = 4 });
        var (record, _) = Run(network, new TransientOptions(0.2), "a");

        // Off: from 4 to 6 V towards 9; on: from 6 to 4 V towards 9 − 10·0.6 = 3.
        const double Time = 0.01;
        var (rise, fall) = (Time * Math.Log((9.0 - 4) / (9 - 6)), Time * Math.Log((6.0 - 3) / (4 - 3)));
        var starts = record.Events.Where(change => change.To == DeviceState.Running).Select(change => change.Seconds).ToArray();
        Near(Time * Math.Log(9.0 / 3), starts[0], 1e-3);
        for (var index = 1; index < starts.Length; index++)
            Near(rise + fall, starts[index] - starts[index - 1], 1e-3);
        Assert.InRange(starts.Length, 11, 13);
    }

    [Fact]
    public void Boot_draw_lasts_as_long_as_said()
    {
        var network = Compiled(
            new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 1),
            new LoadDevice("L", "a", "0", LoadLaw.Current, 0.2) { StartsAbove = 6, StopsBelow = 4, BootDraw = 0.5, BootSeconds = 1.5 });
        var (record, _) = Run(network, new TransientOptions(3), "a");
        Near(8.5, record.At(0, 1.4999), 1e-9);
        Near(8.8, record.At(0, 1.5), 1e-9);
        Assert.Equal([DeviceState.Booting, DeviceState.Running], record.Events.Select(change => change.To));
    }

    /// <summary>What goes on and on ends where the work that it was given does, and the time until then is told.</summary>
    [Fact]
    public void A_run_ends_with_the_work_that_it_was_given()
    {
        var network = Compiled(
            new OutletDevice("O", "a", "0", 9, 0.1) { Overload = OverloadBehaviour.Hiccup, LimitAmps = 0.5, TripSeconds = 0.02, OffSeconds = 0.3 },
            new Resistor("R", "a", "0", 0.01));
        var result = new Transient(network, new TransientOptions(2) { MostWork = 30 }).Run(null, TestContext.Current.CancellationToken);
        Assert.Equal(TransientStatus.Spent, result.Status);
        Assert.InRange(result.Seconds, 0.02, 1.9);
        Assert.InRange(network.Work, 30, 130);
        Assert.Null(result.WorstNode);
    }

    /// <summary>A load without a capacitor that drops out as soon as it starts cannot settle.</summary>
    [Fact]
    public void Chatter_is_told()
    {
        var network = Compiled(
            new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 10),
            new LoadDevice("L", "a", "0", LoadLaw.Current, 0.6) { StartsAbove = 6, StopsBelow = 4 });
        var result = new Transient(network, new TransientOptions(1)).Run(null, TestContext.Current.CancellationToken);
        Assert.Equal(TransientStatus.Chatters, result.Status);
        Assert.Equal("L", result.WorstNode);
    }

    /// <summary>Time to trip at a constant current: −τ·ln(1 − (threshold/i)²).</summary>
    [Theory]
    [InlineData(1.5)]
    [InlineData(3)]
    public void Fuse_trips_after_the_time_of_its_heat(double amps)
    {
        var network = Compiled(
            new CurrentSource("I", "0", "a", amps), new Resistor("R", "a", "0", 1000), new ResettableFuse("F", "a", "0", 0.2, 1, 4));
        var (record, _) = Run(network, new TransientOptions(20) { RelativeError = 1e-6, AbsoluteError = 1e-7 }, "a");
        var through = amps * 1000 / 1000.2;
        Near(-4 * Math.Log(1 - (1 / (through * through))), record.Events.First(change => change.To == DeviceState.Tripped).Seconds, 1e-4);
    }

    /// <summary>A cold heater takes rated volts over cold ohms at first, and rated volts over hot ohms in the end.</summary>
    [Fact]
    public void Heater_warms_to_its_hot_resistance()
    {
        var network = Compiled(new VoltageSource("V", "a", "0", 12.6), new Heater("H", "a", "0", 12, 84, 12.6, 5));
        var (_, _) = Run(network, new TransientOptions(1e-6), "a");
        Near(12.6 / 12, network.Amps("H"), 1e-4);
        var (_, _) = Run(network, new TransientOptions(100), "a");
        Near(12.6 / 84, network.Amps("H"), 1e-3);
    }

    /// <summary>From its steady state a network stays where it is until something changes.</summary>
    [Fact]
    public void A_steady_start_stays_steady()
    {
        Device[] devices =
        [
            new VoltageSource("V", "s", "0", new StepWaveform(9, 6, 0.5)), new Resistor("R", "s", "a", 2), new Capacitor("C", "a", "0", 1e-3, 0.1),
            new LoadDevice("L", "a", "0", LoadLaw.Power, 4) { StartsAbove = 7, StopsBelow = 3 }, new Heater("H", "a", "0", 30, 100, 9, 2),
        ];
        var steady = Settled(devices).Voltage("a");
        var (record, _) = Run(Compiled(devices), new TransientOptions(1) { StartsSteady = true }, "a");
        Assert.All(record.Times.Zip(record.Voltages(0)).Where(point => point.First < 0.5), point => Near(steady, point.Second, 1e-9));
        Assert.True(record.Voltages(0)[^1] < steady - 1);
        Assert.Empty(record.Events);
    }

    /// <summary>Without a steady state there is nothing to start from.</summary>
    [Fact]
    public void No_steady_start_is_told()
    {
        var network = Compiled(new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 10), new LoadDevice("L", "a", "0", LoadLaw.Current, 0.6) { StartsAbove = 6, StopsBelow = 4 });
        Assert.Equal(TransientStatus.NoStart, new Transient(network, new TransientOptions(1) { StartsSteady = true }).Run(null, TestContext.Current.CancellationToken).Status);
    }

    /// <summary>An ideal source on a capacitor without resistance charges it at once; the current that goes on is the right one.</summary>
    [Fact]
    public void An_ideal_source_charges_an_ideal_capacitor_at_once()
    {
        var network = Compiled(new VoltageSource("V", "a", "0", 9), new Capacitor("C", "a", "0", 1e-3), new Resistor("R", "a", "0", 9));
        var (record, _) = Run(network, new TransientOptions(0.01), "a");
        Near(9, record.Voltages(0)[0]);
        Near(1, network.Amps("V"), 1e-6);
    }

    /// <summary>A load starts, at first and after a drop-out, once its voltage has sufficed for the time that it takes.</summary>
    [Fact]
    public void Delay_before_each_start()
    {
        var network = Compiled(
            new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 10),
            new LoadDevice("L", "a", "0", LoadLaw.Current, 0.6) { StartsAbove = 6, StopsBelow = 4, DelaySeconds = 0.1 });
        var (record, _) = Run(network, new TransientOptions(1.05), "a");
        var stops = record.Events.Where(change => change.To == DeviceState.Off).Select(change => change.Seconds).ToArray();
        Assert.Equal(10, stops.Length);
        for (var index = 0; index < stops.Length; index++)
            Near(0.1 * (index + 1), stops[index], 0, 1e-9);
    }

    /// <summary>The time counts anew from where the voltage falls under the threshold, even for a moment, and a load that runs does not mind.</summary>
    [Fact]
    public void A_break_in_the_voltage_starts_the_delay_anew()
    {
        var source = new VoltageSource("V", "a", "0", new PiecewiseLinearWaveform([(0, 0), (0.009, 9), (0.05, 9), (0.051, 5), (0.052, 9), (0.2, 9), (0.21, 5), (0.3, 5)]));
        var network = Compiled(source, new LoadDevice("L", "a", "0", LoadLaw.Current, 0.6) { StartsAbove = 6, StopsBelow = 4, DelaySeconds = 0.1 });
        var (record, _) = Run(network, new TransientOptions(0.3), "a");

        // 6 V are there after 6 ms, are lost at 50.75 ms and are back at 51.25 ms.
        Near(0.15125, Assert.Single(record.Events).Seconds, 0, 1e-6);
    }
}
