using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Tests;

/// <summary>Readings of nameplates, made by hand to show every part of an answer.</summary>
internal static class DemoNameplates
{
    private const string Label = "MODEL HR-8 INPUT 100-240V~ 50/60Hz 0.6A OUTPUT 9-12V⎓ 300mA 2.7W ctr neg 5.5x2.1 LOT 77831 «prüf» ok";
    private const string Scrawl = "9V 1,000 mA, tip + or -, plug 5.5";

    /// <summary>The label of a supply with several outlets, fed from an adaptor.</summary>
    public const string Outlets = "INPUT 24V⎓2.5A OUTPUTS 1-4: 9V⎓100mA isolated, 5: 9/12/18V⎓300mA, TOTAL 36W\npolarity see drawing";

    public static Nameplate Everything => new(Label)
    {
        Form = Field<SupplyForm>.Read(SupplyForm.Direct, At(Label, "⎓")),
        Modes =
        [
            new Mode(new QuantityRange<Volt>(new Volts(9), new Volts(12)), new Figure<Amps>(new Amps(0.3m), Origin.Stated), new Figure<Watts>(new Watts(2.70m), Origin.Stated))
            {
                VoltsPlace = At(Label, "9-12V"), AmpsPlace = At(Label, "300mA"), WattsPlace = At(Label, "2.7W"),
            },
            new Mode(QuantityRange<Volt>.Single(new Volts(18)), new Figure<Amps>(new Amps(1m / 3), Origin.Derived), null) { AmpsFrom = new Amps(0.1m) },
        ],
        Polarity = Field<Polarity>.Read(Polarity.CentreNegative, At(Label, "ctr neg")),
        Plug = Field<Plug>.Read(Plug.Common, At(Label, "5.5x2.1")),
        Mains = new MainsInput(
            new QuantityRange<Volt>(new Volts(100), new Volts(240)),
            new QuantityRange<Hertz>(new Frequency(50), new Frequency(60)),
            new Amps(0.6m),
            null,
            At(Label, "100-240V~ 50/60Hz 0.6A")),
        Derived = ["amps"],
        Conflicts = ["9 V × 300 mA is 2.7 W, and 5 W is printed."],
        Unread = [new Unread("LOT 77831", At(Label, "LOT 77831")), new Unread("«prüf» ok", At(Label, "«prüf» ok"))],
    };

    public static Nameplate Unclear => new(Scrawl)
    {
        Modes = [new Mode(QuantityRange<Volt>.Single(new Volts(9)), null, null) { VoltsPlace = At(Scrawl, "9V") }],
        AmbiguousAmps = Field<Amps>.Ambiguous([new Amps(0.001m), new Amps(1)], At(Scrawl, "1,000 mA")),
        Polarity = Field<Polarity>.Ambiguous([Polarity.CentreNegative, Polarity.CentrePositive], At(Scrawl, "tip + or -")),
        Plug = Field<Plug>.Unreadable(At(Scrawl, "plug 5.5")),
    };

    private static Place At(string text, string piece) => new(text.IndexOf(piece, StringComparison.Ordinal), piece.Length);
}
