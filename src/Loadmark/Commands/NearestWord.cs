namespace Loadmark.Commands;

/// <summary>Finds the word that a mistyped one was likely meant to be.</summary>
internal static class NearestWord
{
    /// <summary>
    /// The nearest of <paramref name="words"/>; null when none is near: more than a third of the letters would change.
    /// </summary>
    public static string? To(string typed, IEnumerable<string> words)
    {
        string? nearest = null;
        var least = int.MaxValue;
        foreach (var word in words)
        {
            var distance = Distance(typed, word);
            if (distance < least && distance <= Math.Max(1, Math.Max(typed.Length, word.Length) / 3))
                (nearest, least) = (word, distance);
        }

        return nearest;
    }

    /// <summary>
    /// How many letters must be inserted, left out, changed or exchanged with their neighbour (optimal string alignment).
    /// </summary>
    private static int Distance(string left, string right)
    {
        var before = new int[right.Length + 1];
        var last = new int[right.Length + 1];
        var row = new int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
            last[j] = j;

        for (var i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var change = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }

            (before, last, row) = (last, row, before);
        }

        return last[right.Length];
    }
}
