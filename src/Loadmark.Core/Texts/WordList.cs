using System.Numerics;

namespace Loadmark.Core.Texts;

/// <summary>Every word that things are found by, sorted, each with the things that have it.</summary>
internal sealed class WordList
{
    private const int Longest = 64;

    /// <summary>What a text costs for each that stands before it.</summary>
    private const int PlaceCost = 2;

    private readonly string[] _words;
    private readonly uint[] _letters;
    private readonly (int Thing, int Place)[][] _places;

    public WordList(IReadOnlyList<IndexedText> things)
    {
        var found = new Dictionary<string, List<(int Thing, int Place)>>(StringComparer.Ordinal);
        for (var thing = 0; thing < things.Count; thing++)
        {
            var (tag, texts) = things[thing];
            var bare = SearchTerms.Bare(tag);
            foreach (var word in SearchTerms.Of(tag).Append(bare).Append(SearchTerms.WithoutNoughts(bare)))
                Add(word, thing, 0);
            for (var place = 0; place < texts.Count; place++)
            {
                foreach (var word in SearchTerms.Of(texts[place]))
                    Add(word, thing, place * PlaceCost);
            }
        }

        _words = [.. found.Keys.Order(StringComparer.Ordinal)];
        _letters = [.. _words.Select(static word => LettersOf(word))];
        _places = [.. _words.Select(word => found[word].ToArray())];

        void Add(string word, int thing, int place)
        {
            if (word.Length is 0 or > Longest)
                return;
            if (!found.TryGetValue(word, out var places))
                found.Add(word, places = []);

            // The things come in order, and the best place of each first.
            if (places.Count == 0 || places[^1].Thing != thing)
                places.Add((thing, place));
        }
    }

    public string this[int word] => _words[word];

    /// <summary>The things that have a word, each with what the place of its text costs.</summary>
    public (int Thing, int Place)[] Places(int word) => _places[word];

    /// <summary>The words that begin with a token, itself first where it is one.</summary>
    public IEnumerable<int> BeginningWith(string token)
    {
        var first = Array.BinarySearch(_words, token, StringComparer.Ordinal);
        for (var word = first < 0 ? ~first : first;
            word < _words.Length && _words[word].StartsWith(token, StringComparison.Ordinal);
            word++)
            yield return word;
    }

    /// <summary>The words within a number of edits of a token, or whose beginnings are.</summary>
    public IEnumerable<(int Word, int Edits, bool IsWhole)> Like(string token, int mostEdits)
    {
        if (mostEdits == 0)
            yield break;
        var letters = LettersOf(token);
        for (var word = 0; word < _words.Length; word++)
        {
            // Each letter of the token that the word lacks takes an edit of its own.
            if (_words[word].Length + mostEdits < token.Length || BitOperations.PopCount(letters & ~_letters[word]) > mostEdits)
                continue;
            var (whole, beginning) = NearestWord.Distances(token, _words[word]);
            if (whole <= mostEdits)
                yield return (word, whole, true);
            else if (beginning <= mostEdits && beginning * 3 < token.Length)
                yield return (word, beginning, false);
        }
    }

    /// <summary>The set of a word's letters, as bits: 26 letters, ten digits two to a bit, and one for all else.</summary>
    private static uint LettersOf(string word)
    {
        var letters = 0u;
        foreach (var letter in word)
            letters |= 1u << (char.IsAsciiLetterLower(letter) ? letter - 'a' : char.IsAsciiDigit(letter) ? 26 + ((letter - '0') / 2) : 31);
        return letters;
    }
}
