using System.Text.Json;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>The reading of a nameplate as JSON, one object a line.</summary>
internal static class NameplateJson
{
    private const string PowerAbout = "The power, W, where it is printed.";
    private const string ApparentAbout = "The apparent power, VA, where it is printed.";

    private static JsonShape<Mode> Mode { get; } = new JsonShape<Mode>("Mode", "One setting: a voltage with the current there.")
        .Value(
            "volts", static mode => JsonFormat.Ends(mode.Volts), Range("The voltage from and to, V; null where it is not known."),
            Presence.OrNull)
        .Figure("amps", static mode => mode.Amps?.Value.Value, "The current, A; null where it is not known.", Presence.OrNull)
        .Figure(
            "watts", static mode => mode.Watts?.Value.Value, "The power, W; null where it is not known, as of alternating current.",
            Presence.OrNull)
        .Figure(
            "voltAmps", static mode => mode.VoltAmps?.Value.Value,
            "The apparent power, VA, where it is printed, or V·A of alternating current.",
            Presence.OrAbsent)
        .Figure(
            "ampsFrom", static mode => mode.AmpsFrom?.Value, "The lower end where a range of currents is printed, A.", Presence.OrAbsent)
        .When(static mode => mode.Hertz is not null, static members => members
            .Value(
                "hertz", static mode => JsonFormat.Ends(mode.Hertz), Range("The frequency from and to, Hz, where it is alternating."),
                Presence.OrNull));

    private static JsonShape<MainsInput> Mains { get; } = new JsonShape<MainsInput>("MainsInput", "The mains side.")
        .Value("volts", static mains => JsonFormat.Ends(mains.Volts), Range("The voltage from and to, V."), Presence.OrNull)
        .Value(
            "hertz", static mains => JsonFormat.Ends(mains.Hertz), Range("The frequency from and to, Hz; null where it is not said."),
            Presence.OrNull)
        .Figure("amps", static mains => mains.Amps?.Value, "The current, A; null where it is not said.", Presence.OrNull)
        .Figure("watts", static mains => mains.Watts?.Value, PowerAbout, Presence.OrAbsent)
        .Figure("voltAmps", static mains => mains.VoltAmps?.Value, ApparentAbout, Presence.OrAbsent);

    private static JsonShape<LowVoltageInput> Input { get; } = new JsonShape<LowVoltageInput>(
            "LowVoltageInput", "The low-voltage side that goes in, of a thing that puts out a low voltage as well.")
        .Value(
            "volts", static input => JsonFormat.Ends(input.Volts), Range("The voltage from and to, V; null where it is not said."),
            Presence.OrNull)
        .Figure("amps", static input => input.Amps?.Value, "The highest current, A; null where it is not said.", Presence.OrNull)
        .Figure("watts", static input => input.Watts?.Value, PowerAbout, Presence.OrAbsent)
        .Figure("voltAmps", static input => input.VoltAmps?.Value, ApparentAbout, Presence.OrAbsent)
        .Word(
            "supply", static input => input.Form.Value, JsonWords.Of, "Direct or alternating, where it is printed.",
            Presence.OrAbsent);

    private static JsonShape<PrintedOutlets> Outlets { get; } = new JsonShape<PrintedOutlets>(
            "PrintedOutlets", "Outlets that the label tells apart.")
        .Text("ids", static group => group.Ids, "Their ids, such as 2-5 or 1,3; null where just their number is printed.", Presence.OrNull)
        .Count("count", static group => group.Count, "How many outlets there are.")
        .List("modes", static group => group.Modes, Mode, "The settings of each.")
        .Word(
            "supply", static group => group.Form.Value, JsonWords.Of, "Direct or alternating, where it is printed for them alone.",
            Presence.OrAbsent)
        .Word(
            "polarity", static group => group.Polarity.Value, JsonWords.Of, "The polarity, where it is printed for them alone.",
            Presence.OrAbsent)
        .Flag(
            "isolated", static group => group.Isolated.Value, "Whether each has a return of its own, where it is printed for them alone.",
            Presence.OrAbsent);

