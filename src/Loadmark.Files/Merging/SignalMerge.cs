using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>Brings two edits of the signal path's order together.</summary>
internal static class SignalMerge
{
    public static ValueList<string> Of(FieldMerge fields, ValueList<string> before, ValueList<string> ours, ValueList<string> theirs)
    {
        var place = new MergePlace(MergePart.Signal, "", "signal");
        if (ours == before || theirs == before || ours == theirs)
            return fields.Pick(place, before, ours, theirs);

        var (was, mine, other) = (Counted(before), Counted(ours), Counted(theirs));
        var (inBefore, inOurs, inTheirs) = (
            was.ToHashSet(StringComparer.Ordinal), mine.ToHashSet(StringComparer.Ordinal), other.ToHashSet(StringComparer.Ordinal));
        var order = OrderMerge.Of(
            fields,
            place,
            was,
            mine,
            other,
            word => inOurs.Contains(word) == inBefore.Contains(word) ? inTheirs.Contains(word) : inOurs.Contains(word));
        return [.. order.Select(static word => word[..word.LastIndexOf('\n')])];
    }

    /// <summary>The words with a number, since one may stand there twice.</summary>
    private static List<string> Counted(ValueList<string> words)
    {
        var counted = new List<string>();
        foreach (var word in words)
        {
            var nth = 1;
            while (counted.Contains($"{word}\n{nth}"))
                nth++;
            counted.Add($"{word}\n{nth}");
        }

        return counted;
    }
}
