using System.Text.Json;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;

namespace Loadmark.Answers;

/// <summary>Writes the answer to a check as JSON: one object for a rig, an array in the order asked for several.</summary>
internal static class CheckJson
{
    /// <summary>Writes the answers, at least one, and a line end.</summary>
    public static void Write(Stream output, IReadOnlyList<CheckAnswer> answers)
    {
        JsonFigures.WriteLine(output, json =>
        {
            if (answers.Count > 1)
                json.WriteStartArray();
            for (var index = 0; index < answers.Count; index++)
                Write(json, answers[index]);
            if (answers.Count > 1)
                json.WriteEndArray();
        });
    }

    /// <summary>Writes one answer as an object.</summary>
    public static void Write(Utf8JsonWriter json, CheckAnswer answer)
    {
        if (answer.Result is { } result)
            Write(json, result, answer.File);
        else
            WriteFaults(json, answer);
    }

    private static void Write(Utf8JsonWriter json, CheckResult result, string file)
    {
        json.WriteStartObject();
        json.WriteString("rig", result.Rig);
        json.WriteString("verdict", JsonWords.Of(result.Verdict));

        json.WriteList("findings", result.Findings, Write);
        json.WriteList("outlets", result.Outlets, Write);
        json.WriteList("totals", result.Totals, Write);
        json.WriteFigure("headroom", result.Headroom);
        json.WriteBoolean("headroomIsDefault", result.HeadroomIsDefault);
        json.WriteList("untold", result.Untold, Write);

        json.WriteString("file", file);
        json.WriteEndObject();
    }

    /// <summary>Writes a finding as an object.</summary>
    internal static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule);
        json.WriteString("severity", JsonWords.Of(finding.Severity));
        WriteSubjects(json, finding.Subjects);
        json.WriteString("message", finding.Message);
        json.WriteString("working", finding.Working);
        json.WriteString("remedy", finding.Remedy);
        json.WriteString("source", finding.Source);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, OutletLoading outlet)
    {
        json.WriteStartObject();
        json.WriteString("outlet", outlet.Outlet.ToString());
        json.WriteFigure("volts", outlet.Volts?.Value);
        json.WriteFigure("limitAmps", outlet.Limit?.Value);
        json.WriteFigure("runAmps", outlet.Run?.Value);
        json.WriteFigure("startAmps", outlet.Start?.Value);
        json.WriteTexts("loads", outlet.Loads);
        json.WriteEndObject();
    }

    /// <summary>Writes what could not be told as an object.</summary>
    internal static void Write(Utf8JsonWriter json, Untold untold)
    {
        json.WriteStartObject();
        json.WriteString("rule", untold.Rule);
        WriteSubjects(json, untold.Subjects);
        json.WriteString("because", untold.Because);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, TotalLoading total)
    {
        json.WriteStartObject();
        json.WriteString("supply", total.Supply);
        json.WriteString("of", total.Holder);
        var inWatts = total.Limit.Watts is not null;
        json.WriteFigure(inWatts ? "limitWatts" : "limitAmps", total.Limit.Watts?.Value ?? total.Limit.Amps?.Value);
        json.WriteFigure(inWatts ? "runWatts" : "runAmps", total.Run.Watts?.Value ?? total.Run.Amps?.Value);
        json.WriteFigure(inWatts ? "startWatts" : "startAmps", total.Start.Watts?.Value ?? total.Start.Amps?.Value);
        json.WriteEndObject();
    }

    private static void WriteSubjects(Utf8JsonWriter json, ValueList<string> subjects) => json.WriteTexts("subjects", subjects);

    private static void WriteFaults(Utf8JsonWriter json, CheckAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("file", answer.File);
        json.WriteList("errors", answer.Errors, Write);
        json.WriteEndObject();
    }

    /// <summary>Writes what keeps a file from being read as an object.</summary>
    internal static void Write(Utf8JsonWriter json, FileError fault)
    {
        json.WriteStartObject();
        json.WriteFigure("line", fault.IsOfWhole ? null : fault.Line);
        json.WriteFigure("column", fault.IsOfWhole ? null : fault.Column);
        json.WriteString("found", fault.Found);
        json.WriteString("expected", fault.Expected);
        json.WriteString("suggestion", fault.Suggestion);
        json.WriteString("message", fault.Message);
        json.WriteEndObject();
    }
}