    private static JsonShape<SupplyTotal> Total { get; } = new JsonShape<SupplyTotal>("PrintedTotal", "What all outputs together can give.")
        .Figure("amps", static total => total.Amps?.Value, "In A, where it is printed so.", Presence.OrAbsent)
        .Figure("watts", static total => total.Watts?.Value, "In W, where it is printed so.", Presence.OrAbsent);

    /// <summary>The shape of a label's reading.</summary>
    public static JsonShape<Nameplate> Reading { get; } = new JsonShape<Nameplate>("Reading", "What a nameplate says.")
        .Word(
            "supply", static nameplate => nameplate.Form.Value, JsonWords.Of, "Direct or alternating; null where it is not said.")
        .List("modes", static nameplate => nameplate.Modes, Mode, "Settings: one where the label tells one.")
        .Word(
            "polarity", static nameplate => nameplate.Polarity.Value, JsonWords.Of, "The polarity of the plug; null where it is not said.")
        .Text(
            "plug", static nameplate => nameplate.Plug.Value?.Name,
            "The plug, outer by inner diameter in mm, such as 5.5x2.1; null where it is not said.", Presence.OrNull)
        .Value("mains", static nameplate => nameplate.Mains, Mains, Presence.OrNull)
        .Value("input", static nameplate => nameplate.Input, Input, Presence.OrNull)
        .List(
            "outlets", static nameplate => nameplate.Outlets.IsEmpty ? null : nameplate.Outlets, Outlets,
            "The outlets that the label tells apart; null where it speaks of one output.", Presence.OrNull)
        .Value("total", static nameplate => nameplate.Total, Total, Presence.OrNull)
        .Texts("derived", static nameplate => nameplate.Derived, "Which figures are computed from others, not printed.")
        .Texts("conflicts", static nameplate => nameplate.Conflicts, "Where the label contradicts itself.")
        .Texts("unread", static nameplate => nameplate.Unread.Select(static unread => unread.Text), "What was not understood.")
        .Word(
            "ground", static nameplate => nameplate.Ground.Value, JsonWords.Of,
            "The side that is joined to ground; null where it is not said.")
        .Flag(
            "isolated", static nameplate => nameplate.Isolated.Value,
            "Whether the outputs are isolated from one another; null where it is not said.", Presence.OrNull)
        .Flag(
            "eachOutlet", static nameplate => nameplate.EachOutlet,
            "Whether the figures are said to be of each of several outlets, without their number.")
        .List(
            "notUnderstood", static nameplate => JsonWords.Of(nameplate.NotUnderstood), new JsonText("A topic.", JsonWords.Topics),
            "Of what words or drawings stand on the label that were not understood.")
        .Figure(
            "noLoadVolts", static nameplate => nameplate.NoLoad?.Value,
            "The voltage with nothing drawn, V; absent where it is not printed.", Presence.OrAbsent)
        .Include(NameplateFieldsJson.Members, static nameplate => nameplate);

    /// <summary>The shape of the readings of several labels.</summary>
    public static JsonList<Nameplate> Readings { get; } = new("Readings", "One reading for each text, in the order given.", Reading);

    /// <summary>Reads each text and writes what it says, each on its own line.</summary>
    public static void Write(Stream output, IReadOnlyList<string> texts)
    {
        using var buffered = new BufferedStream(output, 1 << 16);
        using var json = new Utf8JsonWriter(buffered, JsonFormat.Options);
        for (var index = 0; index < texts.Count; index++)
        {
            Reading.Write(json, NameplateReader.Read(texts[index]));
            json.Flush();
            buffered.Write("\n"u8);
            json.Reset();
        }
    }

    private static JsonTuple Range(string about) => JsonFormat.Range(about, "An end of the range.");
}
