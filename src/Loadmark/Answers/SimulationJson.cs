using System.Text.Json;
using Loadmark.Core.Checks;
using Loadmark.Shapes;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Answers;

/// <summary>Writes the steady state and the first seconds of a rig as JSON.</summary>
internal static class SimulationJson
{
    /// <summary>Writes a steady state, its spread where there is one, and a line end.</summary>
    public static void Write(Stream output, SettleResult settled, CheckResult check, SpreadResult? spread)
    {
        JsonFigures.WriteLine(output, json =>
        {
            json.WriteStartObject();
            json.WriteList("loads", settled.Loads, Write);
            json.WriteList("outlets", settled.Outlets, Write);
            WriteRest(json, settled.Rig, settled.Totals, check, settled.Assumptions, settled.Untold);
            SpreadJson.Write(json, spread);
            json.WriteEndObject();
        });
    }

    /// <summary>Writes the first seconds, their spread where there is one, and a line end.</summary>
    public static void Write(Stream output, StartUpResult started, CheckResult check, SpreadResult? spread)
    {
        JsonFigures.WriteLine(output, json =>
        {
            json.WriteStartObject();
            json.WriteList("loads", started.Loads, Write);
            json.WriteList("outlets", started.Outlets, Write);
            json.WriteFigure("settledAfterSeconds", started.SettledAfter?.Value);
            json.WriteFigure("seconds", started.Duration.Value);
            json.WriteBoolean("isComplete", started.IsComplete);
            json.WriteList("events", started.Events, Write);
            WriteRest(json, started.Rig, started.Totals, check, started.Assumptions, started.Untold);
            SpreadJson.Write(json, spread);
            json.WriteEndObject();
        });
    }

    private static void WriteRest(
        Utf8JsonWriter json, string rig, IEnumerable<TotalGiven> totals, CheckResult check, IEnumerable<Assumption> assumptions, IEnumerable<Untold> untold)
    {
        json.WriteList("totals", totals, Write);
        json.WriteList("findings", check.Findings.Items.Where(static finding => finding.Severity >= Severity.Fails), CheckJson.Finding.Write);
        json.WriteList("assumptions", assumptions, Write);
        json.WriteTexts("untold", [.. untold.Select(static entry => entry.Because)]);
        json.WriteString("rig", rig);
    }

    private static void Write(Utf8JsonWriter json, SettledLoad load)
    {
        json.WriteStartObject();
        json.WriteString("load", load.Load);
        json.WriteFigure("volts", load.Volts?.Value);
        json.WriteFigure("amps", load.Amps?.Value);
        json.WriteString("state", JsonWords.Of(load.State));
        json.WriteBoolean("cycles", load.Cycles);
        json.WriteString("because", load.Because);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SettledOutlet outlet)
    {
        json.WriteStartObject();
        json.WriteString("outlet", outlet.Outlet.ToString());
        json.WriteFigure("volts", outlet.Volts?.Value);
        json.WriteFigure("amps", outlet.Amps?.Value);
        json.WriteString("state", JsonWords.Of(outlet.State));
        json.WriteBoolean("cycles", outlet.Cycles);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, StartedLoad load)
    {
        json.WriteStartObject();
        json.WriteString("load", load.Load);
        json.WriteFigure("runsAfterSeconds", load.RunsAfter?.Value);
        json.WriteFigure("lowestVolts", load.LowestVolts?.Value);
        json.WriteNumber("restarts", load.Restarts);
        json.WriteString("state", JsonWords.Of(load.State));
        json.WriteBoolean("cycles", load.Cycles);
        json.WriteString("because", load.Because);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, StartedOutlet outlet)
    {
        json.WriteStartObject();
        json.WriteString("outlet", outlet.Outlet.ToString());
        json.WriteFigure("peakAmps", outlet.PeakAmps?.Value);
        json.WriteFigure("peakAtSeconds", outlet.PeakAt?.Value);
        json.WriteFigure("secondsOverLimit", outlet.OverLimit.Value);
        json.WriteBoolean("surgeIsSpent", outlet.SurgeIsSpent);
        json.WriteRange("pulseAmps", outlet.Pulse is { } amps ? new QuantityRange<Ampere>(amps.Least, amps.Most) : default(QuantityRange<Ampere>?));
        json.WriteRange("pulseSecondsOverLimit", outlet.Pulse is { } seconds ? new QuantityRange<Second>(seconds.OverLimitLeast, seconds.OverLimitMost) : default(QuantityRange<Second>?));
        json.WriteTexts("pulseAssumed", outlet.Pulse?.Assumed ?? []);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, StartUpEvent happening)
    {
        json.WriteStartObject();
        json.WriteFigure("seconds", happening.Time.Value);
        json.WriteString("subject", happening.Subject);
        json.WriteString("kind", JsonWords.Of(happening.Kind));
        json.WriteFigure("volts", happening.Volts?.Value);
        json.WriteString("text", happening.Text);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, TotalGiven total)
    {
        json.WriteStartObject();
        json.WriteString("supply", total.Supply);
        json.WriteString("of", total.Holder);
        json.WriteFigure("limitAmps", total.Limit.Amps?.Value);
        json.WriteFigure("amps", total.Given.Amps?.Value);
        json.WriteFigure("limitWatts", total.Limit.Watts?.Value);
        json.WriteFigure("watts", total.Given.Watts?.Value);
        json.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter json, Assumption assumption)
    {
        json.WriteStartObject();
        json.WriteString("figure", assumption.Figure);
        json.WriteString("value", assumption.Value);
        json.WriteTexts("subjects", assumption.Subjects);
        json.WriteString("source", assumption.Source);
        json.WriteEndObject();
    }
}
