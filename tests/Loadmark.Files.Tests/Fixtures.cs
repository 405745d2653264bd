using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

/// <summary>Rig files that several tests use. The gear is invented.</summary>
internal static class Fixtures
{
    public const string Pit = """
        # yaml-language-server: $schema=../schema/rig.schema.json
        rig: Pit board, bass chair
        mains: 230 V 50 Hz
        headroom: 10 %                     # default 10 %

        loads:
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" }
          chorus-1: { kind: analog modulation, label: "DC9V ⎓ 45mA" }
          drive-4: { kind: analog drive, label: "9V 15mA", priority: 3 }
          delay-2:
            name: Delay with the long tail
            kind: digital
            label: "9V⎓ 300mA"
            run: 210 mA                    # measured or published
            start: 520 mA for 1.5 s
            isolate: true                  # needs an isolated outlet
          fuzz-1: { kind: analog drive, label: "9V 3mA", polarity: centre positive, ground: positive }
          preamp-1: { kind: valve, label: "12V DC 6W", plug: 5.5x2.5, draws: resistance }
          preamp-2: { label: "18V 60mA" }

        supplies:
          brick:
            label: "INPUT 100-240V~ 50/60Hz 0.6A"
            isolated: true
            total: 18 W
            outlets:
              1-4: 9 V 150 mA
              5: 9 V 500 mA; 12 V 400 mA; 18 V 250 mA
          wall:
            label: "OUTPUT 9V ⎓ 45W"       # amps derived: 5 A
            outlets: { 1: "" }             # one outlet, as the label says
            overload: hiccup               # current limit (default) | foldback | hiccup | fuse

        leads:
          long chain: { type: daisy chain, plugs: 5, tail: 1.2 m, pitch: 0.25 m, wire: 0.22 mm² }
          flip: { type: reversing, length: 0.5 m }

        wired:                             # leave out to have it planned
          - { from: brick/1, to: drive-3 }
          - { from: brick/5, at: 9 V, to: delay-2 }
          # the chain runs under the board
          - { from: wall/1, lead: long chain, to: [chorus-1, drive-4] }
          - { from: [brick/2, brick/3], joined: series, to: preamp-2 }      # or joined: parallel

        signal: [fuzz-1, drive-3, chorus-1, delay-2, amp]

        """;

    public const string Json = "{\n\t\"rig\": \"Pit \\u00b2 \\ud83c\\udfb8\",\n\t\"loads\": {\n\t\t\"drive-3\": {\"label\": \"9V 12mA\", \"isolate\": false}\n\t},\n\t\"supplies\": {\"wall\": {\"outlets\": {\"1\": \"9 V 1 A\"}}},\n\t\"wired\": [{\"from\": \"wall\", \"to\": [\"drive-3\"]}],\n\t\"signal\": [\"drive-3\", \"amp\"]\n}\n";

    public static Rig Read(string text)
    {
        var reading = RigFileReader.Read(text, "pit.rig.yaml");
        Assert.True(reading.Rig is not null, string.Join('\n', reading.Errors));
        Assert.Empty(reading.Errors);
        return reading.Rig;
    }

    /// <summary>A rig of one load and the supplies a and wall, with more text below.</summary>
    public static string Small(string more) => $$"""
        rig: r
        loads: { drive-3: {}, delay-2: {} }
        supplies: { a: { outlets: { 1-3: 9 V 1 A } }, wall: { outlets: { 1: "" } } }
        {{more}}
        """;
}
