using Loadmark.Meters.Scpi;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>What a meter read, as JSON.</summary>
internal static class MeterJson
{
    private static JsonShape<Identification> Instrument { get; } = new JsonShape<Identification>("Instrument", "What it says it is.")
        .Text("maker", static one => one.Maker, "Who made it.")
        .Text("model", static one => one.Model, "Its model.")
        .Text("serial", static one => one.Serial, "Its serial number; null where it tells none.", Presence.OrNull)
        .Text("firmware", static one => one.Firmware, "The version of its program; null where it tells none.", Presence.OrNull);

    private static JsonShape<MeterAnswer> Answer { get; } = new JsonShape<MeterAnswer>("MeterAnswer", "What a meter read.")
        .Text("address", static answer => answer.Address.ToString(), "Where it is.")
        .Value("instrument", static answer => answer.Identification, Instrument)
        .When(static answer => !answer.IsAmps, static members => members
            .Figure("volts", static answer => answer.Reading.Figure, "What it read, V; null where it is no value.", Presence.OrNull))
        .When(static answer => answer.IsAmps, static members => members
            .Figure("amps", static answer => answer.Reading.Figure, "What it read, A; null where it is no value.", Presence.OrNull))
        .Text(
            "whyNone", static answer => answer.Reading.Figure is null ? WhyNone(answer.Reading) : null, "Why it is no value.",
            Presence.OrAbsent)
        .Text("sent", static answer => answer.Reading.Text, "The value as the instrument sent it, with all its digits.");

    /// <summary>Writes the answer and a line end.</summary>
    public static void Write(Stream output, MeterAnswer answer) => JsonFormat.WriteLine(output, Answer, answer);

    /// <summary>Why a reading is no value.</summary>
    public static string WhyNone(InstrumentReading reading) => reading.State switch
    {
        ReadingState.NotANumber => "not a number",
        _ => "beyond the range",
    };
}
