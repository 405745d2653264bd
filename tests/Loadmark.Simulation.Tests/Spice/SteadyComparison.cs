using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>
/// Compares settled node voltages of rigs with ngspice: all nodes of all parts of the circuit. Each program's voltages are also put
/// into the other's equations, which tells a difference of the two from a second solution of the same equations.
/// </summary>
internal sealed class SteadyComparison(NgSpiceBatch batch)
{
    private const double OffAmps = 1e-6;

    /// <summary>What Kirchhoff's law may miss at ngspice's voltages for these to be a solution of ours, A: 1 nV across the least resistance, 1 mΩ.</summary>
    private const double SolvedAmps = 1e-6;

    private readonly List<SteadyCase> _rigs = [];

    /// <summary>The difference of node voltages, as a multiple of what is allowed: 1e-6 of the voltage and 1 µV.</summary>
    public Agreement Allowed { get; } = new("settled node voltages, of 1e-6 relative + 1 µV", "");

    /// <summary>The difference of node voltages, V.</summary>
    public Agreement Volts { get; } = new("settled node voltages", "V");

    /// <summary>What Kirchhoff's law misses at our voltages by ngspice's reckoning, A, at all nodes of all rigs.</summary>
    public Agreement Missing { get; } = new("settled: our voltages held in ngspice, what Kirchhoff's law misses at a node", "A");

    /// <summary>The rigs that were compared or tried.</summary>
    public int Rigs => _rigs.Count;

    /// <summary>Those among them in which ngspice found no operating point: of them only <see cref="Missing"/> is known.</summary>
    public List<string> NotFound { get; } = [];

    /// <summary>Those in which ngspice found another solution of the same equations, with lower voltages at loads and none higher: the same.</summary>
    public List<string> TwoSolutions { get; } = [];

    /// <summary>Those in which the programs truly differ, and how.</summary>
    public List<string> Differences { get; } = [];

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
        var netlist = new Netlist([.. circuit.Netlist.Devices.Select(device => device is LoadDevice load && off.Contains(load.Name) ? load with { Draw = load.Law == LoadLaw.Resistance ? 1e9 : 0 } : device)]);
        var given = new Netlist([.. netlist.Devices.Select(device => spoilt?.Invoke(device) ?? device)]);
        var ours = circuit.Parts.SelectMany(static part => part.Network.Nodes.Select(node => (node, part.Network.Voltage(node)))).ToDictionary(static pair => pair.node, static pair => pair.Item2);

        // Loads of constant power have a lower solution too. ngspice starts from ours to the nearest 0.1 mV, and goes on to its own answer.
        var deck = new SpiceDeck(given, isSteady: true);
        var guess = string.Join(' ', ours.Select(pair => FormattableString.Invariant($"v({deck.Node(pair.Key)})={Math.Round(pair.Value, 4):R}")));
        var free = batch.AddOperatingPoint($"{deck.Text}.nodeset {guess}\n", ours.Keys.Select(node => $"v({deck.Node(node)})"));
        var heldDeck = new SpiceDeck(HeldNodes.Of(given, ours), isSteady: true);
        var held = batch.AddOperatingPoint(heldDeck.Text, ours.Keys.Select(node => HeldNodes.Current(heldDeck, node)));
        _rigs.Add(new SteadyCase(name, circuit, netlist, ours, deck, free, heldDeck, held));
    }

    /// <summary>Compares, once the batch has run.</summary>
    public void Compare()
    {
        foreach (var rig in _rigs)
        {
            var missing = batch.OperatingPoint(rig.Held);
            foreach (var node in rig.Ours.Keys)
                Missing.Add(missing.GetValueOrDefault(HeldNodes.Current(rig.HeldDeck, node), double.PositiveInfinity), $"{rig.Name}, {node}");

            var found = batch.OperatingPoint(rig.Free);
            if (found.Count == 0)
                NotFound.Add(rig.Name);
            else
                Compare(rig, rig.Ours.Keys.ToDictionary(static node => node, node => found[$"v({rig.Deck.Node(node)})"]));
        }
    }

    private static double Share(double ours, double theirs) => (ours - theirs) / ((1e-6 * Math.Abs(theirs)) + 1e-6);

    private static double Across(Wiring.Terminals jack, Dictionary<string, double> volts) => At(jack.Plus, volts) - At(jack.Minus, volts);

    private static double At(string node, Dictionary<string, double> volts) => node == Netlist.Ground ? 0 : volts[node];

    private void Compare(SteadyCase rig, Dictionary<string, double> theirs)
    {
        if (rig.Ours.Any(pair => Math.Abs(Share(pair.Value, theirs[pair.Key])) > 1))
        {
            var missing = HeldNodes.Missing(rig.Netlist, theirs);
            var jacks = rig.Circuit.Loads.Where(static load => load.Jack is not null).Select(load => (load.Id, Ours: Across(load.Jack!.Value, rig.Ours), Theirs: Across(load.Jack.Value, theirs))).ToList();
            var (id, ours, lower) = jacks.MaxBy(static jack => jack.Ours - jack.Theirs);
            var text = FormattableString.Invariant($"{rig.Name}: {id} has {ours:0.######} V with us, {lower:0.######} V with ngspice, whose voltages miss our equations by {missing:0.0e0} A");
            if (missing <= SolvedAmps && jacks.TrueForAll(static jack => Share(jack.Ours, jack.Theirs) >= -1))
            {
                TwoSolutions.Add(text);
                return;
            }

            Differences.Add(text);
        }

        foreach (var (node, volts) in rig.Ours)
        {
            Volts.Add(volts - theirs[node], $"{rig.Name}, {node}");
            Allowed.Add(Share(volts, theirs[node]), $"{rig.Name}, {node}");
        }
    }
}
