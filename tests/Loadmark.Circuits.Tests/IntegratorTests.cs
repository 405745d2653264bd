using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>The integrator is of second order, and stable whatever the step.</summary>
public sealed class IntegratorTests
{
    /// <summary>With steps of one length h the error at a fixed time falls with h²: the order is log₂ of the ratio at halved steps.</summary>
    [Fact]
    public void Second_order()
    {
        var errors = new[] { 20, 40, 80, 160 }.Select(ErrorWithSteps).ToArray();
        for (var index = 1; index < errors.Length; index++)
            Assert.InRange(Math.Log2(errors[index - 1] / errors[index]), 1.9, 2.1);
    }

    /// <summary>A load of constant power makes the equation nonlinear; the order stays. Reference: the same with very short steps.</summary>
    [Fact]
    public void Second_order_with_a_nonlinear_load()
    {
        double End(int steps)
        {
            var network = Compiled(
                new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 2), new Capacitor("C", "a", "0", 1000e-6, 0, 6),
                new LoadDevice("L", "a", "0", LoadLaw.Power, 4));
            _ = TransientTests.Run(network, new TransientOptions(4e-3) { LongestStep = 4e-3 / steps, RelativeError = 1e3, AbsoluteError = 1e3 });
            return network.Voltage("a");
        }

        var exact = End(20_000);
        Assert.InRange(Math.Log2((End(20) - exact) / (End(40) - exact)), 1.85, 2.15);
        Assert.InRange(Math.Log2((End(80) - exact) / (End(160) - exact)), 1.85, 2.15);
    }

    /// <summary>
    /// The stages see the source at their own times: driven by a sine, u = (A/|Z|)·(sin(ωt − φ) + sin φ·exp(−t/RC)), the order stays.
    /// </summary>
    [Fact]
    public void Second_order_with_a_source_that_moves()
    {
        double Error(int steps)
        {
            var network = Compiled(new VoltageSource("V", "s", "0", new SineWaveform(0, 1, 50)), new Resistor("R", "s", "a", 1000), new Capacitor("C", "a", "0", 5e-6));
            _ = TransientTests.Run(network, new TransientOptions(0.013) { LongestStep = 0.013 / steps, RelativeError = 1e3, AbsoluteError = 1e3 });
            var angle = 2 * Math.PI * 50;
            var (size, phase) = (1 / Math.Sqrt(1 + Math.Pow(angle * 5e-3, 2)), Math.Atan(angle * 5e-3));
            return Math.Abs(network.Voltage("a") - (size * (Math.Sin((angle * 0.013) - phase) + (Math.Sin(phase) * Math.Exp(-0.013 / 5e-3)))));
        }

        Assert.InRange(Math.Log2(Error(80) / Error(160)), 1.9, 2.1);
        Assert.InRange(Math.Log2(Error(160) / Error(320)), 1.9, 2.1);
    }

    /// <summary>Steps a million times the time constant neither ring nor grow.</summary>
    [Fact]
    public void Stiff_decay_does_not_ring()
    {
        var network = Compiled(new Resistor("R", "a", "0", 1), new Capacitor("C", "a", "0", 1e-9, 0, 5), new Resistor("R2", "a", "b", 10), new Capacitor("C2", "b", "0", 1e-3, 0, 5));
        var (record, _) = TransientTests.Run(network, new TransientOptions(0.1) { LongestStep = 1e-3, RelativeError = 1e3, AbsoluteError = 1e3 }, "a");
        Assert.All(record.Voltages(0).Where((_, index) => record.Times[index] > 5e-3), volts => Assert.InRange(volts, -0.05, 0.6));
        Near(0, record.Voltages(0)[^1], 0, 1e-3);
    }

    [Fact]
    public void A_sine_is_followed()
    {
        var network = Compiled(new VoltageSource("V", "s", "0", new SineWaveform(0, 1, 50)), new Resistor("R", "s", "a", 1000), new Capacitor("C", "a", "0", 1e-6));
        var (record, _) = TransientTests.Run(network, new TransientOptions(0.1) { RelativeError = 1e-5, AbsoluteError = 1e-6 }, "a");
        var angle = 2 * Math.PI * 50;
        var (gain, phase) = (1 / Math.Sqrt(1 + Math.Pow(angle * 1e-3, 2)), -Math.Atan(angle * 1e-3));
        for (var seconds = 0.02; seconds < 0.1; seconds += 0.0007)
            Near(gain * Math.Sin((angle * seconds) + phase), record.At(0, seconds), 0, 2e-3);
    }

    /// <summary>Jumps of a source are met exactly: before, its old value; after, its new one.</summary>
    [Fact]
    public void Corners_of_waveforms_are_met()
    {
        var network = Compiled(
            new VoltageSource("V", "a", "0", new PulseWaveform(1, 5, 0.1, 0, 0, 0.1, 0.3)), new Resistor("R", "a", "b", 1), new Capacitor("C", "b", "0", 1e-3));
        var (record, _) = TransientTests.Run(network, new TransientOptions(1), "a");
        foreach (var (seconds, before, after) in new[] { (0.1, 1, 5), (0.2, 5, 1), (0.4, 1, 5), (0.5, 5, 1), (0.7, 1, 5), (0.8, 5, 1) })
        {
            var at = record.Times.Select((time, index) => (time, index)).Where(point => Math.Abs(point.time - seconds) < 1e-9).Select(point => record.Voltages(0)[point.index]).ToArray();
            Assert.Equal([before, after], at);
        }
    }

    [Fact]
    public void A_run_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var network = Compiled(new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 2), new Capacitor("C", "a", "0", 1e-3));
        Assert.Throws<OperationCanceledException>(() => new Transient(network, new TransientOptions(1)).Run(null, stop.Token));
        Assert.Throws<OperationCanceledException>(() => new OperatingPoint(network).Solve(stop.Token));
    }

    private static double ErrorWithSteps(int steps)
    {
        var network = Compiled(new Resistor("R", "a", "0", 100), new Capacitor("C", "a", "0", 100e-6, 0, 9));
        _ = TransientTests.Run(network, new TransientOptions(0.02) { LongestStep = 0.02 / steps, RelativeError = 1e3, AbsoluteError = 1e3 });
        return Math.Abs(network.Voltage("a") - (9 * Math.Exp(-2)));
    }
}
