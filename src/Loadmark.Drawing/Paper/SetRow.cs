using System.Collections.Immutable;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>A row whose cells have been broken into the lines of their columns.</summary>
internal sealed class SetRow
{
    private readonly SetCell[] _cells;
    private readonly double[] _widths;

    private SetRow(SetCell[] cells, double[] widths) => (_cells, _widths) = (cells, widths);

    /// <summary>The height of the highest cell, px.</summary>
    public double Height => _cells.Max(static cell => cell.Height);

    /// <summary>Breaks the cells of a row.</summary>
    public static SetRow Of(PaperTable table, ImmutableArray<TableCell> cells, double[] widths) =>
        new([.. cells.Select((cell, column) => SetCell.Of(cell, table.Columns[column].Anchor, widths[column]))], widths);

    /// <summary>Parts the row where it is higher than the room there is.</summary>
    /// <returns>What fits, and what comes on the next page; null where all of it fits.</returns>
    public (SetRow Fits, SetRow? Left) Part(double height)
    {
        if (Height <= height)
            return (this, null);
        var parts = _cells.Select(cell => cell.Part(height)).ToArray();
        return parts.All(static part => part.Left is null)
            ? (this, null)
            : (new SetRow([.. parts.Select(static part => part.Fits)], _widths),
                new SetRow([.. parts.Select(static part => part.Left ?? SetCell.Of(TableCell.Empty, TextAnchor.Start, 1))], _widths));
    }

    /// <summary>The row in its place.</summary>
    /// <param name="x">Where it begins.</param>
    /// <param name="y">Its upper edge.</param>
    /// <param name="isHeader">Whether it is the row of headings.</param>
    /// <param name="ruleAbove">The ink of the rule above it.</param>
    public PaperPart At(double x, double y, bool isHeader, Ink ruleAbove)
    {
        var height = Height;
        var box = new Box(x, y, _widths.Sum(), height);
        var parts = ImmutableArray.CreateBuilder<PaperPart>();
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        if (isHeader)
            shapes.Add(new RectShape(Ink.Fill, box));
        shapes.Add(new LineShape(ruleAbove, new(x, y), new(box.Right, y)));
        parts.Add(new PaperPart { Tag = PaperTag.Artifact, Bounds = box, Shapes = shapes.ToImmutable() });
        for (var column = 0; column < _cells.Length; column++)
        {
            // The first cell of a row says what the row is about.
            parts.Add(_cells[column].At(new Box(x, y, _widths[column], height), isHeader || column == 0));
            x += _widths[column];
        }

        return new PaperPart { Tag = PaperTag.Row, Bounds = box, Parts = parts.ToImmutable() };
    }
}
