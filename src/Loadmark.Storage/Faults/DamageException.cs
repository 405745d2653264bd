namespace Loadmark.Storage.Faults;

/// <summary>Something is not as it was saved. The message is a sentence for the user, and says what.</summary>
#pragma warning disable RCS1194 // Made with its sentence only.
internal sealed class DamageException : Exception
#pragma warning restore RCS1194
{
    private const int MostNamed = 3;

    /// <summary>Says what is damaged.</summary>
    public DamageException(string sentence)
        : base(sentence)
    {
    }

    /// <summary>Names what is not as it was saved.</summary>
    /// <param name="places">Where; at least one.</param>
    public static DamageException At(params IReadOnlyList<string> places)
    {
        var named = string.Join(", ", places.Take(MostNamed));
        var more = places.Count > MostNamed ? $" and {places.Count - MostNamed} more" : "";
        return new DamageException($"Not as it was saved: {named}{more}.");
    }
}
