using System.Globalization;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>
/// A circuit with an ideal source at every node that holds it at a given voltage. What the sources give is what Kirchhoff's current
/// law misses there: next to nothing where the voltages solve the circuit, be it by one program or by the other.
/// </summary>
internal static class HeldNodes
{
    private const string Prefix = "held ";

    /// <summary>The netlist with its sources.</summary>
    public static Netlist Of(Netlist netlist, IEnumerable<KeyValuePair<string, double>> volts) =>
        new([.. netlist.Devices, .. volts.Select(static pair => new VoltageSource(Prefix + pair.Key, pair.Key, Netlist.Ground, pair.Value))]);

    /// <summary>The expression by which a deck prints what the source at a node gives.</summary>
    public static string Current(SpiceDeck deck, string node) => $"i(v{deck.Device(Prefix + node)})";

    /// <summary>The most that Kirchhoff's law misses at any node by our laws, A, with every load on.</summary>
    public static double Missing(Netlist netlist, IReadOnlyDictionary<string, double> volts)
    {
        var network = Network.Compile(Of(netlist, volts)).Network ?? throw new InvalidOperationException("The circuit with its nodes held is not sound.");
        new OperatingPoint(network, new OperatingPointOptions { DropsOut = false }).Solve();
        if (volts.Any(pair => Math.Abs(network.Voltage(pair.Key) - pair.Value) > 1e-12))
            throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"The nodes could not be held: {string.Join(", ", volts)}"));
        return volts.Keys.Max(node => Math.Abs(network.Current(network.Device(Prefix + node))));
    }
}
