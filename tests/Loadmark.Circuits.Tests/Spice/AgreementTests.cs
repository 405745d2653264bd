using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Tests.Spice;

/// <summary>Agreement with ngspice, a reference program, on the same netlists with the same element laws.</summary>
[Trait("Source", "ngspice")]
public sealed class AgreementTests
{
    /// <summary>Every node within 1e-6 of its voltage and 1 µV.</summary>
    [Theory]
    [MemberData(nameof(Seeds), 200)]
    public void Steady_state(int seed)
    {
        var netlist = RandomNetlists.Steady(seed);
        var network = Solved.Settled([.. netlist.Devices]);
        foreach (var (node, volts) in NgSpice.OperatingPoint(netlist, Guess(network)))
            Solved.Near(volts, network.Voltage(node), 1e-6, 1e-6);
    }

    /// <summary>Every node within 0.2 % of the source voltage at all times.</summary>
    [Theory]
    [MemberData(nameof(Seeds), 12)]
    public void Start_without_switching(int seed)
    {
        var netlist = RandomNetlists.Starting(seed);
        var network = Solved.Compiled([.. netlist.Devices]);
        var nodes = NgSpice.Nodes(netlist);
        var (record, _) = TransientTests.Run(network, new TransientOptions(0.05), nodes);
        var (times, voltages) = NgSpice.Transient(netlist, 0.05, 2e-5, nodes);
        var allowed = 0.002 * netlist.Devices.OfType<OutletDevice>().Single().Volts;
        for (var node = 0; node < nodes.Length; node++)
        {
            for (var index = 0; index < times.Length; index++)
                Solved.Near(voltages[node][index], record.At(node, Math.Min(0.05, times[index])), 0, allowed);
        }
    }

    /// <summary>Loads that start, boot and go on: event times within 1 ms, voltages within 0.2 % away from them.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Start_with_switching(int seed)
    {
        var random = new Random(seed);
        var devices = new List<Device> { new OutletDevice("o", "f0", "0", 9, 0.2) { SoftStartSeconds = 0.03, Overload = OverloadBehaviour.ConstantCurrent, LimitAmps = 1.6 } };
        for (var index = 1; index <= 4; index++)
        {
            devices.Add(new Resistor($"r{index}", $"f{index - 1}", $"f{index}", 0.1 + (0.2 * random.NextDouble())));
            devices.Add(new Capacitor($"c{index}", $"f{index}", "0", 100e-6 + (300e-6 * random.NextDouble()), 0.1));
            devices.Add(new LoadDevice($"l{index}", $"f{index}", "0", index % 2 == 0 ? LoadLaw.Power : LoadLaw.Current, index % 2 == 0 ? 1 : 0.1)
            {
                StartsAbove = 5 + random.NextDouble(),
                StopsBelow = 4,
                BootDraw = index % 2 == 0 ? 2 : 0.2,
                BootSeconds = 0.05 + (0.05 * random.NextDouble()),
            });
        }

        string[] nodes = ["f0", "f1", "f2", "f3", "f4"];
        var (record, _) = TransientTests.Run(Solved.Compiled([.. devices]), new TransientOptions(0.2), nodes);
        var (times, voltages) = NgSpice.Transient(new Netlist(devices), 0.2, 1e-5, [.. nodes, "l1_on", "l2_on", "l3_on", "l4_on"]);
        Assert.Equal(4, record.Events.Count(change => change.To == DeviceState.Booting));
        for (var load = 1; load <= 4; load++)
        {
            var starts = record.Events.Single(change => change.To == DeviceState.Booting && devices[change.Device].Name == $"l{load}").Seconds;
            Solved.Near(times[Array.FindIndex(voltages[nodes.Length + load - 1], on => on > 0.5)], starts, 0, 1e-3);
        }

        for (var node = 0; node < nodes.Length; node++)
        {
            for (var index = 0; index < times.Length; index++)
            {
                if (record.Events.All(change => Math.Abs(change.Seconds - times[index]) > 1e-3))
                    Solved.Near(voltages[node][index], record.At(node, Math.Min(0.2, times[index])), 0, 0.018);
            }
        }
    }

    /// <summary>The thermal models against the same equations as B-sources.</summary>
    [Fact]
    public void Heater_and_fuse()
    {
        Device[] devices =
        [
            new OutletDevice("o", "s", "0", 12.6, 0.1), new Heater("h", "s", "0", 12, 42, 12.6, 0.8),
            new ResettableFuse("f", "s", "a", 0.3, 0.7, 0.2), new Resistor("r", "a", "0", 10), new Capacitor("c", "a", "0", 100e-6, 0.1),
        ];
        var (record, _) = TransientTests.Run(Solved.Compiled(devices), new TransientOptions(2) { RelativeError = 1e-5, AbsoluteError = 1e-6 }, "s", "a");
        var (times, voltages) = NgSpice.Transient(new Netlist(devices), 2, 1e-4, "s", "a");
        Assert.Contains(record.Events, change => change.To == DeviceState.Tripped);
        for (var index = 0; index < times.Length; index++)
        {
            Solved.Near(voltages[0][index], record.At(0, Math.Min(2, times[index])), 0, 0.0252);
            Solved.Near(voltages[1][index], record.At(1, Math.Min(2, times[index])), 0, 0.0252);
        }
    }

    public static TheoryData<int> Seeds(int count) => [.. Enumerable.Range(1, count)];

    /// <summary>
    /// Loads of constant power have a lower solution too, and ngspice may find that one. So it starts from ours to the
    /// nearest 10 mV, and goes on to its own answer from there.
    /// </summary>
    private static Dictionary<string, double> Guess(Network network) =>
        network.Nodes.ToDictionary(node => node, node => Math.Round(network.Voltage(node), 2));
}
