using System.Collections.Immutable;
using System.Text.Json;
using Loadmark.Core.Nameplates;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>
/// Writes how the reading of each field went and where in the text it stands, so that nothing of a reading is lost in
/// JSON. A derived figure is absent here: the text does not say it.
/// </summary>
internal static class NameplateFieldsJson
{
    /// <summary>Writes the property <c>fields</c>, and <c>unreadAt</c> with the place of each piece not understood.</summary>
    public static void Write(Utf8JsonWriter json, Nameplate nameplate)
    {
        json.WriteStartObject("fields");
        WriteStart(json, "supply", nameplate.Form.State, nameplate.Form.Place);
        foreach (var form in nameplate.Form.Candidates)
            json.WriteStringValue(JsonWords.Of(form));
        WriteEnd(json);

        Write(json, "volts", ModeFigures.Volts(nameplate), nameplate.AmbiguousVolts.Candidates);
        Write(json, "amps", ModeFigures.Amps(nameplate), nameplate.AmbiguousAmps.Candidates);
        Write(json, "watts", ModeFigures.Watts(nameplate), nameplate.AmbiguousWatts.Candidates);

        WriteStart(json, "polarity", nameplate.Polarity.State, nameplate.Polarity.Place);
        foreach (var polarity in nameplate.Polarity.Candidates)
            json.WriteStringValue(JsonWords.Of(polarity));
        WriteEnd(json);

        WriteStart(json, "plug", nameplate.Plug.State, nameplate.Plug.Place);
        foreach (var plug in nameplate.Plug.Candidates)
            json.WriteStringValue(plug.Name);
        WriteEnd(json);

        WriteStart(json, "ground", nameplate.Ground.State, nameplate.Ground.Place);
        foreach (var ground in nameplate.Ground.Candidates)
            json.WriteStringValue(JsonWords.Of(ground));
        WriteEnd(json);

        WriteStart(json, "input", nameplate.Input is null ? FieldState.Absent : FieldState.Read, nameplate.Input?.Place);
        WriteEnd(json);
        WriteStart(json, "mains", nameplate.Mains is null ? FieldState.Absent : FieldState.Read, nameplate.Mains?.Place);
        WriteEnd(json);
        json.WriteEndObject();

        json.WriteStartArray("unreadAt");
        foreach (var unread in nameplate.Unread)
            WritePlace(json, unread.Place);
        json.WriteEndArray();
    }

    private static void Write<TUnit>(Utf8JsonWriter json, string name, ModeFigures reading, ImmutableArray<Quantity<TUnit>> candidates)
        where TUnit : struct, IUnit
    {
        WriteStart(json, name, reading.State, reading.Place);
        foreach (var candidate in candidates)
            json.WriteFigure(candidate.Value);
        WriteEnd(json);
    }

    private static void WriteStart(Utf8JsonWriter json, string name, FieldState state, Place? place)
    {
        json.WriteStartObject(name);
        json.WriteString("state", JsonWords.Of(state));
        json.WritePropertyName("at");
        if (state != FieldState.Absent && place is { } at)
            WritePlace(json, at);
        else
            json.WriteNullValue();
        json.WriteStartArray("candidates");
    }

    private static void WriteEnd(Utf8JsonWriter json)
    {
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, Place place)
    {
        json.WriteStartArray();
        json.WriteNumberValue(place.Start);
        json.WriteNumberValue(place.Length);
        json.WriteEndArray();
    }
}
