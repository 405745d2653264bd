using System.Text;
using Loadmark.Circuits.Spice;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation;

/// <summary>The circuit of a rig as a deck for any SPICE program, with comments that name the parts of the rig.</summary>
public static class RigDeck
{
    /// <summary>Writes the deck.</summary>
    /// <param name="circuit">The circuit; the figures of the rig are written, whatever has been changed since.</param>
    /// <param name="isSteady">Whether for the steady state with every load on; else for the first seconds, from rest.</param>
    /// <exception cref="InvalidOperationException">Nothing of the rig is in the circuit.</exception>
    public static string Write(RigCircuit circuit, bool isSteady)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        if (circuit.Parts.IsEmpty)
            throw new InvalidOperationException("Nothing of the rig is wired, so there is no circuit.");

        var words = Words(circuit);
        var deck = new SpiceDeck(circuit.Netlist, isSteady, device => OneLine(words.GetValueOrDefault(device.Name) ?? device.Name));
        var text = new StringBuilder();
        text.Append("* ").Append(OneLine(circuit.Rig.Rig.Name)).Append('\n');
        text.Append("* Written by loadmark. Volts, amps, ohms, farads and seconds; returns that nothing joins are all node 0.\n");
        foreach (var assumption in circuit.Assumptions)
            text.Append("* assumed: ").Append(OneLine(assumption.ToString())).Append('\n');
        foreach (var untold in circuit.Untold)
            text.Append("* ").Append(OneLine(untold.Because)).Append('\n');
        text.Append(deck.Text);
        foreach (var load in circuit.Loads)
        {
            if (load.Jack is { } jack)
                text.Append(
                    FormattableString.Invariant($"* {OneLine(load.Id)} is between {deck.Node(jack.Plus)} and {deck.Node(jack.Minus)}\n"));
        }

        text.Append(isSteady ? ".op\n" : FormattableString.Invariant($".tran 1m {new StartUpRun(circuit).EndSeconds:R} 0 1m uic\n"));
        return text.Append(".end\n").ToString();
    }

    private static Dictionary<string, string> Words(RigCircuit circuit)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var outlet in circuit.Outlets)
        {
            var limit = double.IsFinite(outlet.LimitAmps) ? $", limit {SiConversion.Amps(outlet.LimitAmps)}" : "";
            words[NameOf(circuit, outlet.Device)] =
                $"outlet {outlet.Name}: {SiConversion.Volts(outlet.Volts)}{limit}{Way(outlet.Overload)}";
        }

        foreach (var load in circuit.Loads)
        {
            if (load.Device is { } device)
                words[NameOf(circuit, device)] = $"{load.Id}: {SiConversion.Amps(load.RunAmps)} at {SiConversion.Volts(load.NominalVolts)}";
        }

        foreach (var part in circuit.Leads)
        {
            foreach (var device in part.Devices)
                words[NameOf(circuit, device)] = $"{part.Name} ({NameOf(circuit, device).Split(", ")[^1]})";
        }

        return words;
    }

    private static string Way(OverloadWay? way) => way switch
    {
        OverloadWay.Foldback => ", folds back",
        OverloadWay.Hiccup => ", hiccup",
        OverloadWay.Fuse => ", behind a fuse",
        _ => "",
    };

    private static string NameOf(RigCircuit circuit, DevicePlace place) => circuit.Parts[place.Part].Network.Devices[place.Number].Name;

    /// <summary>Ids come from files; a line end in one must not end the comment.</summary>
    private static string OneLine(string text) => string.Concat(text.Select(static letter => char.IsControl(letter) ? ' ' : letter));
}
