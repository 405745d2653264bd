using Loadmark.Circuits.Networks;

namespace Loadmark.Simulation.Wiring;

/// <summary>Two nodes by number; −1 is ground, and −2 for both is nowhere.</summary>
internal readonly record struct NodePair(int Plus, int Minus)
{
    private const int Ground = -1;
    private const int Nowhere = -2;

    /// <summary>Looks the nodes up.</summary>
    public static NodePair Of(Network? network, Terminals? terminals) =>
        network is null || terminals is not { } names ? new NodePair(Nowhere, Nowhere) : new NodePair(Number(network, names.Plus), Number(network, names.Minus));

    /// <summary>The voltage between them at the point solved last, V; NaN where they are nowhere.</summary>
    public double Volts(Network? network) => Plus == Nowhere ? double.NaN : At(network!, Plus) - At(network!, Minus);

    private static int Number(Network network, string name) => name == Netlist.Ground ? Ground : network.Node(name);

    private static double At(Network network, int node) => node == Ground ? 0 : network.Voltage(node);
}
