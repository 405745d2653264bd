using System.Text;
using Loadmark.Core.Ratings;
using Loadmark.Files;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Bench;

/// <summary>Rigs of loads on daisy chains, written as a user writes them.</summary>
internal static class SampleChains
{
    /// <summary>The circuit of loads on chains, each chain on an outlet of its own; the draws come from a fixed seed.</summary>
    public static RigCircuit Of(int chains, int loads)
    {
        var random = new Random(20);
        var (gear, outlets, leads, wired) = (new StringBuilder(), new StringBuilder(), new StringBuilder(), new StringBuilder());
        var each = loads / chains;
        for (var chain = 1; chain <= chains; chain++)
        {
            outlets.Append($"      {chain}: {{ label: \"9 V DC 4 A centre negative\", source_ohms: 0.15 Ω }}\n");
            leads.Append($"  chain {chain}: {{ type: daisy chain, plugs: {each}, tail: 0.5 m, pitch: 0.1 m, wire: 0.5 mm², contact_ohms: 5 mΩ }}\n");
            for (var load = 1; load <= each; load++)
            {
                var milliamps = Math.Max(1, (300 + random.Next(1000)) / each);
                gear.Append($"  C{chain}-{load}: {{ kind: {(load % 2 == 0 ? "digital" : "analog drive")}, label: \"9V DC {milliamps}mA centre negative\", start: {2 * milliamps} mA for {200 + random.Next(2000)} ms, input_capacitance: {47 + random.Next(200)} µF }}\n");
            }

            wired.Append($"  - {{ from: s/{chain}, lead: chain {chain}, to: [{string.Join(", ", Enumerable.Range(1, each).Select(load => $"C{chain}-{load}"))}] }}\n");
        }

        var reading = RigFileReader.Read($"rig: {loads} loads\nloads:\n{gear}supplies:\n  s:\n    isolated: true\n    regulated: true\n    outlets:\n{outlets}leads:\n{leads}wired:\n{wired}", "sample.rig.yaml");
        return RigCircuit.Of(WiredRig.Of(reading.Rig ?? throw new InvalidOperationException(string.Join('\n', reading.Errors))));
    }
}
