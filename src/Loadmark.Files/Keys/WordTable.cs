namespace Loadmark.Files.Keys;

/// <summary>The words for the values of an enumeration; the first word of a value is the one that is written.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
/// <param name="words">The words with their values.</param>
internal sealed class WordTable<T>(params (string Word, T Value)[] words)
    where T : struct, Enum
{
    /// <summary>All words, in the program's own spelling first.</summary>
    public IEnumerable<string> All => words.Select(pair => pair.Word);

    /// <summary>One word for each value.</summary>
    public IEnumerable<string> Canonical => words.DistinctBy(pair => pair.Value).Select(pair => pair.Word);

    /// <summary>The value of a word, its case aside, with hyphens or underscores for spaces; null when it is none.</summary>
    public T? Find(string text)
    {
        var plain = text.Replace('-', ' ').Replace('_', ' ').Trim();
        foreach (var (word, value) in words)
        {
            if (word.Equals(plain, StringComparison.OrdinalIgnoreCase))
                return value;
        }

        return null;
    }

    /// <summary>The word that is written for a value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not in the table.</exception>
    public string WordOf(T value)
    {
        foreach (var (word, itsValue) in words)
        {
            if (EqualityComparer<T>.Default.Equals(itsValue, value))
                return word;
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "The value has no word in the rig file.");
    }
}
