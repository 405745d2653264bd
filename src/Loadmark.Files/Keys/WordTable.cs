namespace Loadmark.Files.Keys;

/// <summary>The words for the values of an enumeration; the first word of a value is the one that is written.</summary>
/// <param name="all">The words, in the program's own spelling first.</param>
/// <param name="values">Their values, one for each word, all of the one enumeration.</param>
internal sealed class WordTable(string[] all, object[] values)
{
    // Objects rather than a type parameter: code for a value type of another project cannot be compiled ahead and costs start-up time.

    /// <summary>All words, in the program's own spelling first.</summary>
    public IReadOnlyList<string> All => all;

    /// <summary>One word for each value.</summary>
    public IEnumerable<string> Canonical => values.Distinct().Select(WordOf);

    /// <summary>The value of a word, its case aside, with hyphens or underscores for spaces; null when it is none.</summary>
    public object? Find(string text)
    {
        var plain = text.Trim().Replace('-', ' ').Replace('_', ' ');
        for (var index = 0; index < all.Length; index++)
        {
            if (all[index].Equals(plain, StringComparison.OrdinalIgnoreCase))
                return values[index];
        }

        return null;
    }

    /// <summary>The word that is written for a value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not in the table.</exception>
    public string WordOf(object value)
    {
        var index = Array.IndexOf(values, value);
        return index >= 0
            ? all[index]
            : throw new ArgumentOutOfRangeException(nameof(value), value, "The value has no word in the rig file.");
    }
}
