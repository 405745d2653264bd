using System.Collections.Immutable;
using Loadmark.Circuits.Devices;

namespace Loadmark.Circuits.Networks;

/// <summary>A circuit as it is described: devices between named nodes. Immutable; nothing in it is checked yet.</summary>
/// <param name="Devices">The devices, in any order.</param>
public sealed record Netlist(ImmutableArray<Device> Devices)
{
    /// <summary>The node that all voltages are measured from.</summary>
    public const string Ground = "0";

    /// <summary>Describes a circuit.</summary>
    /// <param name="devices">Its devices.</param>
    public Netlist(IEnumerable<Device> devices)
        : this([.. devices])
    {
    }
}
