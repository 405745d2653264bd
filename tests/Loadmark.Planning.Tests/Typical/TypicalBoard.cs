using System.Globalization;
using System.Text;

namespace Loadmark.Planning.Tests.Typical;

/// <summary>
/// Writes ordinary boards: 5 to 12 pedals with the labels that such pedals have, each on an outlet of its own of one isolated supply, over a
/// straight lead, with room to spare. What is ordinary is common practice, no source.
/// </summary>
/// <param name="seed">The same board for the same seed.</param>
internal sealed class TypicalBoard(int seed)
{
    private static readonly string[] Kinds = ["analog drive", "analog drive", "analog modulation", "analog delay", "digital", "digital tuner"];
    private static readonly string[] Forms = ["9V DC {0}mA", "DC9V {0}mA", "9V ⎓ {0}mA", "9V {0}mA", "9VDC {0}mA centre negative", "DC 9V / {0} mA center negative", "9V⎓{0}mA 5.5x2.1"];
    private static readonly string[] Inputs = ["INPUT 100-240V~ 50/60Hz 0.6A", "AC 100-240V 50-60Hz 0.8A MAX", "INPUT: 100-240V~ 50/60Hz 1.0A"];
    private static readonly string[] Outlets = ["9V DC {0}mA", "9 V {0} mA", "DC9V {0}mA", "9V⎓ {0}mA centre negative"];

    // Seeded and not for secrets: the same board every time.
    private readonly Random _random = new(seed);

    /// <summary>The board as a rig file, wired.</summary>
    public string Write()
    {
        var count = _random.Next(5, 13);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"rig: Board {seed}\nmains: {(_random.Next(2) == 0 ? "230 V 50 Hz" : "120 V 60 Hz")}\nloads:\n");
        var isLarge = new bool[count];
        for (var load = 0; load < count; load++)
        {
            var kind = Pick(Kinds);
            isLarge[load] = kind == "digital";
            var milliamps = isLarge[load] ? _random.Next(5, 21) * 20 : _random.Next(1, 17) * 5;
            text.Append(CultureInfo.InvariantCulture, $"  pedal-{load + 1}: {{ kind: {kind}, label: \"{string.Format(CultureInfo.InvariantCulture, Pick(Forms), milliamps)}\" }}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"supplies:\n  brick:\n    label: \"{Pick(Inputs)}\"\n    isolated: true\n    outlets:\n");
        var outlet = Pick(Outlets);
        for (var load = 0; load < count; load++)
            text.Append(CultureInfo.InvariantCulture, $"      {load + 1}: {string.Format(CultureInfo.InvariantCulture, outlet, isLarge[load] ? 500 : 100)}\n");
        text.Append("wired:\n");
        for (var load = 1; load <= count; load++)
            text.Append(CultureInfo.InvariantCulture, $"  - {{ from: brick/{load}, to: pedal-{load} }}\n");
        text.Append(CultureInfo.InvariantCulture, $"signal: [{string.Join(", ", Enumerable.Range(1, count).Select(static load => $"pedal-{load}"))}, amp]\n");
        return text.ToString();
    }

    private string Pick(string[] from) => from[_random.Next(from.Length)];
}
