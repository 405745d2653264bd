using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Files.Library;
using Loadmark.Shapes;
using Loadmark.Storage.Gear;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>Writes gear of the library as JSON.</summary>
internal static class GearJson
{
    /// <summary>Writes a list and a line end.</summary>
    public static void WriteList(Stream output, IReadOnlyList<ListedGear> gear) => JsonFigures.WriteLine(output, json =>
    {
        json.WriteStartObject();
        json.WriteList("gear", gear, static (writer, one) =>
        {
            writer.WriteStartObject();
            WriteGear(writer, one.Gear);
            writer.WriteNumber("rigs", one.Rigs);
            writer.WriteEndObject();
        });
        json.WriteEndObject();
    });

    /// <summary>Writes one piece and a line end.</summary>
    public static void Write(Stream output, ShownGear shown) => JsonFigures.WriteLine(output, json => Write(json, shown));

    /// <summary>Writes one piece as an object.</summary>
    public static void Write(Utf8JsonWriter json, ShownGear shown)
    {
        json.WriteStartObject();
        WriteGear(json, shown.Gear);
        json.WriteList("fields", shown.Gear.Piece is { } piece ? GearText.FieldsOf(piece) : [], static (writer, field) =>
        {
            writer.WriteStartObject();
            writer.WriteString("key", field.Key);
            writer.WriteString("value", field.Value);
            writer.WriteEndObject();
        });
        WriteMeasured(json, shown.Measured);
        json.WriteTexts("rigs", [.. shown.Rigs.Select(static rig => rig.Name)]);
        json.WriteList("changes", shown.Changes, (writer, change) => Write(writer, change, shown.Gear.Tag));
        json.WriteEndObject();
    }

    /// <summary>Writes what readings come to, with the piece, and a line end.</summary>
    public static void Write(Stream output, StoredGear gear, MeasuredFigures measured) => JsonFigures.WriteLine(output, json =>
    {
        json.WriteStartObject();
        WriteGear(json, new ShelfGear(gear));
        WriteMeasured(json, measured);
        json.WriteEndObject();
    });

    /// <summary>Writes what a piece is, into an object already begun.</summary>
    public static void WriteGear(Utf8JsonWriter json, ShelfGear gear)
    {
        json.WriteString("kind", JsonWords.Of(gear.Kind));
        json.WriteString("tag", gear.Tag);
        json.WriteString("name", gear.Name.Length == 0 ? null : gear.Name);
        json.WriteString("label", gear.Stored.Content.Label.Length == 0 ? null : gear.Stored.Content.Label);
        json.WriteTexts("words", gear.Stored.Content.Words);
        if (gear.Kind == GearKind.Load)
        {
            var load = gear.Piece?.Load;
            json.WriteFigure("runAmps", load?.Run?.Value);
            json.WriteFigure("startAmps", load?.Start?.Current.Value);
            json.WriteFigure("startSeconds", load?.Start?.Duration?.Value);
        }

        json.WriteNumber("revision", gear.Stored.Revision);
        json.WriteString("changed", Moment(gear.Stored.Changed));
    }

    /// <summary>Writes what is said otherwise, as a property.</summary>
    public static void Write(Utf8JsonWriter json, ImmutableArray<GearDifference> differences) => json.WriteList("differences", differences, static (writer, difference) =>
    {
        writer.WriteStartObject();
        writer.WriteString("key", difference.Key);
        writer.WriteString("before", difference.Before);
        writer.WriteString("after", difference.After);
        writer.WriteEndObject();
    });

    /// <summary>A moment as every program reads it (ISO 8601, UTC).</summary>
    public static string Moment(DateTimeOffset moment) => moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    private static void Write(Utf8JsonWriter json, GearChange change, string tag)
    {
        json.WriteStartObject();
        json.WriteNumber("number", change.Number);
        json.WriteString("what", change.What);
        json.WriteString("made", Moment(change.Made));
        json.WriteBoolean("removes", change.After is null);
        Write(json, GearChanges.DifferencesOf(change, tag));
        json.WriteEndObject();
    }

    private static void WriteMeasured(Utf8JsonWriter json, MeasuredFigures measured)
    {
        Write(json, "running", measured.Running);
        Write(json, "starting", measured.Starting);
        json.WriteList("readings", measured.Readings, static (writer, one) =>
        {
            writer.WriteStartObject();
            writer.WriteString("of", one.Reading.Kind == DrawKind.Running ? "running" : "starting");
            writer.WriteFigure("amps", one.Reading.Current.Value);
            writer.WriteFigure("seconds", one.Reading.Duration?.Value);
            writer.WriteFigure("meterShare", one.Reading.Meter?.Share);
            writer.WriteFigure("meterAmps", one.Reading.Meter?.Plus.Value);
            writer.WriteString("taken", Moment(one.Reading.Taken));
            writer.WriteString("note", one.Reading.Note);
            writer.WriteBoolean("struckOut", one.IsStruckOut);
            writer.WriteEndObject();
        });
    }

    private static void Write(Utf8JsonWriter json, string name, MeasuredDraw? draw)
    {
        if (draw is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteFigure("amps", draw.Figure.Value);
        json.WriteFigure("seconds", draw.Duration?.Value);
        json.WriteNumber("readings", draw.Count);
        json.WriteNumber("leftOut", draw.LeftOut.Count);
        json.WriteFigure("leastAmps", draw.Least.Value);
        json.WriteFigure("mostAmps", draw.Most.Value);
        json.WriteFigure("deviationAmps", (decimal?)draw.Deviation);
        json.WriteFigure("uncertaintyAmps", (decimal?)draw.Uncertainty);
        json.WriteFigure("uncertaintyFromReadingsAmps", (decimal?)draw.FromScatter);
        json.WriteFigure("uncertaintyFromMeterAmps", (decimal?)draw.FromMeter);
        json.WriteString("how", DrawFigures.Explain(draw));
        json.WriteEndObject();
    }
}
