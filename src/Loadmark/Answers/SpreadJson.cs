using System.Text.Json;
using Loadmark.Shapes;
using Loadmark.Simulation.Spreading;

namespace Loadmark.Answers;

/// <summary>Writes the spread of a rig's figures as JSON.</summary>
internal static class SpreadJson
{
    /// <summary>Writes the property <c>spread</c>; nothing where there is none.</summary>
    public static void Write(Utf8JsonWriter json, SpreadResult? spread)
    {
        if (spread is null)
            return;
        json.WriteStartObject("spread");
        json.WriteNumber("samples", spread.Samples);
        json.WriteNumber("asked", spread.Asked);
        json.WriteNumber("uncomputed", spread.Uncomputed);
        json.WriteNumber("seed", spread.Seed);
        json.WriteString("quantiles", "5 %, 50 %, 95 %; Hyndman and Fan, type 7");
        json.WriteString("interval", "95 %; Wilson, score");
        Write(json, "runs", spread.Runs);
        json.WriteList("loads", spread.Loads, (writer, load) => Write(writer, load, spread.IsStartUp));
        json.WriteList("outlets", spread.Outlets, (writer, outlet) => Write(writer, outlet, spread.IsStartUp));
        json.WriteTexts("leftOut", [.. spread.LeftOut]);
        json.WriteTexts("openUpwards", [.. spread.OpenUpwards]);
        json.WriteList("assumptions", spread.Assumptions, SimulationJson.Write);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SpreadLoad load, bool isStartUp)
    {
        json.WriteStartObject();
        json.WriteString("load", load.Load);
        Write(json, isStartUp ? "lowestVolts" : "volts", isStartUp ? "cornerLowestVolts" : "cornerVolts", load.Volts);
        Write(json, "amps", "cornerAmps", load.Amps);
        Write(json, "runsAfterSeconds", "cornerRunsAfterSeconds", load.RunsAfter);
        Write(json, "runs", load.Runs);
        json.WriteString("cornerState", JsonWords.Of(load.Corner));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SpreadOutlet outlet, bool isStartUp)
    {
        json.WriteStartObject();
        json.WriteString("outlet", outlet.Outlet.ToString());
        Write(json, "volts", "cornerVolts", outlet.Volts);
        Write(json, isStartUp ? "peakAmps" : "amps", isStartUp ? "cornerPeakAmps" : "cornerAmps", outlet.Amps);
        json.WriteFigure("limitAmps", outlet.Limit?.Value);
        json.WriteEndObject();
    }

    private static void Write<TUnit>(Utf8JsonWriter json, string name, string corner, Percentiles<TUnit>? figure)
        where TUnit : struct, IUnit
    {
        if (figure is null)
            return;
        json.WriteStartArray(name);
        json.WriteFigure(figure.Low?.Value);
        json.WriteFigure(figure.Median?.Value);
        json.WriteFigure(figure.High?.Value);
        json.WriteEndArray();
        json.WriteFigure(corner, figure.Corner?.Value);
    }

    private static void Write(Utf8JsonWriter json, string name, Chance chance)
    {
        json.WriteStartObject(name);
        json.WriteNumber("held", chance.Held);
        json.WriteNumber("of", chance.Samples);
        json.WriteFigure("share", (decimal)chance.Share);
        json.WriteFigure("low", (decimal)chance.Low);
        json.WriteFigure("high", (decimal)chance.High);
        json.WriteEndObject();
    }
}
