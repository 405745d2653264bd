using Loadmark.Core.Acceptance;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Shapes;
using Loadmark.Workshop.Accepting;

namespace Loadmark.Answers;

/// <summary>The answer to "was it built as drawn?" as JSON.</summary>
internal static class AcceptJson
{
    private static JsonShape<JudgedMeasure> Point { get; } = new JsonShape<JudgedMeasure>(
            "AcceptancePoint", "One thing that is measured at one plug, in the order of measuring.")
        .Text("point", static one => one.Point.Name, "The plug: the outlets of its lead and which of its plugs it is.")
        .Text("load", static one => one.Point.Plug.Load.Id, "The load that it feeds.")
        .Count("lead", static one => one.Point.Plug.Lead.Number, "The number of its lead, as on the sheet.")
        .Word(
            "measure", static one => one.Measure, MeasureText.Of,
            "Volts with nothing plugged in, volts with everything running, or what the load draws.")
        .When(static one => one.Measure != BenchMeasure.Draw, static members => members
            .Value(
                "expectedVolts", static one => JsonFormat.Ends(one.ExpectedVolts),
                JsonFormat.Range(
                    "Between which volts it must lie, whichever way round; null where that is not known.", "From, and to."),
                Presence.OrNull)
            .Figure(
                "readVolts", static one => one.ReadVolts?.Value,
                "What the meter showed, V, above zero where the centre is positive; null where it was not measured.", Presence.OrNull)
            .Text(
                "expectedPolarity", static one => WordOf(one.Point.Polarity),
                "centre negative or centre positive; null where it is not known, or the current alternates.", Presence.OrNull)
            .Text(
                "readPolarity", static one => WordOf(one.ReadPolarity), "What the reading's sign tells; null where it tells nothing.",
                Presence.OrNull))
        .When(static one => one.Measure == BenchMeasure.Draw, static members => members
            .Value(
                "expectedAmps", static one => JsonFormat.Ends(one.ExpectedAmps),
                JsonFormat.Range(
                    "Between which currents it is expected, A; less is no fault. Null where that is not known.", "From, and to."),
                Presence.OrNull)
            .Figure("readAmps", static one => one.ReadAmps?.Value, "What the meter showed, A; null where it was not measured.",
                Presence.OrNull))
        .Word("judged", static one => one.Judged, WordOf, "What came of it; null where it was not measured.")
        .Figure(
            "probability", static one => one.Probability is { } chance ? (decimal)Math.Round(chance, 6) : null,
            "How probable it is that the true value is within, 0 to 1, by the meter's accuracy; null where that is not known.",
            Presence.OrNull)
        .Text("means", static one => one.Means, "What it most likely means; empty where it passed.")
        .Text("next", static one => one.Next, "What to do next; empty for nothing.");

    /// <summary>The answer.</summary>
    public static JsonShape<AcceptanceResult> Answer { get; } = new JsonShape<AcceptanceResult>("Acceptance", "Was it built as drawn?")
        .Text("rig", static result => result.Plan.Rig.Name, "The rig's name.")
        .Text("version", static result => result.Plan.Version, "The rig's version, as on its sheet.")
        .Word(
            "verdict", static result => result.Verdict, MeasureText.Of,
            "Whether it was: refused where a reading failed, open where any is missing.")
        .Texts("because", static result => result.Because, "Why it is no better, the worst first.")
        .List("points", static result => result.Measures, Point, "What is measured, in the order of measuring.")
        .Texts("mayBePluggedIn", static result => result.MayBePluggedIn, "The loads whose plug was found right with nothing plugged in.")
        .Include(
            new JsonShape<BenchSession>("", "")
                .Text("by", static session => session.By, "Who measured; null where that is not told.", Presence.OrNull)
                .Text("taken", static session => session.Taken, "When; null where that is not told.", Presence.OrNull)
                .Text("meter", static session => session.Meter, "The meter; null where that is not told.", Presence.OrNull)
                .Text("serial", static session => session.Serial, "Its serial number; null where that is not told.", Presence.OrNull)
                .Text(
                    "voltsAccuracy", static session => session.VoltsAccuracy?.ToString(),
                    "How far it may be off when it measures volts; null where that is not told.", Presence.OrNull)
                .Text(
                    "ampsAccuracy", static session => session.AmpsAccuracy?.ToString(),
                    "How far it may be off when it measures amps; null where that is not told.", Presence.OrNull)
                .Text("ambient", static session => session.Ambient, "The temperature; null where that is not told.", Presence.OrNull)
                .Text("note", static session => session.Note, "What else was said; null for nothing.", Presence.OrNull),
            static result => result.Session);

    /// <summary>Writes the answer and a line end.</summary>
    public static void Write(Stream output, AcceptanceResult result) => JsonFormat.WriteLine(output, Answer, result);

    /// <summary>The word for what came of a reading.</summary>
    public static string WordOf(Conformity judged) => judged switch
    {
        Conformity.Pass => "pass",
        Conformity.NotSure => "not-sure",
        Conformity.Fail => "fail",
        _ => throw new ArgumentOutOfRangeException(nameof(judged), judged, "It has no word."),
    };

    private static string? WordOf(Polarity? polarity) => polarity is { } known ? PolarityText.Of(known) : null;
}
