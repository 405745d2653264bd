using Loadmark.Core.Checks;
using Loadmark.Shapes;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Answers;

/// <summary>The steady state and the first seconds of a rig as JSON.</summary>
internal static class SimulationJson
{
    private const string OutletAbout = "supply/outlet.";
    private const string CyclesAbout = "Whether it goes on and off for ever.";
    private const string TupleEnd = "From, and to.";

    private static JsonShape<LoadCondition> Condition { get; } = new JsonShape<LoadCondition>("", "")
        .Word("state", static load => load.State, JsonWords.Of, "How it fares.")
        .Flag("cycles", static load => load.Cycles, CyclesAbout)
        .Text("because", static load => load.Because, "Why it does not run; null where it does.", Presence.OrNull);

    private static JsonShape<SettledLoad> SettledLoad { get; } = new JsonShape<SettledLoad>("SettledLoad", "A load in the steady state.")
        .Text("load", static load => load.Load, "Its id.")
        .Figure("volts", static load => load.Volts?.Value, "At its jack, V; null where it is not computed.", Presence.OrNull)
        .Figure("amps", static load => load.Amps?.Value, "Into it, A; null where it is not computed.", Presence.OrNull)
        .Include(Condition, static load => new LoadCondition(load.State, load.Cycles, load.Because));

    private static JsonShape<SettledOutlet> SettledOutlet { get; } = new JsonShape<SettledOutlet>(
            "SettledOutlet", "An outlet in the steady state.")
        .Text("outlet", static outlet => outlet.Outlet.ToString(), OutletAbout)
        .Figure("volts", static outlet => outlet.Volts?.Value, "At it, V; null where it is not computed.", Presence.OrNull)
        .Figure("amps", static outlet => outlet.Amps?.Value, "Out of it, A; null where it is not computed.", Presence.OrNull)
        .Word("state", static outlet => outlet.State, JsonWords.Of, "What it does.")
        .Flag("cycles", static outlet => outlet.Cycles, CyclesAbout);

    private static JsonShape<StartedLoad> StartedLoad { get; } = new JsonShape<StartedLoad>("StartedLoad", "A load in the first seconds.")
        .Text("load", static load => load.Load, "Its id.")
        .Figure(
            "runsAfterSeconds", static load => load.RunsAfter?.Value, "After how long it runs, s; null where it never does.",
            Presence.OrNull)
        .Figure(
            "lowestVolts", static load => load.LowestVolts?.Value,
            "The lowest voltage at its jack once it runs, V; null where it never does.",
            Presence.OrNull)
        .Count("restarts", static load => load.Restarts, "How often it drops out and starts again.")
        .Include(Condition, static load => new LoadCondition(load.State, load.Cycles, load.Because));

    private static JsonShape<StartedOutlet> StartedOutlet { get; } = new JsonShape<StartedOutlet>(
            "StartedOutlet", "An outlet in the first seconds.")
        .Text("outlet", static outlet => outlet.Outlet.ToString(), OutletAbout)
        .Figure(
            "peakAmps", static outlet => outlet.PeakAmps?.Value, "The most that it gives, A; null where it was not computed.",
            Presence.OrNull)
        .Figure("peakAtSeconds", static outlet => outlet.PeakAt?.Value, "When, s.", Presence.OrNull)
        .Figure("secondsOverLimit", static outlet => outlet.OverLimit.Value, "How long it is asked for more than its limit, s.")
        .Flag("surgeIsSpent", static outlet => outlet.SurgeIsSpent, "Whether what it bears for a moment was used up.")
        .Value(
            "pulseAmps", static outlet => outlet.Pulse is { } pulse ? [pulse.Least.Value, pulse.Most.Value] : null,
            JsonFormat.Range(
                "What its peak may be where the charging of input capacitors decides it, or may, and that rests on assumed figures, A; "
                + "null where it is peakAmps.",
                TupleEnd),
            Presence.OrNull)
        .Value(
            "pulseSecondsOverLimit",
            static outlet => outlet.Pulse is { } pulse ? [pulse.OverLimitLeast.Value, pulse.OverLimitMost.Value] : null,
            JsonFormat.Range("How long it may be asked for more than its limit then, s; null where that is secondsOverLimit.", TupleEnd),
            Presence.OrNull)
        .Texts(
            "pulseAssumed", static outlet => outlet.Pulse?.Assumed ?? [],
            "What is assumed, and was taken at half and at double: input capacitance, source resistance.");

