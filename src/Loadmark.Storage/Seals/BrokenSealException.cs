namespace Loadmark.Storage.Seals;

/// <summary>Something is not as it was saved. The message says which, for the user.</summary>
#pragma warning disable RCS1194 // Made with its places only.
internal sealed class BrokenSealException : Exception
#pragma warning restore RCS1194
{
    private const int MostNamed = 3;

    /// <summary>Names what is not as it was saved.</summary>
    /// <param name="places">Where; at least one.</param>
    public BrokenSealException(params IReadOnlyList<string> places)
        : base(Words(places))
    {
    }

    private static string Words(IReadOnlyList<string> places)
    {
        var named = string.Join(", ", places.Take(MostNamed));
        var more = places.Count > MostNamed ? $" and {places.Count - MostNamed} more" : "";
        return $"Not as it was saved: {named}{more}.";
    }
}
