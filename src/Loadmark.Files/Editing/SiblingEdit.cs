using Loadmark.Files.Writing;

namespace Loadmark.Files.Editing;

/// <summary>Adds, removes and moves the values that stand side by side in one group or list.</summary>
/// <param name="source">The text.</param>
/// <param name="splices">Where the changes go.</param>
/// <param name="writer">Writes what is new.</param>
/// <param name="isFlow">Whether they stand in brackets.</param>
/// <param name="open">Index past the opening bracket; of a block, anything.</param>
/// <param name="siblings">The values, in order.</param>
internal sealed class SiblingEdit(SourceText source, Splices splices, NodeText writer, bool isFlow, int open, List<Sibling> siblings)
{
    /// <summary>Arranges the siblings as wanted. Changes within those that stay are made before.</summary>
    /// <param name="wanted">What is to be there, in order.</param>
    /// <param name="isApart">Whether an empty line goes between a new one and the one before, where either takes several lines.</param>
    /// <returns>Whether it can be done.</returns>
    public bool Arrange(List<Wanted> wanted, bool isApart = false)
    {
        var kept = Matching.KeptInOrder(wanted);
        if (kept.Count == siblings.Count && wanted.Count == siblings.Count)
            return true;
        var moved = new Dictionary<int, string>();
        foreach (var one in wanted.Where(one => one.Source >= 0 && !kept.Contains(one.Source)))
        {
            var sibling = siblings[one.Source];
            if (splices.Take(sibling.Start, isFlow ? sibling.End : source.LineEnd(sibling.End)) is not { } text)
                return false;
            moved.Add(one.Source, text);
        }

        if (!(isFlow ? RemoveFromFlow(kept) : RemoveFromBlock(kept)))
            return false;
        var last = -1;
        var leading = new List<string>();
        foreach (var one in wanted)
        {
            if (kept.Contains(one.Source))
                last = one.Source;
            else if (last < 0)
                leading.Add(TextOf(one, moved));
            else
                AddAfter(
                    siblings[last],
                    TextOf(one, moved),
                    isApart && (!NodeText.IsInline(one.Value!) || source.LineEnd(siblings[last].Start) < siblings[last].End));
        }

        return leading.Count == 0 || AddBefore(kept.Count == 0 ? -1 : kept.Min(), leading);
    }

    private string TextOf(Wanted one, Dictionary<int, string> moved) =>
        moved.TryGetValue(one.Source, out var text)
            ? text
            : writer.Entry(one.Key, one.Value!, isFlow, Indent(siblings.Count == 0 ? 0 : siblings[0].Start));

    private string Indent(int index) => new(' ', index - source.LineStart(index));

    private void AddAfter(Sibling sibling, string text, bool isApart)
    {
        if (isFlow)
            splices.Insert(sibling.End, $",{GapBefore(sibling)}{text}");
        else
            splices.Insert(source.LineEnd(sibling.End), $"{source.NewLine}{(isApart ? source.NewLine : "")}{Indent(sibling.Start)}{text}");
    }

    private bool AddBefore(int first, List<string> texts)
    {
        if (isFlow)
        {
            var at = first >= 0 ? siblings[first].Start : siblings.Count > 0 ? siblings[0].Start : open;
            splices.Insert(
                at, first >= 0 ? string.Concat(texts.Select(text => $"{text},{GapBefore(siblings[first])}")) : string.Join(", ", texts));
            return true;
        }

        if (first < 0 && (siblings.Count == 0 || !source.IsFirstOnLine(siblings[0].Start)))
            return false;
        var start = siblings[Math.Max(first, 0)].Start;
        foreach (var text in texts)
        {
            if (first >= 0)
                splices.Insert(start, $"{text}{source.NewLine}{Indent(start)}");
            else
                splices.Insert(source.LastLineEnd(start), $"{source.NewLine}{Indent(start)}{text}");
        }

        return true;
    }

    /// <summary>What goes between two siblings in brackets: a line break where they stand on lines of their own.</summary>
    private string GapBefore(Sibling sibling)
    {
        var lineStart = source.LineStart(sibling.Start);
        return lineStart > 0 && lineStart >= open && source.IsFirstOnLine(sibling.Start)
            ? source.NewLine + source.Text[lineStart..sibling.Start]
            : " ";
    }

    private bool RemoveFromBlock(HashSet<int> kept)
    {
        for (var index = 0; index < siblings.Count; index++)
        {
            if (kept.Contains(index))
                continue;
            var (start, end) = (siblings[index].Start, siblings[index].End);
            var next = index + 1 < siblings.Count ? siblings[index + 1].Start : -1;

            // A line goes with the break before it, since what is added behind it is put before the break after it.
            if (source.IsFirstOnLine(start))
                splices.Remove(source.LastLineEnd(start), source.LineStart(start) == 0 ? source.NextLine(end) : source.LineEnd(end));
            // The first key of a list's item stands behind the dash, where the next takes its place.
            else if (next >= 0 && kept.Contains(index + 1) && !source.MayHoldComment(end, next))
                splices.Remove(start, next);
            else
                return false;
        }

        return true;
    }

    private bool RemoveFromFlow(HashSet<int> kept)
    {
        var last = siblings.Count;
        while (last > 0 && !kept.Contains(last - 1))
            last--;
        for (var index = 0; index < last; index++)
        {
            if (!kept.Contains(index) && !RemoveWithComma(siblings[index], siblings[index + 1].Start))
                return false;
        }

        if (last == siblings.Count)
            return true;
        var before = last == 0 ? null : siblings[last - 1];
        var hasComma = source.CommaAfter(siblings[^1].End) >= 0;
        var hasComment = Enumerable.Range(last, siblings.Count - last)
            .Any(index => index > 0 && source.MayHoldComment(siblings[index - 1].End, siblings[index].Start));
        if (before is not null && !hasComma && !hasComment)
        {
            splices.Remove(before.End, siblings[^1].End);
            return true;
        }

        for (var index = last; index < siblings.Count; index++)
        {
            var next = index + 1 < siblings.Count ? siblings[index + 1].Start : -1;
            if (next < 0 && !hasComma)
                splices.Remove(siblings[index].Start, siblings[index].End);
            else if (!RemoveWithComma(siblings[index], next))
                return false;
        }

        return true;
    }

    private bool RemoveWithComma(Sibling sibling, int next)
    {
        var comma = source.CommaAfter(sibling.End);
        if (comma < 0)
            return false;
        if (next >= 0 && !source.MayHoldComment(sibling.End, next))
        {
            splices.Remove(sibling.Start, next);
            return true;
        }

        splices.Remove(sibling.Start, sibling.End);
        splices.Remove(comma, comma + 1);
        return true;
    }
}
