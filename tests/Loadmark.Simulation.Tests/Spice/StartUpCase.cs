using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>A rig whose start-up is compared.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Netlist">The netlist that we have run.</param>
/// <param name="Nodes">The nodes compared.</param>
/// <param name="Loads">The loads that switch.</param>
/// <param name="End">Up to when it is compared, s.</param>
/// <param name="Ours">What we have computed.</param>
/// <param name="Deck">The deck that ngspice runs.</param>
/// <param name="Columns">What is wanted of it: the nodes, then what tells of each load that it is on and has started.</param>
/// <param name="Number">Its number in the batch.</param>
internal sealed record StartUpCase(
    string Name, Netlist Netlist, string[] Nodes, string[] Loads, double End, TransientRecorder Ours, SpiceDeck Deck, string[] Columns, int Number);
