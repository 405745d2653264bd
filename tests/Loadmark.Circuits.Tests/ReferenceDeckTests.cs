using System.Globalization;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>The decks in Data/spice and what ngspice 39.3 printed for them.</summary>
[Trait("Source", "ngspice 39.3, stored output")]
public sealed class ReferenceDeckTests
{
    [Fact]
    public void Constant_power()
    {
        var printed = Printed("constant_power");
        var network = Settled(
            new VoltageSource("V1", "s", "0", 12), new Resistor("R1", "s", "a", 2), new LoadDevice("B1", "a", "0", LoadLaw.Power, 10),
            new VoltageSource("V2", "t", "0", 12), new Resistor("R2", "t", "b", 2), new LoadDevice("B2", "b", "0", LoadLaw.Power, 17.9));
        Near(printed["v(a)"], network.Voltage("a"), 1e-9);
        Near(printed["v(b)"], network.Voltage("b"), 1e-8);
        Near(printed["i1"], network.Amps("V1"), 1e-9);
        Near(printed["i2"], network.Amps("V2"), 1e-8);
        Near(6.447213595, network.Voltage("b"), 1e-9);
    }

    [Fact]
    public void Daisy_chain()
    {
        var printed = Printed("daisy_chain");
        double[] hops = [0.12, 0.08, 0.08, 0.08, 0.08], draws = [0.010, 0.025, 0.060, 0.100, 0.300];
        var devices = new List<Device> { new VoltageSource("V1", "s", "0", 9), new Resistor("Rs", "s", "n0", 0.3), new Resistor("Rg", "r0", "0", 1e-9) };
        for (var index = 1; index <= 5; index++)
        {
            devices.Add(new Resistor($"Rf{index}", $"n{index - 1}", $"n{index}", hops[index - 1]));
            devices.Add(new Resistor($"Rr{index}", $"r{index}", $"r{index - 1}", hops[index - 1]));
            devices.Add(new LoadDevice($"Il{index}", $"n{index}", $"r{index}", LoadLaw.Current, draws[index - 1]));
        }

        var network = Settled([.. devices]);
        double[] byHand = [8.7327, 8.6551, 8.5815, 8.5175, 8.4695];
        for (var index = 1; index <= 5; index++)
        {
            Near(printed[$"v(n{index})-v(r{index})"], network.VoltageAcross(network.Device($"Il{index}")), 1e-9);
            Near(printed[$"v(r{index})"], network.Voltage($"r{index}"), 1e-9, 1e-9);
            Near(byHand[index - 1], network.VoltageAcross(network.Device($"Il{index}")), 1e-8);
        }

        Near(-printed["i(v1)"], network.Amps("V1"));
    }

    /// <summary>9 V behind 0.5 Ω into 470 µF with 0.05 Ω, 90 Ω beside it; 4 ms are over fifteen time constants.</summary>
    [Fact]
    public void Inrush()
    {
        var printed = Printed("inrush_rc");
        var network = Compiled(
            new VoltageSource("V1", "s", "0", new PiecewiseLinearWaveform([(0, 0), (1e-9, 9)])), new Resistor("Rs", "s", "a", 0.5),
            new Capacitor("C1", "a", "0", 470e-6, 0.05), new Resistor("RL", "a", "0", 90));
        var (record, _) = TransientTests.Run(network, new TransientOptions(4e-3) { RelativeError = 1e-6, AbsoluteError = 1e-6, LongestStep = 2e-6 }, "s", "a");
        double Amps(double seconds) => (record.At(0, seconds) - record.At(1, seconds)) / 0.5;
        var amps = record.Times.Select((_, index) => (record.Voltages(0)[index] - record.Voltages(1)[index]) / 0.5).ToArray();
        Near(printed["ipk"], amps.Max(), 1e-5);
        Near(16.36446, amps.Max(), 1e-5);
        Near(printed["i_at_tau"], Amps(258.5e-6), 1e-5);
        Near(printed["va_at_1ms"], record.At(1, 1e-3), 1e-6);
        Near(printed["i_at_1ms"], Amps(1e-3), 1e-5);
        Near(printed["q_total"], Integral(record.Times, amps), 1e-4);
        Near(printed["i2t"], Integral(record.Times, [.. amps.Select(value => value * value)]), 1e-4);
        Near(0.0348931, Integral(record.Times, [.. amps.Select(value => value * value)]), 1e-4);
    }

    [Fact]
    public void Ground_loop()
    {
        var printed = Printed("ground_loop_ac");
        var network = Settled(
            new VoltageSource("Vg", "e", "0", new ConstantWaveform(0), 10e-3), new Resistor("Re", "e", "x", 0.1), new Resistor("Rsh", "x", "0", 0.08), new Resistor("Rdc", "x", "0", 0.02),
            new VoltageSource("Vs1", "p", "0", new ConstantWaveform(0)), new Resistor("Rs1", "p", "q", 50), new Resistor("Rl1", "q", "ret", 50),
            new VoltageSource("Vs2", "m", "0", 0), new Resistor("Rs2", "m", "n", 50), new Resistor("Rl2", "n", "ret", 50), new Resistor("Rret", "ret", "0", 0.1));
        var signal = new SmallSignal(network);
        Assert.True(signal.Solve(50));
        Near(printed["mag(v(x))"], signal.Voltage(network.Node("x")).Magnitude, 1e-9);
        Near(1.379310e-3, signal.Voltage(network.Node("x")).Magnitude, 1e-6);
    }

    /// <summary>Crosstalk of two circuits of 50 Ω over a shared return of 0.1 Ω, −60 dB.</summary>
    [Fact]
    public void Shared_return()
    {
        var printed = Printed("ground_loop_ac");
        var network = Settled(
            new VoltageSource("Vs1", "p", "0", new ConstantWaveform(0), 1), new Resistor("Rs1", "p", "q", 50), new Resistor("Rl1", "q", "ret", 50),
            new VoltageSource("Vs2", "m", "0", 0), new Resistor("Rs2", "m", "n", 50), new Resistor("Rl2", "n", "ret", 50), new Resistor("Rret", "ret", "0", 0.1));
        var signal = new SmallSignal(network);
        Assert.True(signal.Solve(50));
        var ratio = signal.VoltageAcross(network.Device("Rl2")).Magnitude / signal.VoltageAcross(network.Device("Rl1")).Magnitude;
        Near(printed["db((v(n)-v(ret))/(v(q)-v(ret)))"], 20 * Math.Log10(ratio), 1e-9);
    }

    private static double Integral(IReadOnlyList<double> times, double[] values) =>
        Enumerable.Range(1, times.Count - 1).Sum(index => (times[index] - times[index - 1]) * (values[index] + values[index - 1]) / 2);

    private static Dictionary<string, double> Printed(string name)
    {
        var values = new Dictionary<string, double>();
        foreach (var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "spice", name + ".out")))
        {
            var parts = line.Split('=', 2, StringSplitOptions.TrimEntries);
            if (parts.Length == 2 && double.TryParse(parts[1].Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
                values[parts[0]] = value;
        }

        return values;
    }
}
