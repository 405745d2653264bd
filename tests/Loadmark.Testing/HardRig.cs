using System.Globalization;
using System.Text;

namespace Loadmark.Testing;

/// <summary>Files of rigs whose plan takes long. The gear is invented.</summary>
public static class HardRig
{
    /// <summary>Sixty loads for twelve isolated supplies: a plan takes as long as a plan may.</summary>
    public static string Sixty()
    {
        var draws = new Random(3);
        var rig = new StringBuilder("rig: Sixty\nloads:\n");
        for (var load = 1; load <= 60; load++)
            rig.Append(CultureInfo.InvariantCulture, $"  load-{load}: 9V DC {draws.Next(10, 480)}mA\n");
        rig.Append("supplies:\n");
        for (var supply = 1; supply <= 12; supply++)
            rig.Append(CultureInfo.InvariantCulture, $"  brick-{supply}: {{ isolated: true, total: {draws.Next(10, 22)} W, outlets: {{ 1-{draws.Next(4, 8)}: 9 V DC {draws.Next(1, 6) * 100} mA }} }}\n");
        return rig.Append("leads:\n  chain: { type: daisy chain, plugs: 5, count: 4 }\n").ToString();
    }

    /// <summary>Ninety like loads, chains and shared returns, wired in part: some ten seconds on a quick machine.</summary>
    public static string Ninety()
    {
        var text = new StringBuilder("rig: hard\nloads:\n");
        for (var load = 0; load < 90; load++)
            text.Append(CultureInfo.InvariantCulture, $"  L{load}: {{ kind: {(load % 3 == 0 ? "digital" : "analog drive")}, label: \"{(load % 7 == 0 ? "12V" : "9V")} DC {(load * 37 % 170) + 8}mA\", isolate: {(load % 11 == 0 ? "true" : "false")} }}\n");
        text.Append("supplies:\n");
        for (var supply = 0; supply < 8; supply++)
            text.Append(CultureInfo.InvariantCulture, $"  s{supply}: {{ isolated: {(supply % 2 == 0 ? "true" : "false")}, total: {14 + supply} W, outlets: {{ 1-4: 9 V {150 + (40 * supply)} mA; 12 V 120 mA, 5: 9 V 600 mA; 12 V 450 mA; 18 V 250 mA }} }}\n");
        text.Append("leads:\n  long: { type: daisy chain, plugs: 5, tail: 1.2 m, pitch: 0.25 m, wire: 0.22 mm², count: 9 }\n  short: { type: daisy chain, plugs: 3, tail: 0.6 m, pitch: 0.2 m, wire: 0.22 mm², count: 9 }\n  joint: { type: parallel, length: 0.4 m, count: 6 }\n  pair: { type: series, length: 0.4 m, count: 6 }\n");
        text.Append("wired:\n");
        for (var supply = 0; supply < 8; supply++)
        {
            for (var outlet = 1; outlet <= 4; outlet++)
                text.Append(CultureInfo.InvariantCulture, $"  - {{ from: s{supply}/{outlet}, to: L{(supply * 4) + outlet - 1} }}\n");
        }

        return text.ToString();
    }
}
