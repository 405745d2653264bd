using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Bench;

/// <summary>Circuits as rigs have them: outlets, daisy chains of two conductors, loads with input capacitors and start draws.</summary>
internal static class SampleCircuit
{
    /// <summary>Chains of loads, each on an outlet of its own; the draws come from a fixed seed.</summary>
    /// <param name="chains">Number of outlets.</param>
    /// <param name="loads">Number of loads in all, spread evenly.</param>
    /// <param name="isStarting">Whether the loads have thresholds, start draws and capacitors, and the outlets a soft start.</param>
    public static Netlist Of(int chains, int loads, bool isStarting)
    {
        var random = new Random(20);
        var devices = new List<Device>();
        for (var chain = 0; chain < chains; chain++)
        {
            devices.Add(new OutletDevice($"o{chain}", $"c{chain}f0", $"c{chain}r0", 9, 0.15)
            {
                SoftStartSeconds = isStarting ? 0.02 : 0,
                Overload = OverloadBehaviour.ConstantCurrent,
                LimitAmps = 3,
            });
            devices.Add(new Resistor($"g{chain}", $"c{chain}r0", "0", 0.01));
            for (var load = 1; load <= loads / chains; load++)
                AddLoad(devices, random, $"c{chain}", load, loads / chains, isStarting);
        }

        return new Netlist(devices);
    }

    private static void AddLoad(List<Device> devices, Random random, string chain, int number, int count, bool isStarting)
    {
        var (feed, back) = ($"{chain}f{number}", $"{chain}r{number}");
        var hop = 0.4 / count;
        devices.Add(new Resistor($"{feed}r", $"{chain}f{number - 1}", feed, hop));
        devices.Add(new Resistor($"{back}r", back, $"{chain}r{number - 1}", hop));
        var amps = (0.3 + random.NextDouble()) / count;
        var isPower = number % 2 == 0;
        var load = new LoadDevice($"{feed}l", feed, back, isPower ? LoadLaw.Power : LoadLaw.Current, isPower ? 9 * amps : amps);
        if (!isStarting)
        {
            devices.Add(load);
            return;
        }

        devices.Add(new Capacitor($"{feed}c", feed, back, 47e-6 + (200e-6 * random.NextDouble()), 0.1));
        devices.Add(load with { StartsAbove = 6 + random.NextDouble(), StopsBelow = 4.5, BootDraw = 2 * load.Draw, BootSeconds = 0.2 + (2 * random.NextDouble()) });
    }
}
