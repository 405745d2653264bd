namespace Loadmark.Core.Texts;

/// <summary>Finds tags as a whole or by their beginning, without regard to signs, spaces and noughts before numbers.</summary>
internal sealed class TagList
{
    /// <summary>More than any match of a tag costs.</summary>
    public const int Worst = 1000;

    private const int Exact = 0;
    private const int WithoutNoughts = 1;
    private const int Beginning = 10;

    private readonly (string Bare, int Thing)[] _sorted;
    private readonly ILookup<string, int> _plain;

    public TagList(IReadOnlyList<IndexedText> things)
    {
        _sorted = [.. things.Select(static (thing, index) => (SearchTerms.Bare(thing.Tag), index))
            .OrderBy(static tag => tag.Item1, StringComparer.Ordinal)];
        _plain = _sorted.ToLookup(static tag => SearchTerms.WithoutNoughts(tag.Bare), static tag => tag.Thing, StringComparer.Ordinal);
    }

    /// <summary>Adds the things whose tags match, with what each match costs.</summary>
    public void Find(string query, Dictionary<int, int> costs)
    {
        var bare = SearchTerms.Bare(query);
        foreach (var thing in _plain[SearchTerms.WithoutNoughts(bare)])
            costs[thing] = WithoutNoughts;
        for (var index = FirstFrom(bare); index < _sorted.Length && _sorted[index].Bare.StartsWith(bare, StringComparison.Ordinal); index++)
        {
            var (tag, thing) = _sorted[index];
            if (tag.Length == bare.Length)
                costs[thing] = Exact;
            else
                costs.TryAdd(thing, Math.Min(Beginning + tag.Length - bare.Length, Worst - 1));
        }
    }

    private int FirstFrom(string bare)
    {
        var (low, high) = (0, _sorted.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (string.CompareOrdinal(_sorted[middle].Bare, bare) < 0)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}
