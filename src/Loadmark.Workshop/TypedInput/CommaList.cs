namespace Loadmark.Workshop.TypedInput;

/// <summary>Names that are typed in a row with commas between them.</summary>
public static class CommaList
{
    /// <summary>The names, in the order typed, without spaces round them; what is empty is left out.</summary>
    /// <param name="texts">What was typed, in one text or several.</param>
    public static IReadOnlyList<string> Of(params IEnumerable<string> texts) =>
        [.. texts.SelectMany(static names => names.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))];
}
