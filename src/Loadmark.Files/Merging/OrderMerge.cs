namespace Loadmark.Files.Merging;

/// <summary>Brings two orders of a list together.</summary>
internal static class OrderMerge
{
    /// <summary>
    /// The items that stay, in an order that follows both: who moved something is followed, and what is new stands after what it stood
    /// after.
    /// </summary>
    /// <param name="fields">Keeps count.</param>
    /// <param name="place">Where.</param>
    /// <param name="before">The order before both.</param>
    /// <param name="ours">The order after our edit.</param>
    /// <param name="theirs">The order after the other.</param>
    /// <param name="stays">Whether an item stays; each that does is in ours or theirs.</param>
    public static List<string> Of(
        FieldMerge fields,
        MergePlace place,
        IReadOnlyList<string> before,
        IReadOnlyList<string> ours,
        IReadOnlyList<string> theirs,
        Predicate<string> stays)
    {
        var (inOurs, inTheirs, inBefore) = (
            ours.ToHashSet(StringComparer.Ordinal), theirs.ToHashSet(StringComparer.Ordinal), before.ToHashSet(StringComparer.Ordinal));
        var ourShared = ours.Where(inTheirs.Contains).ToList();
        var theirShared = theirs.Where(inOurs.Contains).ToList();
        var shared = ourShared.SequenceEqual(theirShared) ? ourShared
            : IsMoved(ourShared) == IsMoved(theirShared) ? Choose() == MergeSide.Ours ? ourShared : theirShared
            : IsMoved(ourShared) ? ourShared : theirShared;

        if (IsMoved(ourShared))
            fields.Ours.Add(new MergeChange(place, Text(before), Text(ours)));
        if (IsMoved(theirShared))
            fields.Theirs.Add(new MergeChange(place, Text(before), Text(theirs)));

        var order = new List<string>();
        var (ourNew, theirNew) = (After(ours, inTheirs), After(theirs, inOurs));
        Append(""); // what stands before all that is shared
        foreach (var item in shared)
        {
            if (stays(item))
                order.Add(item);
            Append(item);
        }

        return order;

        bool IsMoved(List<string> sequence) =>
            !sequence.Where(inBefore.Contains).SequenceEqual(before.Where(item => inOurs.Contains(item) && inTheirs.Contains(item)));

        MergeSide Choose() => fields.Choose(place, Text(before), Text(ours), Text(theirs));

        void Append(string anchor)
        {
            var (mine, other) = (ourNew.GetValueOrDefault(anchor, []), theirNew.GetValueOrDefault(anchor, []));

            // Either first would do; by their names it is the same whoever asks.
            var isOursFirst = mine.Count == 0 || other.Count == 0 || string.CompareOrdinal(mine[0], other[0]) <= 0;
            order.AddRange((isOursFirst ? mine.Concat(other) : other.Concat(mine)).Where(item => stays(item)));
        }
    }

    /// <summary>What only this side has, by the shared item that it stands after; "" for none. No item has an empty name.</summary>
    private static Dictionary<string, List<string>> After(IReadOnlyList<string> side, HashSet<string> other)
    {
        var after = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        var anchor = "";
        foreach (var item in side)
        {
            if (other.Contains(item))
                anchor = item;
            else if (after.TryGetValue(anchor, out var items))
                items.Add(item);
            else
                after[anchor] = [item];
        }

        return after;
    }

    private static string Text(IReadOnlyList<string> order) => string.Join(", ", order);
}
