using System.Globalization;
using System.Text;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>Rigs from a seed, as the text of a rig file: supplies with shared and isolated returns, leads of every sort, loads of every law.</summary>
internal static class RandomRigs
{
    private static readonly string[] Laws = ["current", "power", "resistance"];
    private static readonly string[] Kinds = ["analog drive", "analog modulation", "digital", "large digital"];

    /// <summary>The text of a rig.</summary>
    public static string Text(int seed)
    {
        var random = new Random(seed);
        var (loads, supplies, leads, wired) = (new StringBuilder(), new StringBuilder(), new StringBuilder(), new StringBuilder());
        var count = 0;
        for (var supply = 1; supply <= random.Next(1, 3); supply++)
        {
            supplies.Append(CultureInfo.InvariantCulture, $"  s{supply}:\n    regulated: true\n    isolated: {(random.Next(2) == 0 ? "true" : "false")}\n    overload: {(random.Next(3) == 0 ? "foldback" : "current limit")}\n    outlets:\n");
            for (var outlet = 1; outlet <= random.Next(1, 4); outlet++)
            {
                var source = random.Next(2) == 0 ? "" : Format($", source_ohms: {0.02 + random.NextDouble():0.000} Ω");
                supplies.Append(Format($"      {outlet}: {{ label: \"9 V DC {random.Next(6, 20) * 100} mA centre negative\"{source} }}\n"));
                Feed($"s{supply}/{outlet}");
            }
        }

        return $"rig: random {seed}\nloads:\n{loads}supplies:\n{supplies}{(leads.Length == 0 ? "" : $"leads:\n{leads}")}wired:\n{wired}";

        void Feed(string outlet)
        {
            var lead = $"lead {outlet.Replace('/', ' ')}";
            switch (random.Next(4))
            {
                case 0:
                    var plugs = random.Next(2, 6);
                    var wire = random.Next(2) == 0 ? "0.22 mm²" : "0.14 mm²";
                    leads.Append(Format($"  {lead}: {{ type: daisy chain, plugs: {plugs}, tail: {0.3 + random.NextDouble():0.00} m, pitch: {0.1 + (0.3 * random.NextDouble()):0.00} m, wire: {wire}, contact_ohms: {random.Next(5, 50)} mΩ }}\n"));
                    wired.Append(Format($"  - {{ from: {outlet}, lead: {lead}, to: [{string.Join(", ", Enumerable.Range(0, plugs).Select(_ => Load()))}] }}\n"));
                    break;
                case 1:
                    leads.Append(Format($"  {lead}: {{ length: {0.2 + (2 * random.NextDouble()):0.00} m, wire: {random.Next(24, 28)} AWG }}\n"));
                    wired.Append(Format($"  - {{ from: {outlet}, lead: {lead}, to: {Load()} }}\n"));
                    break;
                case 2:
                    leads.Append(Format($"  {lead}: {{ type: straight, ohms: {0.02 + (0.4 * random.NextDouble()):0.000} Ω, contact_ohms: 15 mΩ }}\n"));
                    wired.Append(Format($"  - {{ from: {outlet}, lead: {lead}, to: {Load()} }}\n"));
                    break;
                default:
                    wired.Append(Format($"  - {{ from: {outlet}, to: {Load()} }}\n"));
                    break;
            }
        }

        string Load()
        {
            var id = $"LD-{++count:00}";
            var milliamps = random.Next(5, 400);
            var start = random.Next(3) == 0 ? Format($", start: {milliamps + random.Next(10, 200)} mA for {random.Next(30, 90)} ms") : "";
            loads.Append(Format($"  {id}: {{ kind: {Kinds[random.Next(Kinds.Length)]}, label: \"9V DC {milliamps}mA centre negative\", draws: {Laws[random.Next(Laws.Length)]}, input_capacitance: {random.Next(20, 400)} µF{start} }}\n"));
            return id;
        }
    }

    private static string Format(FormattableString text) => FormattableString.Invariant(text);
}
