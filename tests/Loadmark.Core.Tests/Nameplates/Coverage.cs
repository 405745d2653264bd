using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>What must hold of the places of any reading of any text.</summary>
internal static class Coverage
{
    public static void Check(string text)
    {
        List<Place> understood = [];
        var nameplate = NameplateReader.Read(text, understood);
        var seen = new bool[text.Length];
        var end = 0;
        foreach (var piece in nameplate.Unread)
        {
            if (piece.Place.Start < end || piece.Place.End > text.Length || piece.Place.Length == 0)
                Assert.Fail($"{piece.Place} in \"{text}\"");
            Assert.True(piece.Place.In(text).SequenceEqual(piece.Text));
            end = piece.Place.End;
            seen.AsSpan(piece.Place.Start, piece.Place.Length).Fill(true);
        }

        foreach (var place in understood)
            seen.AsSpan(place.Start, place.Length).Fill(true);
        for (var i = 0; i < text.Length; i++)
        {
            if (!seen[i] && !char.IsWhiteSpace(text[i]) && !char.IsControl(text[i]) && !IsPlain(text[i]))
                Assert.Fail($"'{text[i]}' (U+{(int)text[i]:X4}) at {i} is lost in \"{text}\"");
        }

        CheckPlace(text, nameplate.Form.State, nameplate.Form.Place);
        CheckPlace(text, nameplate.Polarity.State, nameplate.Polarity.Place);
        CheckPlace(text, nameplate.Plug.State, nameplate.Plug.Place);
        CheckPlace(text, nameplate.AmbiguousVolts.State, nameplate.AmbiguousVolts.Place);
        CheckPlace(text, nameplate.AmbiguousAmps.State, nameplate.AmbiguousAmps.Place);
        CheckPlace(text, nameplate.AmbiguousWatts.State, nameplate.AmbiguousWatts.Place);
        if (nameplate.Mains is { } mains)
            CheckPlace(text, FieldState.Read, mains.Place);
        foreach (var place in nameplate.Modes.SelectMany(mode => new[] { mode.VoltsPlace, mode.AmpsPlace, mode.WattsPlace }).OfType<Place>())
            CheckPlace(text, FieldState.Read, place);
    }

    /// <summary>Characters that fold to a space or a dash and are therefore no loss.</summary>
    private static bool IsPlain(char character) =>
        char.IsPunctuation(character) || character is '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' or '\u00AD' or (>= '\uFE00' and <= '\uFE0F');

    private static void CheckPlace(string text, FieldState state, Place place)
    {
        if (state != FieldState.Absent && (place.Start < 0 || place.Length <= 0 || place.End > text.Length))
            Assert.Fail($"{place} in \"{text}\"");
    }
}
