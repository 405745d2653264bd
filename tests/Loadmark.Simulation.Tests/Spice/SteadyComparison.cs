using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;
using Loadmark.Simulation.Settling;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>Compares settled node voltages of rigs with ngspice: all nodes of all parts of the circuit.</summary>
internal sealed class SteadyComparison(NgSpiceBatch batch)
{
    private const double OffAmps = 1e-6;
    private const double OtherVolts = 0.5;

    private readonly List<(string Name, SpiceDeck Deck, int Number, Dictionary<string, double> Ours, RigCircuit Circuit)> _rigs = [];

    /// <summary>The difference of node voltages, as a multiple of what is allowed: 1e-6 of the voltage and 1 µV.</summary>
    public Agreement Allowed { get; } = new("settled node voltages, of 1e-6 relative + 1 µV", "");

    /// <summary>The difference of node voltages, V.</summary>
    public Agreement Volts { get; } = new("settled node voltages", "V");

    /// <summary>The rigs that were compared or tried.</summary>
    public int Rigs { get; private set; }

    /// <summary>Those among them in which ngspice found no operating point: nothing of them is compared.</summary>
    public int NotFound { get; private set; }

    /// <summary>Those in which it found a lower solution, as loads of constant power and foldback have, some load 0.5 V or more under ours: nothing of them is compared.</summary>
    public int LowerFound { get; private set; }

    /// <summary>Settles a rig and adds it to the batch.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="circuit">Its circuit.</param>
    /// <param name="spoilt">The netlist that ngspice gets, of ours; null for the same. A test that must fail makes another.</param>
    public void Add(string name, RigCircuit circuit, Func<Device, Device>? spoilt = null)
    {
        if (circuit.Parts.IsEmpty)
            return;
        var settlement = new Settlement(circuit);
        if (!settlement.Solve())
            throw new InvalidOperationException($"{name}: no steady state was found.");

        // Loads that have dropped out, or that no voltage suits, draw nothing: so they do not in the deck either.
        var off = Enumerable.Range(0, circuit.Loads.Length).Where(load => circuit.Loads[load].Device is not null && settlement.LoadAmps(load) < OffAmps).Select(load => $"load {circuit.Loads[load].Id}").ToHashSet();
        var devices = circuit.Netlist.Devices.Select(device => device is Load load && off.Contains(load.Name) ? load with { Draw = load.Law == LoadLaw.Resistance ? 1e9 : 0 } : device);
        var deck = new SpiceDeck(new Netlist([.. devices.Select(device => spoilt?.Invoke(device) ?? device)]), isSteady: true);
        var ours = circuit.Parts.SelectMany(static part => part.Network.Nodes.Select(node => (node, part.Network.Voltage(node)))).ToDictionary(static pair => pair.node, static pair => pair.Item2);

        // Loads of constant power have a lower solution too. ngspice starts from ours to the nearest 0.1 mV, and goes on to its own answer.
        var guess = string.Join(' ', ours.Select(pair => FormattableString.Invariant($"v({deck.Node(pair.Key)})={Math.Round(pair.Value, 4):R}")));
        _rigs.Add((name, deck, batch.AddOperatingPoint($"{deck.Text}.nodeset {guess}\n", ours.Keys.Select(deck.Node)), ours, circuit));
    }

    /// <summary>Compares, once the batch has run.</summary>
    public void Compare()
    {
        foreach (var (name, deck, number, ours, circuit) in _rigs)
        {
            var theirs = batch.OperatingPoint(number);
            Rigs++;
            if (theirs.Count == 0)
            {
                NotFound++;
                continue;
            }

            if (circuit.Loads.Any(load => load.Jack is { } jack && Across(jack, node => theirs.GetValueOrDefault(deck.Node(node))) < Across(jack, node => ours[node]) - OtherVolts))
            {
                LowerFound++;
                continue;
            }

            foreach (var (node, volts) in ours)
            {
                if (!theirs.TryGetValue(deck.Node(node), out var other))
                    throw new InvalidOperationException($"{name}: ngspice gave no voltage of {node}.");
                Volts.Add(volts - other, $"{name}, {node}");
                Allowed.Add((volts - other) / ((1e-6 * Math.Abs(other)) + 1e-6), $"{name}, {node}");
            }
        }
    }

    private static double Across(Wiring.Terminals jack, Func<string, double> volts) => At(jack.Plus, volts) - At(jack.Minus, volts);

    private static double At(string node, Func<string, double> volts) => node == Netlist.Ground ? 0 : volts(node);
}