    private static JsonShape<StartUpEvent> Event { get; } = new JsonShape<StartUpEvent>("StartUpEvent", "Something that happens.")
        .Figure("seconds", static happening => happening.Time.Value, "When, s after switch-on.")
        .Text("subject", static happening => happening.Subject, "What it happens to.")
        .Word("kind", static happening => happening.Kind, JsonWords.Of, "What happens.")
        .Figure(
            "volts", static happening => happening.Volts?.Value, "The voltage there, V; null where it does not matter.", Presence.OrNull)
        .Text("text", static happening => happening.Text, "It in a sentence.");

    private static JsonShape<TotalGiven> Total { get; } = new JsonShape<TotalGiven>(
            "TotalGiven", "A limit that several outlets share, and what they give.")
        .Text("supply", static total => total.Supply, "The supply.")
        .Text("of", static total => total.Holder, "Whose limit it is.")
        .Figure("limitAmps", static total => total.Limit.Amps?.Value, "The limit, A; null where it is in watts.", Presence.OrNull)
        .Figure("amps", static total => total.Given.Amps?.Value, "Given, A.", Presence.OrNull)
        .Figure("limitWatts", static total => total.Limit.Watts?.Value, "The limit, W; null where it is in amps.", Presence.OrNull)
        .Figure("watts", static total => total.Given.Watts?.Value, "Given, W.", Presence.OrNull);

    /// <summary>What both answers have at their end.</summary>
    private static JsonShape<CircuitRest> Rest { get; } = new JsonShape<CircuitRest>("", "")
        .List("totals", static answer => answer.Totals, Total, "Limits that several outlets share.")
        .List(
            "findings", static answer => answer.Check.Findings.Items.Where(static finding => finding.Severity >= Severity.Fails),
            CheckJson.Finding, "What the rules say that is harm or fails.")
        .List("assumptions", static answer => answer.Assumptions, AssumptionJson.Assumption, "Figures that the rig does not say.")
        .Texts("untold", static answer => answer.Untold.Select(static entry => entry.Because), "What cannot be told, and why.")
        .Text("rig", static answer => answer.Rig, "The rig's name.")
        .Value("spread", static answer => answer.Spread, SpreadJson.Spread, Presence.OrAbsent);

    /// <summary>The steady state.</summary>
    public static JsonShape<CircuitAnswer<SettleResult>> SteadyState { get; } = new JsonShape<CircuitAnswer<SettleResult>>(
            "SteadyState", "What each load really gets.")
        .List("loads", static answer => answer.Result.Loads, SettledLoad, "The loads.")
        .List("outlets", static answer => answer.Result.Outlets, SettledOutlet, "The outlets.")
        .Include(Rest, static answer => answer.Rest);

    /// <summary>The first seconds.</summary>
    public static JsonShape<CircuitAnswer<StartUpResult>> FirstSeconds { get; } = new JsonShape<CircuitAnswer<StartUpResult>>(
            "FirstSeconds", "The first seconds after switch-on.")
        .List("loads", static answer => answer.Result.Loads, StartedLoad, "The loads.")
        .List("outlets", static answer => answer.Result.Outlets, StartedOutlet, "The outlets.")
        .Figure(
            "settledAfterSeconds", static answer => answer.Result.SettledAfter?.Value,
            "After how long nothing changes any more, s; null where that was not reached.", Presence.OrNull)
        .Figure("seconds", static answer => answer.Result.Duration.Value, "How long was computed, s.")
        .Flag("isComplete", static answer => answer.Result.IsComplete, "Whether it was computed to its end.")
        .List("events", static answer => answer.Result.Events, Event, "What happens, in order.")
        .Include(Rest, static answer => answer.Rest);

    /// <summary>Writes a steady state, its spread where there is one, and a line end.</summary>
    public static void Write(Stream output, SettleResult settled, CheckResult check, SpreadResult? spread) => JsonFormat.WriteLine(
        output, SteadyState,
        new CircuitAnswer<SettleResult>(
            settled, new CircuitRest(settled.Rig, settled.Totals, check, settled.Assumptions, settled.Untold, spread)));

    /// <summary>Writes the first seconds, their spread where there is one, and a line end.</summary>
    public static void Write(Stream output, StartUpResult started, CheckResult check, SpreadResult? spread) => JsonFormat.WriteLine(
        output, FirstSeconds,
        new CircuitAnswer<StartUpResult>(
            started, new CircuitRest(started.Rig, started.Totals, check, started.Assumptions, started.Untold, spread)));
}
