using System.Collections.Immutable;
using Loadmark.Core.Rigs;

namespace Loadmark.Drawing.Diagrams;

/// <summary>
/// Parts the diagram of a rig into pictures that are not too high: between supplies where it can be, else between the outlets of one that
/// is too large for a page, and not between outlets that a lead joins where that can be helped.
/// </summary>
internal sealed class DiagramPaging
{
    private readonly DiagramModel _view;
    private readonly DiagramLayout _layout;
    private readonly double _most;
    private readonly double _around;

    private DiagramPaging(DiagramModel view, DiagramLayout layout, double most, double around) =>
        (_view, _layout, _most, _around) = (view, layout, most, around);

    /// <summary>The parts, at least one.</summary>
    /// <param name="view">The whole rig.</param>
    /// <param name="layout">Where everything would stand in one picture.</param>
    /// <param name="most">How high a picture may be, px; a single row that is higher is a picture all the same.</param>
    /// <param name="head">The height of what stands above the rows in each picture, px.</param>
    /// <param name="below">The height of what stands below them, px.</param>
    public static ImmutableArray<DiagramPart> Of(DiagramModel view, DiagramLayout layout, double most, double head, double below) =>
        layout.Bottom + below <= most ? [view.Part] : new DiagramPaging(view, layout, most, head + below).Parts();

    private ImmutableArray<DiagramPart> Parts()
    {
        var parts = ImmutableArray.CreateBuilder<DiagramPart>();
        var (begin, taken) = (0, 0.0);
        foreach (var (end, height) in Blocks())
        {
            // A block that does not fit behind others begins a picture; the first of a picture is taken whatever its height.
            if (taken > 0 && taken + height + _around > _most)
            {
                var last = parts.Count == 0 ? 0 : parts[^1].EndOutlet;
                parts.Add(new DiagramPart(last, begin, 0, 0));
                taken = 0;
            }

            begin = end;
            taken += height;
        }

        AddRest(parts, taken);
        return parts.ToImmutable();
    }

    /// <summary>The last outlets, with the loads on no feed below where they have room, else these on pictures of their own.</summary>
    private void AddRest(ImmutableArray<DiagramPart>.Builder parts, double taken)
    {
        var first = parts.Count == 0 ? 0 : parts[^1].EndOutlet;
        var (outlets, unfed) = (_view.Rig.Outlets.Count, _view.Rows.Unfed);
        var below = unfed.IsEmpty ? 0 : _layout.Bottom - _layout.UnfedY!.Value + 16;
        if (taken + below + _around <= _most || (first == outlets && unfed.IsEmpty))
        {
            parts.Add(new DiagramPart(first, outlets, 0, unfed.Length));
            return;
        }

        if (first < outlets)
            parts.Add(new DiagramPart(first, outlets, 0, 0));
        for (var from = 0; from < unfed.Length;)
        {
            var top = _layout.Loads[unfed[from].Index].Y;
            var to = from + 1;
            while (to < unfed.Length && _layout.Loads[unfed[to].Index].Bottom - top + 60 + _around <= _most)
                to++;
            parts.Add(new DiagramPart(outlets, outlets, from, to));
            from = to;
        }
    }

    /// <summary>
    /// What stays together: supplies with all that a lead joins to them, or single outlets where that is too high for a picture.
    /// </summary>
    private IEnumerable<(int End, double Height)> Blocks()
    {
        var bonds = new int[_view.Rig.Outlets.Count + 1];
        foreach (var feed in _view.Rig.Feeds)
        {
            // Between the first and the last outlet that a lead joins no picture ends.
            var last = feed.Outlets.Max(static outlet => outlet.Index);
            for (var outlet = feed.Outlets.Min(static outlet => outlet.Index) + 1; outlet <= last; outlet++)
                bonds[outlet]++;
        }

        var ends = new List<(int End, bool IsSupply)>();
        var place = 0;
        foreach (var supply in _view.Rig.Supplies)
        {
            for (var count = supply.Supply.Outlets.Count; count > 0; count--)
                ends.Add((++place, count == 1));
        }

        var (from, begin) = (0, 0);
        while (from < ends.Count)
        {
            var to = from;
            while (to < ends.Count - 1 && (!ends[to].IsSupply || bonds[ends[to].End] > 0))
                to++;
            if (HeightOf(begin, ends[to].End) + _around <= _most)
            {
                yield return (ends[to].End, HeightOf(begin, ends[to].End));
            }
            else
            {
                for (var single = from; single <= to; single++)
                {
                    // A lead that joins more than a page holds is parted too, and says so.
                    if (single < to && bonds[ends[single].End] > 0 && HeightOf(begin, ends[single + 1].End) + _around <= _most)
                        continue;
                    yield return (ends[single].End, HeightOf(begin, ends[single].End));
                    begin = ends[single].End;
                }
            }

            begin = ends[to].End;
            from = to + 1;
        }
    }

    /// <summary>How high the rows of outlets are, from the first to before the last, with the faces of supplies that are higher.</summary>
    private double HeightOf(int first, int end)
    {
        var top = TopOf(first);
        var bottom = end < _layout.Outlets.Length ? TopOf(end) : RowsBottom();
        var index = _view.Rig.Outlets[first].Supply;
        var face = _layout.Faces[PlaceOf(index.Supply)] is { } of ? of.Height + 20 : 0;
        return Math.Max(bottom - top, face);
    }

    private double TopOf(int outlet) => _layout.Outlets[outlet].Y - 2;

    private double RowsBottom() => _layout.UnfedY is { } unfed ? unfed - 16 : _layout.Bottom;

    private int PlaceOf(Supply supply)
    {
        for (var place = 0; place < _view.Rig.Supplies.Count; place++)
        {
            if (ReferenceEquals(_view.Rig.Supplies[place].Supply, supply))
                return place;
        }

        return 0;
    }
}
