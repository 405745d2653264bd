using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>Brings two edits of a list of things with names together.</summary>
internal static class ListMerge
{
    /// <summary>The list after both edits.</summary>
    /// <param name="fields">Keeps count.</param>
    /// <param name="before">The list before both.</param>
    /// <param name="ours">The list after our edit.</param>
    /// <param name="theirs">The list after the other.</param>
    /// <param name="name">The name of a thing, unique in its list.</param>
    /// <param name="place">Where a thing of a name is.</param>
    /// <param name="order">Where the order of the list is.</param>
    /// <param name="merge">Brings a thing together that all three have.</param>
    /// <param name="isTouched">Whether a side changed something else about a thing; null where there is nothing else.</param>
    public static ValueList<T> Of<T>(
        FieldMerge fields,
        ValueList<T> before,
        ValueList<T> ours,
        ValueList<T> theirs,
        Func<T, string> name,
        Func<string, MergePlace> place,
        MergePlace order,
        Func<T, T, T, T> merge,
        Func<string, MergeSide, bool>? isTouched = null)
        where T : class
    {
        var (was, mine, other) = (ByName(before, name), ByName(ours, name), ByName(theirs, name));
        var merged = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var key in before.Items.Concat(ours.Items).Concat(theirs.Items).Select(name).Distinct(StringComparer.Ordinal))
        {
            var one = fields.PickWhole(
                place(key), was.GetValueOrDefault(key), mine.GetValueOrDefault(key), other.GetValueOrDefault(key), merge,
                isTouched is null ? null : side => isTouched(key, side));
            if (one is not null)
                merged.Add(key, one);
        }

        var keys = OrderMerge.Of(fields, order, Names(before), Names(ours), Names(theirs), merged.ContainsKey);
        return [.. keys.Select(key => merged[key])];

        List<string> Names(ValueList<T> list) => [.. list.Items.Select(name).Distinct(StringComparer.Ordinal)];
    }

    private static Dictionary<string, T> ByName<T>(ValueList<T> list, Func<T, string> name)
    {
        var byName = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var item in list)
            byName.TryAdd(name(item), item);
        return byName;
    }
}
