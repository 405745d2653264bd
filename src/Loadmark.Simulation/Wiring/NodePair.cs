using System.Collections.Immutable;
using Loadmark.Circuits.Networks;

namespace Loadmark.Simulation.Wiring;

/// <summary>Two nodes by number in the network of a part; −1 is ground. Part −1 is nowhere.</summary>
internal readonly record struct NodePair(int Part, int Plus, int Minus)
{
    private const int Ground = -1;

    /// <summary>The pair of what is not in the circuit.</summary>
    public static NodePair None => new(-1, Ground, Ground);

    /// <summary>Looks the nodes up in the network of a part.</summary>
    public static NodePair Of(int part, Network network, Terminals terminals) =>
        new(part, Number(network, terminals.Plus), Number(network, terminals.Minus));

    /// <summary>The voltage between the nodes at the point solved last, V; NaN where they are nowhere.</summary>
    public double Volts(ImmutableArray<CircuitPart> parts) =>
        Part < 0 ? double.NaN : At(parts[Part].Network, Plus) - At(parts[Part].Network, Minus);

    private static int Number(Network network, string name) => name == Netlist.Ground ? Ground : network.Node(name);

    private static double At(Network network, int node) => node == Ground ? 0 : network.Voltage(node);
}
