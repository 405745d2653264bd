using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Reading;

/// <summary>Reads one load.</summary>
internal static class LoadReader
{
    private const string CurrentForm = "a current such as 300 mA";
    private const string VoltageForm = "a voltage such as 7.5 V";

    /// <summary>The load; null, with an error, when its value is not a group of keys.</summary>
    public static Load? Read(ScalarNode id, Node value, ErrorList errors)
    {
        Ids.Check(id, "a load", mayHaveSlash: true, errors);
        if (Fields.Of(value, id.Value, RigKeys.Load, errors) is not { } fields)
            return null;

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
