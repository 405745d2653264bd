using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Field = Loadmark.Files.Keys.FieldKey<Loadmark.Core.Rigs.Load>;

namespace Loadmark.Files.Keys;

/// <summary>The keys of a load.</summary>
internal static class LoadKeys
{
    private const string CurrentForm = "a current such as 300 mA";
    private const string VoltageForm = "a voltage such as 7.5 V";

    /// <summary>The keys of a load, in the order in which they are written.</summary>
    public static FieldTable<Load> Table { get; } = new("load", "a load",
        new Key("from", ValueForm.Word,
            "Where the rest is said: 'library' takes everything else from the gear library, by the tag. What stands beside it wins; "
            + "an empty value says that there is none.")
        {
            Words = RigWords.GearSource.All,
        },
        new Field("name", "Name", ValueKinds.Text,
            static load => load.Name, static (load, value) => load with { Name = (string?)value },
            "A name for people. Without it, the tag stands alone.", columns: ["item", "device", "pedal", "description", "model"]),
        new Field("kind", "Kind", ValueKinds.Kind,
            static load => load.Kind, static (load, value) => load with { Kind = (LoadKind?)value },
            "What sort of load it is, in your words, such as 'analog drive' or 'digital'. It decides what draw is assumed when none "
            + "is known.",
            examples: [.. LoadKind.Known], columns: ["type", "category", "sort"]),
        new Field("label", "Label, as printed", ValueKinds.Label,
            static load => load.Label, static (load, value) => load with { Label = (Nameplate?)value },
            "What is printed on it, typed as it stands.",
            examples: ["9V DC 12mA centre negative"], columns: ["nameplate", "rating", "ratings", "rating plate", "printed", "as printed"]),
        new Field("voltage", "Voltage it takes", ValueKinds.Voltage,
            static load => load.Voltage, static (load, value) => load with { Voltage = (Nameplate?)value },
            "The voltage, or voltages, it takes. Wins over the label.", examples: ["9 V", "9-18 V", "9 V AC"]),
        new Field("current", "Rated current", ValueKinds.Of(Unit.Ampere, CurrentForm),
            static load => load.Current, static (load, value) => load with { Current = value is Amps said ? said : null },
            "The rated current. Wins over the label.",
            examples: ["300 mA"], columns: ["draw", "current draw", "rated current", "consumption"]),
        new Field("watts", "Rated power", ValueKinds.Of(Unit.Watt, "a power such as 6 W", keySaysUnit: true),
            static load => load.Watts, static (load, value) => load with { Watts = value is Watts said ? said : null },
            "The rated power. Wins over the label.", examples: ["6 W"], columns: ["power"]),
        new Field("run", "Running current, measured", ValueKinds.Of(Unit.Ampere, CurrentForm),
            static load => load.Run, static (load, value) => load with { Run = value is Amps said ? said : null },
            "The running current, measured or published. Without it, the rated current counts.",
            examples: ["210 mA"], columns: ["running", "running current", "measured", "measured current"]),
        new Field("start", "Starting current", ValueKinds.Timed(CurrentForm, "520 mA for 1.5 s"),
            static load => load.Start, static (load, value) => load with { Start = value is TimedCurrent said ? said : null },
            "The current while it starts, with how long that lasts. Without it, the running current counts.",
            examples: ["520 mA for 1.5 s"], columns: ["starting", "starting current", "start current", "inrush"]),
        new Field("polarity", "Polarity of its plug", ValueKinds.Word(RigWords.Polarity),
            static load => load.Polarity, static (load, value) => load with { Polarity = value is Polarity said ? said : null },
            "The polarity of its plug. Wins over the label; stated nowhere, centre negative is assumed of a pedal of 9 V "
            + "and asked for of all else.",
            columns: ["centre", "center"]),
        new Field("plug", "Plug", ValueKinds.Plug,
            static load => load.Plug, static (load, value) => load with { Plug = value is Plug said ? said : null },
            "The plug it takes, outer by inner diameter in mm. Wins over the label; stated nowhere, 5.5x2.1 is assumed of a pedal of 9 V "
            + "and asked for of all else.",
            examples: RigWords.PlugExamples, columns: ["jack", "connector", "plug size"]),
        new Field("ground", "Ground is", ValueKinds.Word(RigWords.Ground),
            static load => load.Ground, static (load, value) => load with { Ground = value is GroundSide said ? said : null },
            "Which side of its supply is its ground. Wins over the label; stated nowhere, negative is assumed of a load that is "
            + "centre negative and asked for of any other."),
        new Field("isolate", "Needs an isolated outlet", ValueKinds.Flag,
            static load => load.Isolate, static (load, value) => load with { Isolate = value is true },
            "Whether it needs an outlet whose return it shares with no other load. Default: no.", columns: ["isolated"]),
        new Field("draws", "Draws like a constant", ValueKinds.Word(RigWords.Draws),
            static load => load.Draws, static (load, value) => load with { Draws = value is DrawLaw said ? said : null },
            "How its current follows its voltage. Default: power for a digital kind, resistance for a valve, else current."),
        new Field("starts_below", "Does not start below", ValueKinds.Of(Unit.Volt, VoltageForm, mayBeZero: false),
            static load => load.StartsBelow, static (load, value) => load with { StartsBelow = value is Volts said ? said : null },
            "It does not start while its voltage is below this.", examples: ["7.5 V"]),
        new Field("stops_below", "Stops below", ValueKinds.Of(Unit.Volt, VoltageForm, mayBeZero: false),
            static load => load.StopsBelow, static (load, value) => load with { StopsBelow = value is Volts said ? said : null },
            "It stops under this voltage.", examples: ["6.5 V"]),
        new Field("input_capacitance", "Input capacitance", ValueKinds.Of(Unit.Farad, "a capacitance such as 100 µF"),
            static load => load.InputCapacitance,
            static (load, value) => load with { InputCapacitance = value is Farads said ? said : null },
            "The capacitance across its supply input.", examples: ["100 µF"]),
        new Field("priority", "How much the show needs it (1 to 3)", ValueKinds.Number(1, 3),
            static load => load.Priority, static (load, value) => load with { Priority = value is int said ? said : null },
            "How much the show needs it: 1 most, 3 least."),
        new Field("board", "Board", ValueKinds.Text,
            static load => load.Board, static (load, value) => load with { Board = (string?)value },
            "The board it belongs to. Supplies of other boards do not feed it, unless a plan is told that they may. "
            + "Without it, any supply may.",
            examples: ["voice", "bass"], columns: ["group"]))
    {
        TextKey = "label",
    };
}
