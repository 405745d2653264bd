using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>
/// What must hold of the places of any reading of any text: every character that prints lies in exactly one piece of the reading or
/// in exactly one unread piece, and every field says where it stands.
/// </summary>
internal static class Coverage
{
    public static void Check(string text)
    {
        List<Place> pieces = [];
        var nameplate = NameplateReader.Read(text, pieces);
        var times = new int[text.Length];
        var end = 0;
        foreach (var piece in nameplate.Unread)
        {
            if (piece.Place.Start < end || piece.Place.End > text.Length || piece.Place.Length == 0)
                Assert.Fail($"{piece.Place} in \"{text}\"");
            Assert.True(piece.Place.In(text).SequenceEqual(piece.Text));
            end = piece.Place.End;
            for (var i = piece.Place.Start; i < end; i++)
                times[i]++;
        }

        foreach (var place in pieces)
        {
            for (var i = place.Start; i < place.End; i++)
                times[i]++;
        }

        for (var i = 0; i < text.Length; i++)
        {
            if (times[i] > 1)
                Assert.Fail($"'{text[i]}' (U+{(int)text[i]:X4}) at {i} is in {times[i]} pieces in \"{text}\"");
            if (times[i] == 0 && !IsSpace(text[i]))
                Assert.Fail($"'{text[i]}' (U+{(int)text[i]:X4}) at {i} is lost in \"{text}\"");
        }

        CheckPlace(text, nameplate.Form.State, nameplate.Form.Place);
        CheckPlace(text, nameplate.Polarity.State, nameplate.Polarity.Place);
        CheckPlace(text, nameplate.Plug.State, nameplate.Plug.Place);
        CheckPlace(text, nameplate.AmbiguousVolts.State, nameplate.AmbiguousVolts.Place);
        CheckPlace(text, nameplate.AmbiguousAmps.State, nameplate.AmbiguousAmps.Place);
        CheckPlace(text, nameplate.AmbiguousWatts.State, nameplate.AmbiguousWatts.Place);
        CheckPlace(text, nameplate.Ground.State, nameplate.Ground.Place);
        CheckPlace(text, nameplate.Isolated.State, nameplate.Isolated.Place);
        if (nameplate.Input is { } input)
            CheckPlace(text, FieldState.Read, input.Place);
        foreach (var outlets in nameplate.Outlets)
        {
            CheckPlace(text, FieldState.Read, outlets.Place);
            Assert.Equal(outlets.Count, outlets.Names(1).Count());
            Assert.InRange(outlets.Count, 1, PrintedOutlets.Most);
            Assert.False(outlets.Modes.IsEmpty);
        }

        Assert.True(nameplate.Outlets.IsEmpty || nameplate.Modes.IsEmpty);
        if (nameplate.Mains is { } mains)
            CheckPlace(text, FieldState.Read, mains.Place);
        foreach (var place in nameplate.Modes.SelectMany(mode => new[] { mode.VoltsPlace, mode.AmpsPlace, mode.WattsPlace }).OfType<Place>())
            CheckPlace(text, FieldState.Read, place);
    }

    /// <summary>White space, and characters that print nothing.</summary>
    private static bool IsSpace(char character) =>
        char.IsWhiteSpace(character) || char.IsControl(character) || character is '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' or (>= '\uFE00' and <= '\uFE0F');

    private static void CheckPlace(string text, FieldState state, Place place)
    {
        if (state != FieldState.Absent && (place.Start < 0 || place.Length <= 0 || place.End > text.Length))
            Assert.Fail($"{place} in \"{text}\"");
    }
}
