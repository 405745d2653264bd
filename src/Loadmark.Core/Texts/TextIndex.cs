using System.Collections.Immutable;

namespace Loadmark.Core.Texts;

/// <summary>
/// Finds things by their tags and by words about them, whatever the capitals, signs and spaces in a tag, with the end of a word left out,
/// and with typos where nothing else is found. Immutable.
/// </summary>
/// <remarks>
/// Words are looked up in a sorted list of all of them, so that beginnings are found by halving. For typos the words whose letters differ
/// too much are passed over by comparing sets of letters as bits (each letter that a word lacks takes an edit of its own, so that no
/// word is missed), and the Damerau-Levenshtein distance in its restricted form decides about the rest. How long that takes is in
/// bench/results/library.md.
/// </remarks>
public sealed class TextIndex
{
    private const int MostTokens = 8;
    private const int LongestToken = 64;

    /// <summary>What a match costs beyond the place of its text; the whole word costs nothing.</summary>
    private const int BeginningCost = 10;
    private const int EditCost = 20;
    private const int MissingCost = 200;

    private readonly string[] _order;
    private readonly WordList _words;
    private readonly TagList _tags;

    /// <summary>Makes an index of things by their texts.</summary>
    /// <param name="things">What each can be found by.</param>
    public TextIndex(IReadOnlyList<IndexedText> things)
    {
        ArgumentNullException.ThrowIfNull(things);
        _order = [.. things.Select(static thing => thing.Tag.ToUpperInvariant())];
        _tags = new TagList(things);
        _words = new WordList(things);
    }

    /// <summary>How many things there are.</summary>
    public int Count => _order.Length;

    /// <summary>
    /// Finds things, the best match first: the tag itself, tags that begin so, whole words of names, beginnings of words, typos.
    /// </summary>
    /// <param name="query">What somebody typed; an empty text finds nothing.</param>
    /// <param name="most">At most so many.</param>
    /// <param name="where">Which things count, by their place among those given, from 0; null for all.</param>
    /// <returns>The places of what was found, from 0.</returns>
    public ImmutableArray<int> Find(string query, int most, Func<int, bool>? where = null)
    {
        ArgumentNullException.ThrowIfNull(query);
        var tokens = SearchTerms.Of(query).Where(static token => token.Length <= LongestToken).Distinct(StringComparer.Ordinal)
            .Take(MostTokens).ToList();
        if (tokens.Count == 0)
            return [];

        var costs = new Dictionary<int, int>();
        _tags.Find(query, costs);
        AddWords(tokens, withTypos: false, mayMiss: 0, costs);
        if (!Any())
            AddWords(tokens, withTypos: true, mayMiss: 0, costs);
        if (!Any() && tokens.Count > 1)
            AddWords(tokens, withTypos: true, mayMiss: 1, costs);
        return [.. costs.Where(found => where is null || where(found.Key))
            .OrderBy(static found => found.Value)
            .ThenBy(found => _order[found.Key], StringComparer.Ordinal)
            .Take(most)
            .Select(static found => found.Key)];

        bool Any() => where is null ? costs.Count > 0 : costs.Keys.Any(where);
    }

    /// <summary>Adds the things that have every token, but for so many.</summary>
    private void AddWords(List<string> tokens, bool withTypos, int mayMiss, Dictionary<int, int> costs)
    {
        var (total, hits) = (new int[Count], new byte[Count]);
        var best = new int[Count];
        foreach (var token in tokens)
        {
            Array.Fill(best, int.MaxValue);
            foreach (var (word, cost) in Matches(token, withTypos))
            {
                foreach (var (thing, place) in _words.Places(word))
                    best[thing] = Math.Min(best[thing], cost + place);
            }

            for (var thing = 0; thing < best.Length; thing++)
            {
                if (best[thing] == int.MaxValue)
                    continue;
                total[thing] += best[thing];
                hits[thing]++;
            }
        }

        for (var thing = 0; thing < hits.Length; thing++)
        {
            var missing = tokens.Count - hits[thing];
            if (hits[thing] == 0 || missing > mayMiss)
                continue;
            var cost = TagList.Worst + total[thing] + (missing * MissingCost);
            if (!costs.TryGetValue(thing, out var known) || cost < known)
                costs[thing] = cost;
        }
    }

    private IEnumerable<(int Word, int Cost)> Matches(string token, bool withTypos)
    {
        foreach (var word in _words.BeginningWith(token))
            yield return (word, _words[word].Length == token.Length ? 0 : BeginningCost);
        if (!withTypos)
            yield break;
        foreach (var (word, edits, isWhole) in _words.Like(token, MostEdits(token)))
            yield return (word, (edits * EditCost) + (isWhole ? 0 : BeginningCost));
    }

    /// <summary>How many letters of a word may be wrong: about a third, and of what has digits in it, such as a tag, one.</summary>
    private static int MostEdits(string token) => token.Length switch
    {
        <= 2 => 0,
        _ when token.AsSpan().ContainsAnyInRange('0', '9') => 1,
        <= 5 => 1,
        <= 9 => 2,
        _ => 3,
    };
}
