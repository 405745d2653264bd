using CsCheck;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Tests.Spice;

namespace Loadmark.Circuits.Tests;

/// <summary>What holds for every circuit.</summary>
public sealed class InvariantTests
{
    private static readonly Gen<Netlist> Steady = Gen.Int[1, 1_000_000].Select(RandomNetlists.Steady);

    [Fact]
    public void Currents_at_each_node_sum_to_zero() => Steady.Sample(netlist =>
    {
        var network = Solved.Settled([.. netlist.Devices]);
        var sums = network.Nodes.ToDictionary(node => node, _ => 0.0);
        sums[Netlist.Ground] = 0;
        foreach (var device in network.Devices)
        {
            var amps = network.Amps(device.Name) * (device is OutletDevice or VoltageSource ? -1 : 1);
            sums[device.Plus] += amps;
            sums[device.Minus] -= amps;
        }

        Assert.All(sums.Values, sum => Solved.Near(0, sum, 0, 1e-9));
    });

    [Fact]
    public void Power_given_is_power_taken() => Steady.Sample(netlist =>
    {
        var network = Solved.Settled([.. netlist.Devices]);
        var (given, taken) = (0.0, 0.0);
        for (var device = 0; device < network.Devices.Length; device++)
        {
            var watts = network.VoltageAcross(device) * network.Current(device);
            if (network.Devices[device] is OutletDevice or VoltageSource)
                given += watts;
            else
                taken += watts;
        }

        Assert.True(taken >= 0);
        Solved.Near(given, taken, 1e-9);
    });

    /// <summary>k times the voltages and the currents: resistances the same, powers k².</summary>
    [Fact]
    public void Scaling() => Gen.Select(Gen.Int[1, 1_000_000], Gen.Double[0.1, 10]).Sample((seed, factor) =>
    {
        Device[] devices = [.. RandomNetlists.Steady(seed).Devices.Where(device => device is not Diode)];
        var (one, other) = (Solved.Settled(devices), Solved.Settled([.. devices.Select(device => Scaled(device, factor))]));
        foreach (var node in one.Nodes)
            Solved.Near(factor * one.Voltage(node), other.Voltage(node), 1e-6, 1e-9);
    });

    /// <summary>The order in which the devices are listed changes nothing.</summary>
    [Fact]
    public void Order_of_devices() => Gen.Int[1, 1_000_000].Sample(seed =>
    {
        var netlist = RandomNetlists.Steady(seed);
        var (one, other) = (Solved.Settled([.. netlist.Devices]), Solved.Settled([.. netlist.Devices.Reverse()]));
        foreach (var node in one.Nodes)
            Solved.Near(one.Voltage(node), other.Voltage(node), 1e-8, 1e-9);
    });

    /// <summary>Nothing is remembered from one solution to the next, and copies know nothing of each other.</summary>
    [Fact]
    public void Same_figures_give_the_same_bits() => Gen.Int[1, 1_000_000].Sample(seed =>
    {
        var network = Solved.Compiled([.. RandomNetlists.Steady(seed).Devices]);
        var analysis = new OperatingPoint(network);
        analysis.Solve(TestContext.Current.CancellationToken);
        var first = network.Nodes.Select(network.Voltage).ToArray();
        var source = network.Devices.First(device => device is OutletDevice or VoltageSource);
        var slot = network.Slot(source.Name, source is OutletDevice ? DeviceParameter.Volts : DeviceParameter.Scale);
        var copy = network.Copy();
        copy[slot] *= 0.9;
        new OperatingPoint(copy).Solve(TestContext.Current.CancellationToken);
        Assert.NotEqual(first, copy.Nodes.Select(copy.Voltage));
        copy[slot] = network[slot];
        new OperatingPoint(copy).Solve(TestContext.Current.CancellationToken);
        Assert.Equal(first, copy.Nodes.Select(copy.Voltage));
        analysis.Solve(TestContext.Current.CancellationToken);
        Assert.Equal(first, network.Nodes.Select(network.Voltage));
    });

    /// <summary>Changing a figure by its slot gives what compiling anew gives.</summary>
    [Fact]
    public void Rebinding_is_compiling_anew()
    {
        Device[] Chain(double ohms, double watts, double volts) =>
            [new OutletDevice("O", "s", "0", volts, 0.2), new Resistor("R", "s", "a", ohms), new LoadDevice("L", "a", "0", LoadLaw.Power, watts)];
        var network = Solved.Compiled(Chain(1, 1, 9));
        network[network.Slot("R", DeviceParameter.Ohms)] = 0.7;
        network[network.Slot("L", DeviceParameter.Draw)] = 3;
        network[network.Slot("O", DeviceParameter.Volts)] = 12;
        Assert.Equal(OperatingPointStatus.Solved, new OperatingPoint(network).Solve(TestContext.Current.CancellationToken).Status);
        Assert.Equal(Solved.Settled(Chain(0.7, 3, 12)).Voltage("a"), network.Voltage("a"));
        Assert.Throws<ArgumentOutOfRangeException>(() => network[network.Slot("R", DeviceParameter.Ohms)] = 0);
        Assert.Throws<KeyNotFoundException>(() => network.Slot("R", DeviceParameter.Draw));
    }

    private static Device Scaled(Device device, double factor) => device switch
    {
        VoltageSource source => source with { Waveform = new ConstantWaveform(factor * source.Waveform.At(0)) },
        OutletDevice outlet => outlet with { Volts = factor * outlet.Volts, LimitAmps = factor * outlet.LimitAmps },
        LoadDevice { Law: LoadLaw.Current } load => load with { Draw = factor * load.Draw, FloorVolts = factor * load.FloorVolts },
        LoadDevice { Law: LoadLaw.Power } load => load with { Draw = factor * factor * load.Draw, FloorVolts = factor * load.FloorVolts },
        _ => device,
    };
}
