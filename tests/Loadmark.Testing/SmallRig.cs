namespace Loadmark.Testing;

/// <summary>A small rig that several tests use. The gear is invented.</summary>
public static class SmallRig
{
    /// <summary>A rig without a fault, a comment in its file, one outlet free.</summary>
    public const string Text = """
        rig: Pier Theatre
        mains: 230 V 50 Hz
        # the loads
        loads:
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative 5.5x2.1" } # loud
          delay-2: { kind: digital, label: "9V DC 300mA centre negative 5.5x2.1" }
          preamp-2: { kind: digital preamp, label: "18V DC 60mA centre negative 5.5x2.1" }
        supplies:
          brick:
            label: "INPUT 100-240V~ 50/60Hz 0.6A"
            isolated: true
            regulated: true
            outlets:
              1: { label: 9 V DC 150 mA, polarity: centre negative, plug: 5.5x2.1 }
              2: { label: 9 V DC 500 mA; 18 V DC 250 mA, polarity: centre negative, plug: 5.5x2.1 }
              3: { label: 9 V DC 150 mA, polarity: centre negative, plug: 5.5x2.1 }
        wired:
          - { from: brick/1, to: drive-3 }
          - { from: brick/2, at: 9 V, to: delay-2 }

        """;
}
