using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Editing;

/// <summary>Finds which old sibling becomes which new one.</summary>
internal static class Matching
{
    /// <summary>Matches by name, then what kept all but its name.</summary>
    /// <param name="before">The old entries.</param>
    /// <param name="after">The new entries.</param>
    public static List<Wanted> ByName(MappingNode before, MappingNode after)
    {
        var sources = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var index = 0; index < before.Entries.Count; index++)
            sources.Add(before.Entries[index].Key.Value, index);
        var gone = sources.Keys.Except(after.Entries.Select(entry => entry.Key.Value)).ToList();
        var renamed = gone.Select(name => sources[name]).ToList();
        var wanted = new List<Wanted>(after.Entries.Count);
        foreach (var (key, value) in after.Entries)
        {
            if (!sources.TryGetValue(key.Value, out var source))
                source = TakeFirst(renamed, index => NodeText.Same(before.Entries[index].Value, value));
            var isRenamed = source >= 0 && before.Entries[source].Key.Value != key.Value;
            wanted.Add(new Wanted(source, source < 0 || isRenamed ? key : null, value, source < 0 ? null : before.Entries[source].Value));
        }

        return wanted;
    }

    /// <summary>Matches items that are equal, then groups that agree in a key which each of them has.</summary>
    /// <param name="before">The old items.</param>
    /// <param name="after">The new items.</param>
    /// <param name="keys">The keys that tell one item from another, the better ones first.</param>
    public static List<Wanted> ByContent(SequenceNode before, SequenceNode after, IEnumerable<string> keys)
    {
        var left = Enumerable.Range(0, before.Items.Count).ToList();
        var sources = new int[after.Items.Count];
        for (var index = 0; index < sources.Length; index++)
        {
            var value = after.Items[index];
            sources[index] = TakeFirst(left, old => NodeText.Same(before.Items[old], value));
        }

        foreach (var key in keys)
        {
            for (var index = 0; index < sources.Length; index++)
            {
                if (sources[index] < 0 && after.Items[index] is MappingNode group && group.Find(key) is { } value)
                    sources[index] = TakeFirst(
                        left, old => before.Items[old] is MappingNode one && one.Find(key) is { } was && NodeText.Same(was, value));
            }
        }

        return [.. sources.Select(
            (source, index) => new Wanted(source, null, after.Items[index], source < 0 ? null : before.Items[source]))];
    }

    /// <summary>The longest run of old siblings that keep their order, so that as few as possible move.</summary>
    public static HashSet<int> KeptInOrder(List<Wanted> wanted)
    {
        // Patience sorting: tails[n] ends a run of n + 1 with the smallest end.
        var tails = new List<int>();
        var previous = new Dictionary<int, int>();
        foreach (var source in wanted.Select(one => one.Source).Where(source => source >= 0))
        {
            var place = tails.BinarySearch(source);
            place = place < 0 ? ~place : place;
            previous[source] = place == 0 ? -1 : tails[place - 1];
            if (place == tails.Count)
                tails.Add(source);
            else
                tails[place] = source;
        }

        var kept = new HashSet<int>();
        for (var source = tails.Count == 0 ? -1 : tails[^1]; source >= 0; source = previous[source])
            kept.Add(source);
        return kept;
    }

    private static int TakeFirst(List<int> left, Predicate<int> fits)
    {
        var place = left.FindIndex(fits);
        if (place < 0)
            return -1;
        var found = left[place];
        left.RemoveAt(place);
        return found;
    }
}
