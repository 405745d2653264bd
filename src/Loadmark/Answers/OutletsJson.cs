using System.Text.Json;
using Loadmark.Core.Nameplates;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>Writes the outlets that a nameplate tells apart, and what all of them together can give.</summary>
internal static class OutletsJson
{
    /// <summary>Writes the properties <c>outlets</c> and <c>total</c>; null where the label says nothing of them.</summary>
    public static void Write(Utf8JsonWriter json, Nameplate nameplate)
    {
        if (nameplate.Outlets.IsEmpty)
            json.WriteNull("outlets");
        else
            WriteOutlets(json, nameplate);

        if (nameplate.Total is not { } total)
        {
            json.WriteNull("total");
            return;
        }

        json.WriteStartObject("total");
        if (total.Amps is { } amps)
            json.WriteFigure("amps", amps.Value);
        if (total.Watts is { } watts)
            json.WriteFigure("watts", watts.Value);
        json.WriteEndObject();
    }

    private static void WriteOutlets(Utf8JsonWriter json, Nameplate nameplate)
    {
        json.WriteStartArray("outlets");
        foreach (var group in nameplate.Outlets)
        {
            json.WriteStartObject();
            json.WriteString("ids", group.Ids);
            json.WriteNumber("count", group.Count);
            NameplateJson.WriteModes(json, group.Modes);
            if (group.Form.Value is { } form)
                json.WriteString("supply", JsonWords.Of(form));
            if (group.Polarity.Value is { } polarity)
                json.WriteString("polarity", JsonWords.Of(polarity));
            if (group.Isolated.Value is { } isolated)
                json.WriteBoolean("isolated", isolated);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
