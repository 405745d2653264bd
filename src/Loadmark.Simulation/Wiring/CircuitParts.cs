using System.Collections.Immutable;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Collections;

namespace Loadmark.Simulation.Wiring;

/// <summary>Takes a circuit apart into what is joined at more than ground.</summary>
internal sealed class CircuitParts
{
    private readonly DevicePlace[] _places;

    /// <summary>Takes a circuit apart and makes each part ready.</summary>
    /// <exception cref="InvalidOperationException">A part has a fault in its structure, which a circuit of a rig never has.</exception>
    public CircuitParts(IReadOnlyList<Device> devices)
    {
        var joined = new UnionFind<string>();
        foreach (var device in devices)
        {
            if (device.Plus != Netlist.Ground && device.Minus != Netlist.Ground)
                joined.Join(device.Plus, device.Minus);
        }

        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var parts = new List<List<Device>>();
        _places = new DevicePlace[devices.Count];
        for (var index = 0; index < _places.Length; index++)
        {
            var root = joined.Find(devices[index].Plus == Netlist.Ground ? devices[index].Minus : devices[index].Plus);
            if (!numbers.TryGetValue(root, out var part))
            {
                numbers.Add(root, part = parts.Count);
                parts.Add([]);
            }

            _places[index] = new DevicePlace(part, parts[part].Count);
            parts[part].Add(devices[index]);
        }

        Networks = [.. parts.Select(Compile)];
    }

    /// <summary>The network of each part of the circuit.</summary>
    public ImmutableArray<Network> Networks { get; }

    /// <summary>Where a device of the whole is.</summary>
    public DevicePlace this[int device] => _places[device];

    /// <summary>The slot of a figure of a device of the whole.</summary>
    public ParameterSlot Slot(int device, DeviceParameter parameter)
    {
        var (part, number) = _places[device];
        return Networks[part].Slot(Networks[part].Devices[number].Name, parameter);
    }

    private static Network Compile(List<Device> devices)
    {
        var compilation = Network.Compile(new Netlist(devices));
        return compilation.Network
            ?? throw new InvalidOperationException("The circuit of the rig does not hold together: "
                + $"{string.Join(" ", compilation.Faults.Select(static fault => fault.Message))}");
    }
}
