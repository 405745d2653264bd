using System.Globalization;
using System.Text;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>Writes small rigs in which everything a plan looks at occurs, the same for the same seed.</summary>
/// <param name="seed">The same seed and sizes make the same rig.</param>
/// <param name="mostLoads">How many loads at the most.</param>
/// <param name="mostOutlets">How many outlets at the most.</param>
internal sealed class RandomRig(int seed, int mostLoads = 5, int mostOutlets = 4)
{
    private static readonly string[] Kinds = ["analog drive", "digital", "digital tuner", "analog modulation", "valve", "odd thing"];
    private static readonly string[] LoadVolts = ["9V", "9V", "9V", "9V", "9V", "9V", "12V", "18V", "9-18V", "9.6V"];
    private static readonly string[] Modes =
    [
        "9 V DC 100 mA", "9 V DC 100 mA", "9 V DC 200 mA", "9 V DC 300 mA", "9 V DC 500 mA; 12 V DC 300 mA; 18 V DC 200 mA", "9 V DC 500 mA", "9 V DC 500 mA; 12 V DC 300 mA; 18 V DC 200 mA",
        "9 V DC 4 W", "12 V DC 400 mA", "9-18 V DC 250 mA", "9 V AC 500 mA", "9.9 V DC 300 mA", "9 V DC", "4.5 V DC 400 mA",
    ];

    // Seeded and not for secrets: the same rig every time.
    private readonly Random _random = new(seed);
    private readonly StringBuilder _text = new();

    public string Write()
    {
        var loads = _random.Next(1, mostLoads + 1);
        Line($"rig: Seed {seed}");
        Line("mains: 230 V 50 Hz");
        if (Chance(3))
            Line($"headroom: {_random.Next(0, 5) * 10} %");
        Line("loads:");
        for (var load = 1; load <= loads; load++)
            WriteLoad(load);
        WriteSupplies();
        WriteLeads();
        if (!Chance(3))
            Line($"signal: [{string.Join(", ", Enumerable.Range(1, loads).Where(_ => !Chance(4)).Select(load => $"L{load}").Append("amp"))}]");
        return _text.ToString();
    }

    private void WriteLoad(int load)
    {
        var amount = Chance(12) ? "" : Chance(8) ? $"{_random.Next(1, 4) * 0.75m} W" : $"{_random.Next(1, 9) * 20} mA";
        var form = Chance(30) ? "AC" : "DC";
        var plug = Chance(25) ? "5.5x2.5" : "5.5x2.1";
        _text.Append(CultureInfo.InvariantCulture, $"  L{load}: {{ kind: {Pick(Kinds)}, label: \"{Pick(LoadVolts)} {form} {amount}\", plug: {plug}");
        if (form == "DC")
            _text.Append(CultureInfo.InvariantCulture, $", polarity: centre {(Chance(8) ? "positive" : "negative")}");
        if (Chance(3))
            _text.Append(CultureInfo.InvariantCulture, $", start: {_random.Next(1, 9) * 50} mA{(Chance(2) ? $" for {_random.Next(1, 4)} s" : "")}");
        if (Chance(5))
            _text.Append(CultureInfo.InvariantCulture, $", run: {_random.Next(1, 9) * 25} mA");
        if (Chance(6))
            _text.Append(", isolate: true");
        if (Chance(12))
            _text.Append(", ground: positive");
        if (Chance(3))
            _text.Append(CultureInfo.InvariantCulture, $", priority: {_random.Next(1, 4)}");
        Line(" }");
    }

    private void WriteSupplies()
    {
        var left = _random.Next(2, mostOutlets + 1);
        Line("supplies:");
        for (var supply = 1; left > 0; supply++)
        {
            var outlets = _random.Next(1, left + 1);
            left -= outlets;
            Line($"  S{supply}:");
            Line($"    label: \"INPUT {(Chance(25) ? "120V~ 60Hz" : "100-240V~ 50/60Hz")} 0.6A\"");
            if (!Chance(5))
                Line($"    isolated: {(Chance(2) ? "true" : "false")}");
            if (Chance(3))
                Line($"    total: {(Chance(2) ? $"{_random.Next(2, 8)} W" : $"{_random.Next(2, 8) * 100} mA")}");
            if (Chance(8))
                Line("    regulated: false");
            var isBanked = Chance(5);
            if (isBanked)
                Line($"    banks: {{ low: {{ total: {_random.Next(1, 6) * 100} mA }} }}");
            Line("    outlets:");
            var modes = Pick(Modes);
            for (var outlet = 1; outlet <= outlets; outlet++)
            {
                if (Chance(3))
                    modes = Pick(Modes);
                WriteOutlet(outlet, modes, isBanked);
            }
        }
    }

    private void WriteOutlet(int outlet, string modes, bool isBanked)
    {
        _text.Append(CultureInfo.InvariantCulture, $"      {outlet}: {{ label: \"{modes}\"");
        if (!modes.Contains("AC", StringComparison.Ordinal))
            _text.Append(CultureInfo.InvariantCulture, $", polarity: centre {(Chance(14) ? "positive" : "negative")}");
        if (Chance(15))
            _text.Append(", plug: 5.5x2.5");
        if (Chance(6))
            _text.Append(CultureInfo.InvariantCulture, $", surge: {_random.Next(3, 9) * 100} mA{(Chance(2) ? " for 2 s" : "")}");
        if (Chance(12))
            _text.Append(", no_load: 9.7 V");
        if (isBanked && (outlet == 1 || Chance(2)))
            _text.Append(", bank: low");
        Line(" }");
    }

    private void WriteLeads()
    {
        var leads = new List<string>();
        if (Chance(2))
            leads.Add($"  chain: {{ type: daisy chain{(Chance(3) ? "" : $", plugs: {_random.Next(2, 5)}")}{(Chance(3) ? ", count: 2" : "")} }}");
        if (Chance(6))
            leads.Add("  other chain: { type: daisy chain, plugs: 2 }");
        if (Chance(3))
            leads.Add($"  flip: {{ type: reversing{(Chance(4) ? ", plugs: 2" : "")} }}");
        if (Chance(4))
            leads.Add($"  in line: {{ type: series{(Chance(4) ? ", plugs: 2" : "")} }}");
        if (Chance(4))
            leads.Add($"  side by side: {{ type: parallel{(Chance(4) ? ", plugs: 2" : "")} }}");
        if (leads.Count == 0)
            return;
        Line("leads:");
        foreach (var lead in leads)
            Line(lead);
    }

    private bool Chance(int oneIn) => _random.Next(oneIn) == 0;

    private string Pick(string[] from) => from[_random.Next(from.Length)];

    private void Line(string text) => _text.Append(text).Append('\n');
}
