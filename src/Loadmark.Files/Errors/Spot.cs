namespace Loadmark.Files.Errors;

/// <summary>A place in a text.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1, in UTF-16 code units.</param>
/// <param name="Index">From 0, in UTF-16 code units from the start of the text.</param>
internal sealed record Spot(int Line, int Column, int Index)
{
    /// <summary>The start of a text.</summary>
    public static Spot Start => new(1, 1, 0);

    /// <summary>The place of the character at <paramref name="index"/> of <paramref name="text"/>.</summary>
    public static Spot At(ReadOnlySpan<char> text, int index) => new LineTable(text).SpotOf(index);
}
