using Loadmark.Core.Nameplates;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>
/// How the reading of each field went and where in the text it stands, as JSON, so that nothing of a reading is lost. A derived figure is
/// absent here: the text does not say it.
/// </summary>
internal static class NameplateFieldsJson
{
    private const string PlaceAbout = "Where it stands in the text: the first character from 0, and how many, in UTF-16 code units";

    private static JsonShape<FieldResult<string>> WordField { get; } =
        Field("WordField", new JsonText("A word that it may be."));

    private static JsonShape<FieldResult<decimal?>> FigureField { get; } =
        Field("FigureField", new JsonNumber(new ValueDescription(JsonKind.Number, "A figure that it may be, in V, A or W.")));

    private static JsonShape<Nameplate> Fields { get; } = new JsonShape<Nameplate>("", "How the reading of each field went.")
        .Value("supply", static nameplate => OfWords(nameplate.Form, JsonWords.Of), WordField)
        .Value("volts", static nameplate => OfFigures(ModeFigures.Volts(nameplate), nameplate.AmbiguousVolts), FigureField)
        .Value("amps", static nameplate => OfFigures(ModeFigures.Amps(nameplate), nameplate.AmbiguousAmps), FigureField)
        .Value("watts", static nameplate => OfFigures(ModeFigures.Watts(nameplate), nameplate.AmbiguousWatts), FigureField)
        .Value("polarity", static nameplate => OfWords(nameplate.Polarity, JsonWords.Of), WordField)
        .Value("plug", static nameplate => OfWords(nameplate.Plug, static plug => plug.Name), WordField)
        .Value("ground", static nameplate => OfWords(nameplate.Ground, JsonWords.Of), WordField)
        .Value("input", static nameplate => OfPlace(nameplate.Input?.Place), WordField)
        .Value("mains", static nameplate => OfPlace(nameplate.Mains?.Place), WordField);

    /// <summary>The members <c>fields</c>, and <c>unreadAt</c> with the place of each piece not understood.</summary>
    public static JsonShape<Nameplate> Members { get; } = new JsonShape<Nameplate>("", "")
        .Value("fields", static nameplate => nameplate, Fields)
        .List(
            "unreadAt", static nameplate => nameplate.Unread.Select(static unread => Numbers(unread.Place)), PlaceOf(PlaceAbout + "."),
            "Where what was not understood stands.");

    private static JsonShape<FieldResult<T>> Field<T>(string name, JsonValue<T> candidate) =>
        new JsonShape<FieldResult<T>>(name, "How the reading of a field went.")
            .Word("state", static field => field.State, JsonWords.Of, "How it went.")
            .Value(
                "at", static field => field.State != FieldState.Absent && field.Place is { } place ? Numbers(place) : null,
                PlaceOf(PlaceAbout + "; null where nothing does."), Presence.OrNull)
            .List("candidates", static field => field.Candidates, candidate, "What it may be where that is not clear.");

    private static JsonTuple PlaceOf(string about) => new(about, 2, new ValueDescription(JsonKind.Count, "Characters."));

    private static IReadOnlyList<decimal?> Numbers(Place place) => [place.Start, place.Length];

    private static FieldResult<string> OfWords<T>(Field<T> field, Func<T, string> wordOf)
        where T : struct =>
        new(field.State, field.Place, field.Candidates.IsEmpty ? [] : [.. field.Candidates.Select(wordOf)]);

    private static FieldResult<decimal?> OfFigures<TUnit>(ModeFigures reading, Field<Quantity<TUnit>> unclear)
        where TUnit : struct, IUnit =>
        new(
            reading.State,
            reading.Place,
            unclear.Candidates.IsEmpty ? [] : [.. unclear.Candidates.Select(static candidate => (decimal?)candidate.Value)]);

    private static FieldResult<string> OfPlace(Place? place) => new(place is null ? FieldState.Absent : FieldState.Read, place, []);
}
