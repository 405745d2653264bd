namespace Loadmark.Core.Nameplates;

/// <summary>Labels without words that tell no figure.</summary>
public static class LabelTrim
{
    /// <summary>The text without some pieces of it, and without what joined them to the rest.</summary>
    /// <param name="text">A label's text.</param>
    /// <param name="places">Where the pieces stand in it.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static string Without(string text, IEnumerable<Place> places)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(places);
        foreach (var place in places.OrderByDescending(static place => place.Start))
            text = string.Concat(text.AsSpan(0, place.Start), " ", text.AsSpan(place.End));
        var words = text.Replace("( )", " ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return string.Join(' ', words).Trim(' ', ',', ';');
    }

    /// <summary>
    /// The label without a piece that was not read. Null where there is no such piece, or where the rest would tell other figures without
    /// it: words between two figures can say what they are of.
    /// </summary>
    /// <param name="label">The label.</param>
    /// <param name="piece">The piece, as <see cref="Nameplate.Unread"/> has it; all that are alike go.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Nameplate? WithoutUnread(Nameplate label, string piece)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(piece);
        var places = label.Unread.Where(unread => unread.Text == piece).Select(static unread => unread.Place).ToList();
        if (places.Count == 0)
            return null;
        var rest = NameplateReader.Read(Without(label.Text, places));
        return NameplateWriter.WriteFigures(rest) == NameplateWriter.WriteFigures(label) ? rest : null;
    }
}
