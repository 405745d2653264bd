using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>A rig whose steady state is compared.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Circuit">Its circuit.</param>
/// <param name="Netlist">The netlist that we have solved, without what the loads that are off would draw.</param>
/// <param name="Ours">Our node voltages, V.</param>
/// <param name="Deck">The deck that ngspice solves.</param>
/// <param name="Free">Its number in the batch.</param>
/// <param name="HeldDeck">The same deck with every node held at our voltage.</param>
/// <param name="Held">Its number in the batch.</param>
internal sealed record SteadyCase(
    string Name, RigCircuit Circuit, Netlist Netlist, Dictionary<string, double> Ours, SpiceDeck Deck, int Free, SpiceDeck HeldDeck, int Held);
