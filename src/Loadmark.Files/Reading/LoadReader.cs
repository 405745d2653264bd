using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.Reading;

/// <summary>Reads one load.</summary>
internal static class LoadReader
{
    private const string CurrentForm = "a current such as 300 mA";
    private const string VoltageForm = "a voltage such as 7.5 V";

    /// <summary>The load; null, with an error, when its value is not a group of keys.</summary>
    /// <param name="id">Its tag.</param>
    /// <param name="value">Its keys.</param>
    /// <param name="errors">Where faults go.</param>
    /// <param name="library">The gear library; null where there is none.</param>
    public static Load? Read(ScalarNode id, Node value, ErrorList errors, IGearLookup? library = null)
    {
        Ids.Check(id, "a load", mayHaveSlash: true, errors);
        if (Fields.Of(value, id.Value, RigKeys.Load, errors) is not { } fields)
            return null;

        var own = ReadOwn(id, fields, errors);
        return LibraryFigures.Find(fields, id, GearKind.Load, library, static (from, tag) => from.FindLoad(tag)) is { } given ? LibraryFigures.Under(own, given, fields.Says) : own;
    }

    private static Load ReadOwn(ScalarNode id, Fields fields, ErrorList errors)
    {
        return new Load
        {
            Id = id.Value,
            Name = fields.Text("name"),
            Kind = fields.Text("kind") is { } kind ? new LoadKind(kind) : null,
            Label = fields.RawText("label") is { } label ? NameplateReader.Read(label) : null,
            Voltage = Figures.Voltage(fields.Scalar("voltage", VoltageForm), "voltage", errors),
            Current = fields.Figure<Ampere>("current", CurrentForm),
            Watts = fields.Figure<Watt>("watts", "a power such as 6 W"),
            Run = fields.Figure<Ampere>("run", CurrentForm),
            Start = Figures.Timed(fields.Scalar("start", CurrentForm), "start", "520 mA for 1.5 s", errors),
            Polarity = fields.Word("polarity", RigWords.Polarity),
            Plug = fields.Text("plug") is { } plug ? new Plug(PlugText.Normalise(plug)) : null,
            Ground = fields.Word("ground", RigWords.Ground),
            Isolate = fields.YesNo("isolate") ?? false,
            Draws = fields.Word("draws", RigWords.Draws),
            StartsBelow = fields.Figure<Volt>("starts_below", VoltageForm, mayBeZero: false),
            StopsBelow = fields.Figure<Volt>("stops_below", VoltageForm, mayBeZero: false),
            InputCapacitance = fields.Figure<Farad>("input_capacitance", "a capacitance such as 100 µF"),
            Priority = fields.Number("priority", 1, 3),
        };
    }
}
