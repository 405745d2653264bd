using System.Text;

namespace Loadmark.Tests.Http;

/// <summary>A rig that is planned for some ten seconds on a quick machine: many like loads, chains and shared returns.</summary>
internal static class HardRig
{
    /// <summary>The rig's file, wired in part.</summary>
    public static string Text()
    {
        var text = new StringBuilder("rig: hard\nloads:\n");
        for (var load = 0; load < 90; load++)
            text.Append($"  L{load}: {{ kind: {(load % 3 == 0 ? "digital" : "analog drive")}, label: \"{(load % 7 == 0 ? "12V" : "9V")} DC {(load * 37 % 170) + 8}mA\", isolate: {(load % 11 == 0 ? "true" : "false")} }}\n");
        text.Append("supplies:\n");
        for (var supply = 0; supply < 8; supply++)
            text.Append($"  s{supply}: {{ isolated: {(supply % 2 == 0 ? "true" : "false")}, total: {14 + supply} W, outlets: {{ 1-4: 9 V {150 + (40 * supply)} mA; 12 V 120 mA, 5: 9 V 600 mA; 12 V 450 mA; 18 V 250 mA }} }}\n");
        text.Append("leads:\n  long: { type: daisy chain, plugs: 5, tail: 1.2 m, pitch: 0.25 m, wire: 0.22 mm², count: 9 }\n  short: { type: daisy chain, plugs: 3, tail: 0.6 m, pitch: 0.2 m, wire: 0.22 mm², count: 9 }\n  joint: { type: parallel, length: 0.4 m, count: 6 }\n  pair: { type: series, length: 0.4 m, count: 6 }\n");
        text.Append("wired:\n");
        for (var supply = 0; supply < 8; supply++)
        {
            for (var outlet = 1; outlet <= 4; outlet++)
                text.Append($"  - {{ from: s{supply}/{outlet}, to: L{(supply * 4) + outlet - 1} }}\n");
        }

        return text.ToString();
    }
}
