using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Field = Loadmark.Files.Keys.FieldKey<Loadmark.Core.Rigs.Outlet>;

namespace Loadmark.Files.Keys;

/// <summary>The keys of an outlet.</summary>
internal static class OutletKeys
{
    /// <summary>The keys of an outlet, in the order in which they are written.</summary>
    public static FieldTable<Outlet> Table { get; } = new("outlet", "an outlet",
        new Field("label", "Label, as printed", ValueKinds.OutletLabel,
            static outlet => outlet.Label, static (outlet, value) => outlet with { Label = (Nameplate?)value ?? NameplateReader.Read("") },
            "What is printed beside it; several settings with ';' between. Left out, the supply's label counts.",
            examples: ["9 V 500 mA; 12 V 400 mA"], column: "outlet_label", columns: ["output label"]),
        new Field("isolated", "Outlets are isolated", ValueKinds.YesNo,
            static outlet => outlet.Isolated, static (outlet, value) => outlet with { Isolated = value is bool said ? said : null },
            "Whether its return is its own. Without it, the supply's word counts.", column: "outlet_isolated"),
        new Field("bank", "Shares its return with bank", ValueKinds.Text,
            static outlet => outlet.Bank, static (outlet, value) => outlet with { Bank = (string?)value },
            "The group of outlets whose return it shares."),
        new Field("polarity", "Polarity of its plug", ValueKinds.Word(RigWords.Polarity),
            static outlet => outlet.Polarity, static (outlet, value) => outlet with { Polarity = value is Polarity said ? said : null },
            "The polarity of its plug. Wins over the label; stated nowhere, centre negative is assumed of an outlet of 9 V on a "
            + "supply with several, and asked for of an adaptor and of all else.",
            columns: ["centre", "center"]),
        new Field("plug", "Plug", ValueKinds.Plug,
            static outlet => outlet.Plug, static (outlet, value) => outlet with { Plug = value is Plug said ? said : null },
            "The plug it has, outer by inner diameter in mm. Wins over the label; stated nowhere, 5.5x2.1 is assumed of an outlet of 9 V "
            + "and asked for of all else.",
            examples: RigWords.PlugExamples, columns: ["connector", "plug size"]),
        new Field("source_ohms", "Resistance behind it", ValueKinds.Of(Unit.Ohm, "a resistance such as 0.05 Ω", keySaysUnit: true),
            static outlet => outlet.SourceOhms, static (outlet, value) => outlet with { SourceOhms = value is Ohms said ? said : null },
            "The resistance behind the outlet.", examples: ["0.05 Ω"]),
        new Field("surge", "Bears for a moment", ValueKinds.Timed("a current such as 1 A for 100 ms", "1 A for 100 ms"),
            static outlet => outlet.Surge, static (outlet, value) => outlet with { Surge = value is TimedCurrent said ? said : null },
            "What it bears for a moment beyond its limit.", examples: ["1 A for 100 ms"]),
        new Field("no_load", "Voltage with nothing connected", ValueKinds.Of(Unit.Volt, "a voltage such as 13.2 V", mayBeZero: false),
            static outlet => outlet.NoLoad, static (outlet, value) => outlet with { NoLoad = value is Volts said ? said : null },
            "The voltage with nothing connected, as measured.", examples: ["13.2 V"]))
    {
        TextKey = "label",
    };
}
