using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Loadmark.Processes;
using Loadmark.Shapes;

namespace Loadmark.Serving.Logs;

/// <summary>Writes a line of the log in one of its forms.</summary>
internal static class LogLineText
{
    /// <summary>Writes a line of the log, without a line end.</summary>
    public static string Of(LogLine line, LogForm form) => form == LogForm.Json ? Json(line) : Text(line);

    private static string Text(LogLine line)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{line.Time.UtcDateTime:yyyy-MM-dd HH:mm:ss}Z {WordOf(line.Level)}: {line.Message}");
        if (line.Id is { } id)
            text.Append(CultureInfo.InvariantCulture, $" (id {id})");
        text.Append(CultureInfo.InvariantCulture, $" [{line.Source}]");
        if (line.Fault is { } fault)
            text.Append(' ').Append(fault.ReplaceLineEndings(" | "));
        return TerminalText.Neutral(text.ToString());
    }

    private static string Json(LogLine line)
    {
        var output = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(output, JsonFormat.Options))
        {
            json.WriteStartObject();
            json.WriteString("time", line.Time.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture));
            json.WriteString("level", WordOf(line.Level));
            json.WriteString("source", line.Source);
            if (line.Number != 0)
                json.WriteNumber("event", line.Number);
            if (line.Id is { } id)
                json.WriteString("id", id);
            json.WriteString("message", line.Message);
            foreach (var (name, value) in line.Fields)
            {
                json.WritePropertyName(char.ToLowerInvariant(name[0]) + name[1..]);
                if (value is int or long)
                    json.WriteNumberValue(Convert.ToInt64(value, CultureInfo.InvariantCulture));
                else
                    json.WriteStringValue(Convert.ToString(value, CultureInfo.InvariantCulture));
            }

            if (line.Fault is { } fault)
                json.WriteString("fault", fault);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(output.WrittenSpan);
    }

    private static string WordOf(LogLevel level) => level switch
    {
        LogLevel.Critical => "critical",
        LogLevel.Error => "error",
        LogLevel.Warning => "warning",
        LogLevel.Information => "information",
        _ => "detail",
    };
}
