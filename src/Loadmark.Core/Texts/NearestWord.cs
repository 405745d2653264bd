namespace Loadmark.Core.Texts;

/// <summary>
/// Finds the word that a typo meant: fewest insertions, deletions, exchanges and swaps of neighbours (the
/// Damerau-Levenshtein distance, in its restricted form).
/// </summary>
public static class NearestWord
{
    private const int Longest = 64;

    /// <summary>A bound on the work where a file holds thousands of names.</summary>
    private const int MostCandidates = 2_000;

    /// <summary>The candidate nearest to <paramref name="word"/>, letters' case aside; null when none is near.</summary>
    public static string? Find(string word, IEnumerable<string> candidates)
    {
        if (word.Length is 0 or > Longest)
            return null;

        // A third of the letters may be wrong; one in a word of two.
        var best = Math.Max(1, word.Length / 3) + 1;
        string? nearest = null;
        var lower = word.ToLowerInvariant();
        var seen = 0;
        foreach (var candidate in candidates)
        {
            if (++seen > MostCandidates)
                break;
            if (candidate.Length > Longest || Math.Abs(candidate.Length - word.Length) >= best)
                continue;
            var distance = Distance(lower, candidate.ToLowerInvariant());
            if (distance < best && distance < Math.Max(word.Length, candidate.Length))
            {
                best = distance;
                nearest = candidate;
            }
        }

        return nearest;
    }

    /// <summary>The number of edits between two words of at most 64 letters.</summary>
    internal static int Distance(ReadOnlySpan<char> left, ReadOnlySpan<char> right) => Distances(left, right).Whole;

    /// <summary>The number of edits from one word to another of at most 64 letters, and to the nearest of the other's beginnings.</summary>
    internal static (int Whole, int Beginning) Distances(ReadOnlySpan<char> left, ReadOnlySpan<char> right)
    {
        Span<int> beforeLast = stackalloc int[right.Length + 1];
        Span<int> last = stackalloc int[right.Length + 1];
        Span<int> row = stackalloc int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
            last[j] = j;

        for (var i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var cost = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1] + 1, last[j] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }

            last.CopyTo(beforeLast);
            row.CopyTo(last);
        }

        var beginning = last[0];
        foreach (var distance in last)
            beginning = Math.Min(beginning, distance);
        return (last[right.Length], beginning);
    }
}
