using System.Globalization;
using System.Text;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>Writes small rigs in which everything a plan looks at occurs, the same for the same seed.</summary>
/// <param name="seed">The same seed and sizes make the same rig.</param>
/// <param name="mostLoads">How many loads at the most.</param>
/// <param name="mostOutlets">How many outlets at the most.</param>
/// <param name="hubs">How many supplies that are fed by others come on top.</param>
internal sealed class RandomRig(int seed, int mostLoads = 5, int mostOutlets = 4, int hubs = 0)
{
    private static readonly string[] Kinds = ["analog drive", "digital", "digital tuner", "analog modulation", "valve", "odd thing"];
    private static readonly string[] LoadVolts = ["9V", "9V", "9V", "9V", "9V", "9V", "12V", "18V", "9-18V", "9.6V", "5V", "24V", "9V", "12V"];
    private static readonly string[] Modes =
    [
        "9 V DC 100 mA", "9 V DC 100 mA", "9 V DC 200 mA", "9 V DC 300 mA", "9 V DC 500 mA; 12 V DC 300 mA; 18 V DC 200 mA", "9 V DC 500 mA", "9 V DC 500 mA; 12 V DC 300 mA; 18 V DC 200 mA",
        "9 V DC 4 W", "12 V DC 400 mA", "9-18 V DC 250 mA", "9 V AC 500 mA", "9.9 V DC 300 mA", "9 V DC", "4.5 V DC 400 mA", "9 V 300 mA", "12 V 500 mA", "5 V DC 1 A", "24 V DC 200 mA",
        "9 V AC 500 mA", "12 V AC 400 mA", "400 mA", "18 V DC 300 mA", "9 V AC 5 VA", "9 V DC 5 VA",
    ];

    /// <summary>What one of several outlets gives, as the label of a supply prints it.</summary>
    private static readonly string[] PrintedModes = ["9V DC 100mA", "9V DC 200mA", "9V DC 100mA", "12V DC 300mA", "9V AC 500mA", "9V AC 4VA", "9V DC"];
    private static readonly string[] Inputs =
    [
        "INPUT 100-240V~ 50/60Hz 0.6A", "INPUT 100-240V~ 50/60Hz 0.6A", "INPUT 100-240V~ 50/60Hz 0.6A", "INPUT 100-240V~ 50/60Hz 0.6A",
        "INPUT 230V~ 50Hz 10W", "INPUT 220-240V~ 50Hz", "INPUT 115/230V~ 50/60Hz", "INPUT 120V~ 60Hz 0.6A", "INPUT 230V~ 12VA", "",
    ];

    // Seeded and not for secrets: the same rig every time.
    private readonly Random _random = new(seed);
    private readonly StringBuilder _text = new();

    public string Write()
    {
        var loads = _random.Next(1, mostLoads + 1);
        Line($"rig: Seed {seed}");
        if (!Chance(12))
            Line($"mains: {(Chance(8) ? "120 V 60 Hz" : "230 V 50 Hz")}");
        if (Chance(3))
            Line($"headroom: {_random.Next(0, 5) * 10} %");
        Line("loads:");
        for (var load = 1; load <= loads; load++)
            WriteLoad(load);
        WriteSupplies();
        for (var hub = 1; hub <= hubs; hub++)
            WriteHub(hub);
        WriteLeads();
        if (!Chance(3))
            Line($"signal: [{string.Join(", ", Enumerable.Range(1, loads).Where(_ => !Chance(4)).Select(load => $"L{load}").Append("amp"))}]");
        return _text.ToString();
    }

    private void WriteLoad(int load)
    {
        var form = _random.Next(30) switch { < 3 => "AC", < 6 => "AC/DC", < 8 => "", _ => "DC" };
        _text.Append(CultureInfo.InvariantCulture, $"  L{load}: {{ ");
        if (!Chance(6))
            _text.Append(CultureInfo.InvariantCulture, $"kind: {Pick(Kinds)}, ");
        var polarity = form == "AC" || Chance(5) ? "" : $"centre {(Chance(8) ? "positive" : "negative")}";
        var isPrinted = polarity.Length > 0 && Chance(3);
        var ground = Chance(9) ? $"{(Chance(2) ? "positive" : "negative")}" : "";
        var words = (isPrinted ? $" {polarity}" : "") + (ground.Length > 0 && Chance(4) ? $" {ground} ground" : "");
        _text.Append(CultureInfo.InvariantCulture, $"label: \"{LabelText(form)}{words}\"");
        if (!Chance(6))
            _text.Append(CultureInfo.InvariantCulture, $", plug: {(Chance(20) ? "5.5x2.5" : "5.5x2.1")}");
        if (polarity.Length > 0 && !isPrinted)
            _text.Append(CultureInfo.InvariantCulture, $", polarity: {polarity}");
        if (Chance(3))
            _text.Append(CultureInfo.InvariantCulture, $", start: {_random.Next(1, 9) * 50} mA{(Chance(2) ? $" for {_random.Next(1, 4)} s" : "")}");
        if (Chance(5))
            _text.Append(CultureInfo.InvariantCulture, $", run: {_random.Next(1, 9) * 25} mA");
        if (Chance(6))
            _text.Append(", isolate: true");
        if (ground.Length > 0)
            _text.Append(CultureInfo.InvariantCulture, $", ground: {ground}");
        if (Chance(3))
            _text.Append(CultureInfo.InvariantCulture, $", priority: {_random.Next(1, 4)}");
        Line(" }");
    }

