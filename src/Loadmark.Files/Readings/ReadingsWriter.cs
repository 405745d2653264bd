using System.Globalization;
using System.Text;
using CsvHelper;
using Loadmark.Core.Acceptance;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Readings;
using Loadmark.Files.Tables;

namespace Loadmark.Files.Readings;

/// <summary>Writes readings as <see cref="ReadingsReader"/> reads them: lines of who, when and how, and a table of the plugs.</summary>
public static class ReadingsWriter
{
    /// <summary>
    /// Writes a session; of plugs that were not measured the cells are empty, so that an empty session is a form to fill in.
    /// </summary>
    /// <param name="session">The session.</param>
    /// <param name="plugs">The plugs of the rig, in the order in which they are written.</param>
    public static string Write(BenchSession session, IEnumerable<PlugPlace> plugs)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(plugs);
        var text = new StringBuilder();
        Line(text, "rig", session.RigVersion);
        Line(text, "by", session.By);
        Line(text, "taken", session.Taken);
        Line(text, "meter", session.Meter);
        Line(text, "serial", session.Serial);
        Line(text, "volts accuracy", session.VoltsAccuracy?.ToString());
        Line(text, "amps accuracy", session.AmpsAccuracy?.ToString());
        Line(text, "ambient", session.Ambient);
        Line(text, "note", session.Note);
        text.Append('\n');
        using var table = new StringWriter(text, CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(table, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
        foreach (var name in (string[])
            [ReadingColumns.Plug, ReadingColumns.Load, .. Enum.GetValues<BenchMeasure>().Select(ReadingColumns.NameOf)])
            csv.WriteField(name);
        csv.EndRecord();
        foreach (var plug in plugs)
        {
            var reading = session.Of(plug.Name);
            csv.WriteField(CellGuard.Guard(plug.Name));
            csv.WriteField(CellGuard.Guard(plug.Load.Id));
            csv.WriteField(CellGuard.Guard(Text(reading.Open)));
            csv.WriteField(CellGuard.Guard(Text(reading.Loaded)));
            csv.WriteField(CellGuard.Guard(Text(reading.Draw)));
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    private static void Line(StringBuilder text, string key, string? value) =>
        text.Append($"{key}: {value}".TrimEnd()).Append('\n');

    /// <summary>The value as it was shown: with all of its digits, and with its sign where one was told.</summary>
    private static string Text<TUnit>(DisplayedValue<TUnit>? value)
        where TUnit : struct, IUnit
    {
        if (value is not { } shown)
            return "";
        var sign = shown.Value.Value < 0 ? "-" : shown.IsSigned ? "+" : "";

        // The unit is one in which the last digit is a unit or less, for a whole number read back counts with a step of one.
        var (prefix, factor) = shown.Step.Value > 1 ? ("k", 0.001m)
            : shown.Step.Value <= 0.001m && Math.Abs(shown.Value.Value) < 1 ? ("m", 1000m) : ("", 1m);
        var digits = Math.Abs(shown.Value.Value * factor)
            .ToString($"F{Decimals(shown.Step.Value * factor)}", CultureInfo.InvariantCulture);
        return $"{sign}{digits} {prefix}{TUnit.Symbol}";
    }

    /// <summary>How many decimals a display with so large a step has.</summary>
    private static int Decimals(decimal step)
    {
        var decimals = 0;
        for (; step < 1 && decimals < 20; decimals++)
            step *= 10;
        return decimals;
    }
}
