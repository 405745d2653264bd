using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Tests.Spice;

/// <summary>Networks as rigs have them, from a seed: outlets, leads of two conductors, chains, branches, loads of every law.</summary>
internal static class RandomNetlists
{
    /// <summary>A network that settles well within what its sources give.</summary>
    public static Netlist Steady(int seed)
    {
        var random = new Random(seed);
        var devices = new List<Device>();
        for (var tree = 0; tree < 1 + random.Next(3); tree++)
            Tree(devices, random, $"t{tree}", 2 + random.Next(9), hasCapacitors: false);
        return new Netlist(devices);
    }

    /// <summary>
    /// A network that starts from rest without anything switching: a ramp, capacitors, loads that are always on. Their floor is
    /// high, so that no load of constant power holds the ramp back for a while and then lets it jump.
    /// </summary>
    public static Netlist Starting(int seed)
    {
        var random = new Random(seed);
        var devices = new List<Device>();
        Tree(devices, random, "t", 2 + random.Next(5), hasCapacitors: true);
        return new Netlist(devices);
    }

    private static void Tree(List<Device> devices, Random random, string name, int loads, bool hasCapacitors)
    {
        double[] nominal = [9, 12, 18];
        var volts = nominal[random.Next(3)] * Between(random, 0.95, 1.05);
        devices.Add(Source(random, name, volts, hasCapacitors));
        devices.Add(new Resistor($"{name}_g", $"{name}_r", "0", Between(random, 1e-3, 0.1)));
        var places = new List<(string Feed, string Return)> { ($"{name}_s", $"{name}_r") };
        for (var index = 0; index < loads; index++)
        {
            var (feed, back) = places[random.Next(2) == 0 ? places.Count - 1 : random.Next(places.Count)];
            var (here, home) = ($"{name}_f{index}", $"{name}_b{index}");
            devices.Add(new Resistor($"{name}_rf{index}", feed, here, Between(random, 0.01, 0.3)));
            devices.Add(new Resistor($"{name}_rb{index}", home, back, Between(random, 0.01, 0.3)));
            places.Add((here, home));
            devices.AddRange(Load(random, $"{name}_l{index}", here, home, volts, hasCapacitors ? volts / 3 : 0.5));
            if (hasCapacitors)
                devices.Add(new Capacitor($"{name}_c{index}", here, home, Between(random, 10e-6, 470e-6), random.Next(3) == 0 ? 0 : Between(random, 0.02, 0.5)));
        }
    }

    private static Device Source(Random random, string name, double volts, bool isStarting) => random.Next(3) switch
    {
        0 when !isStarting => new VoltageSource($"{name}_v", $"{name}_s", $"{name}_r", volts),
        1 => new OutletDevice($"{name}_o", $"{name}_s", $"{name}_r", volts, Between(random, 0.02, 0.5))
        {
            Overload = OverloadBehaviour.ConstantCurrent,
            LimitAmps = 4,
            SoftStartSeconds = isStarting ? Between(random, 1e-3, 2e-2) : 0,
        },
        _ => new OutletDevice($"{name}_o", $"{name}_s", $"{name}_r", volts, Between(random, 0.02, 0.5)) { SoftStartSeconds = isStarting ? Between(random, 1e-3, 2e-2) : 0 },
    };

    private static Device[] Load(Random random, string name, string plus, string minus, double volts, double floor)
    {
        var amps = Between(random, 0.005, 0.2);
        return random.Next(5) switch
        {
            0 => [new LoadDevice(name, plus, minus, LoadLaw.Current, amps)],
            1 => [new LoadDevice(name, plus, minus, LoadLaw.Power, amps * volts) { FloorVolts = floor }],
            2 => [new LoadDevice(name, plus, minus, LoadLaw.Resistance, volts / amps), new Diode($"{name}d", minus, plus, 1e-12, Between(random, 1, 2), Between(random, 0, 1))],
            3 => [new Diode($"{name}d", plus, $"{name}m", Between(random, 1e-14, 1e-9), Between(random, 1, 2), random.Next(2) * Between(random, 0, 1)), new Resistor(name, $"{name}m", minus, volts / amps)],
            _ => [new Resistor(name, plus, minus, volts / amps)],
        };
    }

    private static double Between(Random random, double least, double most) => least + ((most - least) * random.NextDouble());
}