    /// <summary>What is printed of voltage and current: one voltage, a range or two modes; amps, watts or neither; now and then nothing at all.</summary>
    private string LabelText(string form)
    {
        if (Chance(40))
            return "";
        if (Chance(20))
            return $"9V {form} {_random.Next(2, 9) * 20}mA; 12V {form} {_random.Next(2, 9) * 15}mA";
        var amount = Chance(12) ? "" : Chance(8) ? $"{_random.Next(1, 4) * 0.75m}{(Chance(3) ? "VA" : "W")}" : $"{_random.Next(1, 9) * 20}mA";
        return string.Create(CultureInfo.InvariantCulture, $"{(Chance(40) ? "" : Pick(LoadVolts))} {form} {amount}");
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
            var input = Pick(Inputs);
            if (Chance(6))
            {
                WriteLabelled(input, outlets);
                continue;
            }

            if (input.Length > 0)
                Line($"    label: \"{input}\"");
            if (!Chance(5))
                Line($"    isolated: {(Chance(2) ? "true" : "false")}");
            if (Chance(3))
                Line($"    total: {(Chance(2) ? $"{_random.Next(2, 8)} W" : $"{_random.Next(2, 8) * 100} mA")}");
            if (Chance(6))
                Line($"    regulated: {(Chance(3) ? "true" : "false")}");
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

    /// <summary>A supply whose label alone says what outlets it has and what they give, or what each of them gives.</summary>
    private void WriteLabelled(string input, int outlets)
    {
        var (mode, other) = (Pick(PrintedModes), Pick(PrintedModes));
        var isEach = outlets > 1 && Chance(4);
        var printed = outlets == 1 ? $"OUTPUT {mode}" : isEach ? $"EACH OUTPUT {mode}" : _random.Next(4) switch
        {
            0 => $"OUTPUTS 1-{outlets} {mode}",
            1 => $"OUTPUTS 1-{outlets - 1} {mode}, {outlets} {other}",
            2 => $"{mode} x{outlets}",
            _ => $"{outlets} OUTPUTS {mode}",
        };
        var polarity = Chance(3) ? "" : " centre negative";
        var isolation = Chance(3) ? "" : Chance(2) ? " isolated" : " not isolated";
        var total = outlets > 1 && Chance(3) ? $" TOTAL {_random.Next(1, 6) * 100}mA" : "";
        Line($"    label: \"{input} {printed}{polarity}{isolation}{total}\"");
        if (isEach)
            Line($"    outlets: {{ 1-{outlets}: \"\" }}");
    }

    /// <summary>A supply with a low-voltage input: what it takes is what other supplies here give, or nearly.</summary>
    private void WriteHub(int hub)
    {
        var input = $"INPUT {Pick(["9V", "9V", "12V", "18V", "9-18V"])} DC {Pick(["150mA", "200mA", "300mA", "400mA"])}";
        var output = $"9V DC {Pick(["50mA", "100mA", "200mA"])} centre negative";
        var count = _random.Next(1, 3);
        Line($"  hub-{hub}:");
        Line($"    label: \"{input}{(Chance(6) ? "" : " centre negative")} {(count == 1 ? $"OUTPUT {output}" : $"{count} OUTPUTS {output}")}\"");
        Line($"    isolated: {(Chance(2) ? "true" : "false")}");
        if (Chance(4))
            Line($"    total: {_random.Next(1, 4) * 100} mA");
    }

    private void WriteOutlet(int outlet, string modes, bool isBanked)
    {
        var polarity = modes.Contains("AC", StringComparison.Ordinal) || Chance(5) ? "" : $"centre {(Chance(12) ? "positive" : "negative")}";
        var isPrinted = polarity.Length > 0 && Chance(3) && !modes.Contains(';', StringComparison.Ordinal);
        _text.Append(CultureInfo.InvariantCulture, $"      {outlet}: {{ label: \"{modes}{(isPrinted ? $" {polarity}" : "")}\"");
        if (polarity.Length > 0 && !isPrinted)
            _text.Append(CultureInfo.InvariantCulture, $", polarity: {polarity}");
        if (Chance(3))
            _text.Append(CultureInfo.InvariantCulture, $", plug: {(Chance(5) ? "5.5x2.5" : "5.5x2.1")}");
        if (Chance(12))
            _text.Append(CultureInfo.InvariantCulture, $", isolated: {(Chance(2) ? "true" : "false")}");
        if (Chance(6))
            _text.Append(CultureInfo.InvariantCulture, $", surge: {_random.Next(3, 9) * 100} mA{(Chance(2) ? " for 2 s" : "")}");
        if (Chance(12))
            _text.Append(CultureInfo.InvariantCulture, $", no_load: {(Chance(3) ? "13 V" : "9.7 V")}");
        if (Chance(12))
            _text.Append(CultureInfo.InvariantCulture, $", source_ohms: {_random.Next(1, 12)} ohm");
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
        if (Chance(6))
            leads.Add($"  narrow: {{ type: straight, plug: {(Chance(2) ? "5.5x2.1" : "5.5x2.5")}{(Chance(2) ? ", count: 1" : "")} }}");
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
