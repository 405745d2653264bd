using System.Collections.Immutable;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Paper;

/// <summary>A cell whose texts have been broken into the lines of its column.</summary>
internal sealed class SetCell
{
    private const double PaddingAbove = 3.5;
    private const double PaddingBelow = 3;
    private const double BoxHeight = 7 * PaperSize.PxPerMm;

    private readonly TableCell _cell;
    private readonly TextAnchor _anchor;
    private readonly List<(TableText Text, string Line, bool IsFirst)> _lines;

    private SetCell(TableCell cell, TextAnchor anchor, List<(TableText Text, string Line, bool IsFirst)> lines) =>
        (_cell, _anchor, _lines) = (cell, anchor, lines);

    /// <summary>The height the cell needs, px.</summary>
    public double Height => Math.Max(
        PaddingAbove + PaddingBelow + _lines.Sum(static line => PitchOf(line.Text)),
        _cell.IsBox ? BoxHeight : _cell.Sign is null ? 0 : TableCell.SignHeight);

    /// <summary>Breaks a cell's texts.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="anchor">Where its texts stand.</param>
    /// <param name="width">The width of the column, px.</param>
    public static SetCell Of(TableCell cell, TextAnchor anchor, double width)
    {
        var space = width - (2 * ColumnWidths.Padding) - ColumnWidths.After(anchor) - ColumnWidths.SignRoom(cell);
        var lines = new List<(TableText Text, string Line, bool IsFirst)>();
        foreach (var text in cell.Texts)
        {
            var isFirst = true;
            foreach (var line in WrappedText.Lay(text.Text, text.Face, text.Size, Math.Max(1, space - text.Indent)))
            {
                lines.Add((text, line, isFirst));
                isFirst = false;
            }
        }

        return new SetCell(cell, anchor, lines);
    }

    /// <summary>Parts the cell where it is higher than the room there is; the rest comes on the next page.</summary>
    /// <param name="height">The room, px.</param>
    /// <returns>What fits, at least a line, and the rest; null where all of it fits.</returns>
    public (SetCell Fits, SetCell? Left) Part(double height)
    {
        var (taken, count) = (PaddingAbove + PaddingBelow, 0);
        while (count < _lines.Count && (count == 0 || taken + PitchOf(_lines[count].Text) <= height))
            taken += PitchOf(_lines[count++].Text);
        return count == _lines.Count
            ? (this, null)
            : (new SetCell(_cell, _anchor, _lines[..count]),
                new SetCell(_cell with { IsBox = false, Sign = null }, _anchor, _lines[count..]));
    }

    /// <summary>The cell in its place.</summary>
    /// <param name="box">Its place, as high as its row.</param>
    /// <param name="isHeader">Whether it says what its column or row is.</param>
    public PaperPart At(Box box, bool isHeader)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var left = box.X + ColumnWidths.Padding;
        if (_cell.Sign is { } sign)
        {
            shapes.AddRange(sign(new Point(left + (_cell.SignWidth / 2), box.Y + (TableCell.SignHeight / 2))));
            left += ColumnWidths.SignRoom(_cell);
        }

        if (_cell.IsBox)
            shapes.Add(new RectShape(Ink.Hair, box.Grow(-2), 2));
        var y = box.Y + PaddingAbove;
        foreach (var (text, line, isFirst) in _lines)
        {
            if (isFirst && text.Sign is { } severity)
            {
                var marks = new List<Shape>();
                SignShapes.Add(marks, severity, new Point(left + 4.5, y + (text.Size * 0.62)));
                shapes.AddRange(marks);
            }

            var x = _anchor switch
            {
                TextAnchor.Start => left + text.Indent,
                TextAnchor.Middle => (left + box.Right - ColumnWidths.Padding) / 2,
                _ => box.Right - ColumnWidths.Padding - ColumnWidths.AfterFigures,
            };
            if (line.Length > 0)
                shapes.Add(new TextShape(text.Ink, x, y + (text.Size * TypeSize.Ascent), line, _anchor) { OwnSize = text.Size });
            y += PitchOf(text);
        }

        return new PaperPart
        {
            Tag = isHeader ? PaperTag.HeaderCell : PaperTag.Cell,
            Bounds = box,
            Shapes = shapes.ToImmutable(),
            Alternative = _cell.SignWords,
        };
    }

    private static double PitchOf(TableText text) => text.Size * TypeSize.Leading;
}
