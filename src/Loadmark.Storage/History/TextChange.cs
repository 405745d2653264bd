namespace Loadmark.Storage.History;

/// <summary>
/// What differs between two texts: one stretch, from the first character that differs to the last. An edit of a rig touches one place,
/// so this is small; it takes no more than both texts when everything differs.
/// </summary>
/// <param name="Start">Where the stretch begins, in UTF-16 units.</param>
/// <param name="Before">What stood there before.</param>
/// <param name="After">What stands there after.</param>
internal sealed record TextChange(int Start, string Before, string After)
{
    public static TextChange Between(string before, string after)
    {
        var start = before.AsSpan().CommonPrefixLength(after);
        var (end, shorter) = (0, Math.Min(before.Length, after.Length) - start);
        while (end < shorter && before[^(end + 1)] == after[^(end + 1)])
            end++;

        return new TextChange(start, before[start..^end], after[start..^end]);
    }

    /// <summary>The text after the change, from that before it.</summary>
    /// <exception cref="InvalidDataException">The text is not the one that was changed.</exception>
    public string Redo(string text) => Replace(text, Before, After);

    /// <summary>The text before the change, from that after it.</summary>
    /// <exception cref="InvalidDataException">The text is not the one that the change made.</exception>
    public string Undo(string text) => Replace(text, After, Before);

    private string Replace(string text, string old, string with)
    {
        if (Start < 0 || Start > text.Length || !text.AsSpan(Start).StartsWith(old))
            throw new InvalidDataException("An edit in the database does not fit the text that it belongs to.");

        return string.Concat(text.AsSpan(0, Start), with, text.AsSpan(Start + old.Length));
    }
}
