using Loadmark.Core.Gear;
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
        Field.Of("name", "Name", ValueKinds.Text,
            static load => load.Name, static (load, name) => load with { Name = name },
            "A name for people. Without it, the tag stands alone.",
            columns: ["item", "device", "pedal", "description", "model"]),
        Field.Of("kind", "Kind", ValueKinds.Kind,
            static load => load.Kind, static (load, kind) => load with { Kind = kind },
            "What sort of load it is, in your words, such as 'analog drive' or 'digital'. It decides what draw is assumed when none "
            + "is known.",
            examples: [.. LoadKind.Known], columns: ["type", "category", "sort"]),
        Field.Of("label", "Label, as printed", ValueKinds.Label,
            static load => load.Label, static (load, label) => load with { Label = label },
            "What is printed on it, typed as it stands.",
            examples: ["9V DC 12mA centre negative"], columns: ["nameplate", "rating", "ratings", "rating plate", "printed", "as printed"]),
        Field.Of("voltage", "Voltage it takes", ValueKinds.Voltage,
            static load => load.Voltage, static (load, voltage) => load with { Voltage = voltage },
            "The voltage, or voltages, it takes. Wins over the label.",
            examples: ["9 V", "9-18 V", "9 V AC"]),
        Field.Of("current", "Rated current", ValueKinds.Of<Ampere>(CurrentForm),
            static load => load.Current, static (load, current) => load with { Current = current },
            "The rated current. Wins over the label.",
            examples: ["300 mA"], columns: ["draw", "current draw", "rated current", "consumption"]),
        Field.Of("watts", "Rated power", ValueKinds.Of<Watt>("a power such as 6 W", keySaysUnit: true),
            static load => load.Watts, static (load, watts) => load with { Watts = watts },
            "The rated power. Wins over the label.",
            examples: ["6 W"], columns: ["power"]),
        Field.Of("run", "Running current, measured", ValueKinds.Of<Ampere>(CurrentForm),
            static load => load.Run, static (load, run) => load with { Run = run },
            "The running current, measured or published. Without it, the rated current counts.",
            examples: ["210 mA"], columns: ["running", "running current", "measured", "measured current"]),
        Field.Of("start", "Starting current", ValueKinds.Timed(CurrentForm, "520 mA for 1.5 s"),
            static load => load.Start, static (load, start) => load with { Start = start },
            "The current while it starts, with how long that lasts. Without it, the running current counts.",
            examples: ["520 mA for 1.5 s"], columns: ["starting", "starting current", "start current", "inrush"]),
        Field.Of("polarity", "Polarity of its plug", ValueKinds.Word(RigWords.Polarity),
            static load => load.Polarity, static (load, polarity) => load with { Polarity = polarity },
            "The polarity of its plug. Wins over the label; stated nowhere, centre negative is assumed of a pedal of 9 V "
            + "and asked for of all else.",
            columns: ["centre", "center"]),
        Field.Of("plug", "Plug", ValueKinds.Plug,
            static load => load.Plug, static (load, plug) => load with { Plug = plug },
            "The plug it takes, outer by inner diameter in mm. Wins over the label; stated nowhere, 5.5x2.1 is assumed of a pedal of 9 V "
            + "and asked for of all else.",
            examples: RigWords.PlugExamples, columns: ["jack", "connector", "plug size"]),
        Field.Of("ground", "Ground is", ValueKinds.Word(RigWords.Ground),
            static load => load.Ground, static (load, ground) => load with { Ground = ground },
            "Which side of its supply is its ground. Wins over the label; stated nowhere, negative is assumed of a load that is "
            + "centre negative and asked for of any other."),
        Field.Of("isolate", "Wants a return of its own", ValueKinds.Flag,
            static load => load.Isolate, static (load, isolate) => load with { Isolate = isolate },
            "Whether it wants a return of its own. Default: no.",
            columns: ["isolated"]),
        Field.Of("draws", "Draws like a constant", ValueKinds.Word(RigWords.Draws),
            static load => load.Draws, static (load, draws) => load with { Draws = draws },
            "How its current follows its voltage. Default: power for a digital kind, resistance for a valve, else current."),
        Field.Of("starts_below", "Does not start below", ValueKinds.Of<Volt>(VoltageForm, mayBeZero: false),
            static load => load.StartsBelow, static (load, volts) => load with { StartsBelow = volts },
            "It does not start while its voltage is below this.",
            examples: ["7.5 V"]),
        Field.Of("stops_below", "Stops below", ValueKinds.Of<Volt>(VoltageForm, mayBeZero: false),
            static load => load.StopsBelow, static (load, volts) => load with { StopsBelow = volts },
            "It stops under this voltage.",
            examples: ["6.5 V"]),
        Field.Of("input_capacitance", "Input capacitance", ValueKinds.Of<Farad>("a capacitance such as 100 µF"),
            static load => load.InputCapacitance, static (load, farads) => load with { InputCapacitance = farads },
            "The capacitance across its supply input.",
            examples: ["100 µF"]),
        Field.Of("priority", "How much the show needs it (1 to 3)", ValueKinds.Number(1, 3),
            static load => load.Priority, static (load, priority) => load with { Priority = priority },
            "How much the show needs it: 1 most, 3 least."))
    {
        TextKey = "label",
    };
}
