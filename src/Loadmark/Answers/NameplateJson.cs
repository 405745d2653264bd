using System.Collections.Immutable;
using System.Text.Json;
using Loadmark.Core.Nameplates;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>Writes the reading of a nameplate as JSON, one object a line.</summary>
internal static class NameplateJson
{
    /// <summary>Reads each text and writes what it says, each on its own line.</summary>
    public static void Write(Stream output, IReadOnlyList<string> texts)
    {
        using var buffered = new BufferedStream(output, 1 << 16);
        using var json = new Utf8JsonWriter(buffered, JsonFigures.Options);
        for (var index = 0; index < texts.Count; index++)
        {
            Write(json, NameplateReader.Read(texts[index]));
            json.Flush();
            buffered.Write("\n"u8);
            json.Reset();
        }
    }

    /// <summary>Writes one reading as an object.</summary>
    public static void Write(Utf8JsonWriter json, Nameplate nameplate)
    {
        json.WriteStartObject();
        json.WriteString("supply", nameplate.Form.Value is { } form ? JsonWords.Of(form) : null);
        WriteModes(json, nameplate.Modes);

        json.WriteString("polarity", nameplate.Polarity.Value is { } polarity ? JsonWords.Of(polarity) : null);
        json.WriteString("plug", nameplate.Plug.Value?.Name);
        WriteMains(json, nameplate.Mains);
        WriteInput(json, nameplate.Input);
        OutletsJson.Write(json, nameplate);
        json.WriteTexts("derived", nameplate.Derived);
        json.WriteTexts("conflicts", nameplate.Conflicts);

        json.WriteStartArray("unread");
        foreach (var unread in nameplate.Unread)
            json.WriteStringValue(unread.Text);
        json.WriteEndArray();

        json.WriteString("ground", nameplate.Ground.Value is { } ground ? JsonWords.Of(ground) : null);
        json.WritePropertyName("isolated");
        if (nameplate.Isolated.Value is { } isolated)
            json.WriteBooleanValue(isolated);
        else
            json.WriteNullValue();
        json.WriteBoolean("eachOutlet", nameplate.EachOutlet);
        json.WriteTexts("notUnderstood", [.. JsonWords.Of(nameplate.NotUnderstood)]);
        NameplateFieldsJson.Write(json, nameplate);
        json.WriteEndObject();
    }

    /// <summary>Writes the property <c>modes</c>.</summary>
    public static void WriteModes(Utf8JsonWriter json, ImmutableArray<Mode> modes)
    {
        json.WriteStartArray("modes");
        foreach (var mode in modes)
            Write(json, mode);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Mode mode)
    {
        json.WriteStartObject();
        json.WriteRange("volts", mode.Volts);
        json.WriteFigure("amps", mode.Amps?.Value.Value);
        json.WriteFigure("watts", mode.Watts?.Value.Value);
        if (mode.VoltAmps is { } apparent)
            json.WriteFigure("voltAmps", apparent.Value.Value);
        if (mode.AmpsFrom is { } from)
            json.WriteFigure("ampsFrom", from.Value);
        if (mode.Hertz is { } hertz)
            json.WriteRange<Hertz>("hertz", hertz);
        json.WriteEndObject();
    }

    private static void WriteInput(Utf8JsonWriter json, LowVoltageInput? input)
    {
        if (input is null)
        {
            json.WriteNull("input");
            return;
        }

        json.WriteStartObject("input");
        json.WriteRange("volts", input.Volts);
        json.WriteFigure("amps", input.Amps?.Value);
        if (input.Watts is { } watts)
            json.WriteFigure("watts", watts.Value);
        if (input.VoltAmps is { } apparent)
            json.WriteFigure("voltAmps", apparent.Value);
        if (input.Form.Value is { } form)
            json.WriteString("supply", JsonWords.Of(form));
        json.WriteEndObject();
    }

    private static void WriteMains(Utf8JsonWriter json, MainsInput? mains)
    {
        if (mains is null)
        {
            json.WriteNull("mains");
            return;
        }

        json.WriteStartObject("mains");
        json.WriteRange("volts", mains.Volts);
        json.WriteRange("hertz", mains.Hertz);
        json.WriteFigure("amps", mains.Amps?.Value);
        if (mains.Watts is { } watts)
            json.WriteFigure("watts", watts.Value);
        if (mains.VoltAmps is { } apparent)
            json.WriteFigure("voltAmps", apparent.Value);
        json.WriteEndObject();
    }
}
