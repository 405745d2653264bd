namespace Loadmark.Browser.Tests.House;

/// <summary>Small rigs that between them bring up every state that the page can show a rig in.</summary>
internal static class StateRigs
{
    /// <summary>
    /// A rig with findings of four severities, supplies and leads of every sort, a load on nothing, questions with more answers than are
    /// shown at once, and more loads than a list shows without a field to find them in.
    /// </summary>
    public const string Everything = """
        rig: Everything at once
        mains: 230 V 50 Hz
        headroom: 10 %

        loads:
          tuner-1: { kind: digital tuner, label: "9V DC 30mA centre negative 5.5x2.1", start: 45 mA for 0.2 s }
          drive-1: { kind: analog drive, label: "9V DC 12mA centre negative 5.5x2.1" }
          drive-2: { kind: analog drive, label: "9V DC 14mA centre negative 5.5x2.1" }
          chorus-1: { kind: analog modulation, label: "9V DC 95mA centre negative 5.5x2.1" }
          delay-1: { kind: digital, label: "9V DC 300mA centre negative 5.5x2.1", run: 190 mA, start: 610 mA for 1.2 s }
          delay-2: { name: Delay with the long tail, kind: digital, label: "9V DC 300mA 5.5x2.1" }
          reverb-1: { kind: digital, label: "9V DC 350mA centre negative 5.5x2.1", run: 240 mA, start: 470 mA for 1.5 s }
          looper-1: { kind: digital, label: "9V DC 500mA centre negative 5.5x2.1", run: 360 mA }
          harmony-1: { kind: large digital, label: "9V DC 600mA centre negative 5.5x2.1", run: 430 mA, start: 900 mA for 2 s }
          preamp-1: { name: Preamp for 18 V, kind: analog preamp, label: "18V DC 60mA centre negative 5.5x2.1" }
          synth-1: { kind: digital, label: "9V DC 280mA centre negative 5.5x2.1" }

        supplies:
          brick:
            label: "INPUT 100-240V~ 50/60Hz 0.8A"
            isolated: true
            total: 24 W
            outlets:
              1-4: { label: 9 V DC 100 mA, polarity: centre negative, plug: 5.5x2.1 }
              5-6: { label: 9 V DC 500 mA; 12 V DC 400 mA; 18 V DC 250 mA, polarity: centre negative, plug: 5.5x2.1 }
          spare:
            name: Wall adaptor in the toolbox
            label: "INPUT 100-240V~ 50/60Hz 1.2A OUTPUT 9V ⎓ 3A centre negative 5.5x2.1"
            outlets: { 1: "" }
            overload: hiccup

        leads:
          pair: { type: daisy chain, plugs: 2, tail: 0.4 m, pitch: 0.15 m, wire: 0.22 mm² }
          long chain: { type: daisy chain, plugs: 5, tail: 1.2 m, pitch: 0.25 m, wire: 0.5 mm² }
          twice: { type: series, length: 0.5 m }
          flip: { type: reversing, length: 0.5 m }

        wired:
          - { from: brick/1, to: chorus-1 }
          - { from: brick/2, lead: pair, to: [drive-1, drive-2] }
          - { from: [brick/3, brick/4], joined: series, lead: twice, to: preamp-1 }
          - { from: brick/5, at: 9 V, to: delay-1 }
          - { from: spare/1, lead: long chain, to: [tuner-1, delay-2, reverb-1, looper-1, synth-1] }

        """;

    /// <summary>A rig for each verdict: the verdict as the page says it, and the rig's file.</summary>
    public static IReadOnlyDictionary<string, string> Verdicts { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["Harm"] = Of("9V DC 12mA centre negative 5.5x2.1", "18V DC 1A centre negative 5.5x2.1"),
        ["Fails"] = Of("9V DC 200mA centre negative 5.5x2.1", "9V DC 100mA centre negative 5.5x2.1"),
        ["Open"] = Of("9V DC 12mA centre negative 5.5x2.1", "9V DC 1A centre negative 5.5x2.1", isWired: false),
        ["Unsure"] = Of("9V DC 12mA centre negative 5.5x2.1", "9V DC 1A 5.5x2.1"),
        ["Noise"] = Of("9V DC 12mA centre negative 5.5x2.1", "9V DC 1A centre negative 5.5x2.1", more: "delay-1"),
        ["Margin"] = Of("9V DC 95mA centre negative 5.5x2.1", "9V DC 100mA centre negative 5.5x2.1"),
        ["Note"] = Of("9V DC 12mA 5.5x2.1", "9V DC 1A centre negative 5.5x2.1"),
        ["Good"] = Of("9V DC 12mA centre negative 5.5x2.1", "9V DC 1A centre negative 5.5x2.1"),
    };

    private static string Of(string load, string output, bool isWired = true, string? more = null)
    {
        var second = more is null ? "" : $"  {more}: {{ kind: digital, label: \"{load}\", start: 12 mA for 1 s, ground: negative }}";
        var wired = isWired ? $"wired: [{{ from: wall/1, lead: pair, to: [{(more is null ? "drive-1" : $"drive-1, {more}")}] }}]" : "";
        return $$"""
            rig: One answer
            mains: 230 V 50 Hz
            loads:
              drive-1: { kind: analog drive, label: "{{load}}", ground: negative }
            {{second}}
            supplies:
              wall: { label: "INPUT 100-240V~ 50/60Hz 1A OUTPUT {{output}}", regulated: true, outlets: { 1: "" } }
            leads:
              pair: { type: daisy chain, plugs: 2, tail: 0.4 m, pitch: 0.15 m, wire: 0.22 mm² }
            {{wired}}

            """;
    }
}
