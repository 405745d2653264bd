using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>What stands in a supply's box: its name, its mains input, and a gauge for each total that it prints.</summary>
internal sealed class SupplyFace
{
    private const double Padding = 9;
    private const double CellRow = 42;
    private const double WidestCell = 170;
    private const double GaugeWidth = GaugeShapes.Width + 12;

    private readonly List<List<PlacedPiece>> _lines;
    private readonly IReadOnlyList<TotalLoading> _totals;
    private readonly List<List<List<PlacedPiece>>> _totalTexts;
    private readonly double _cellRow;
    private readonly decimal _headroom;
    private readonly int _columns;
    private readonly double _cellWidth;

    private SupplyFace(DiagramModel view, List<List<PlacedPiece>> lines, IReadOnlyList<TotalLoading> totals, double width)
    {
        _lines = lines;
        _totals = totals;
        _headroom = view.Check.Headroom;
        var space = width - (2 * Padding);
        _columns = Math.Max(1, (int)(space / WidestCell));
        _cellWidth = space / _columns;
        _totalTexts = [.. totals.Select(total => view.Lay(PiecesOf(total), _cellWidth - GaugeWidth - 4, 2))];
        var most = _totalTexts.Select(static text => text.Count).DefaultIfEmpty().Max();
        _cellRow = CellRow + (Math.Max(0, most - 2) * DiagramMeasures.LinePitch);
        Height = 11 + (lines.Count * 14) + (((totals.Count + _columns - 1) / _columns) * _cellRow);
    }

    /// <summary>The height that the supply's face needs, px.</summary>
    public double Height { get; }

    /// <summary>Lays out a supply's face for a box of some width.</summary>
    public static SupplyFace Of(DiagramModel view, SupplyRating supply, double width)
    {
        var totals = view.TotalsOf(supply);
        var pieces =
            new List<TextPiece> { new(SafeText.Clean(supply.Supply.Id), Ink.TextStrong) { Role = TextRole.Body, MayShrink = true } };
        if (supply.Supply.ToBuy)
            pieces.Add(new TextPiece(ToBuyMark.Words, Ink.TextStrong));
        if (view.WorstOf(supply.Supply.Id) is { } worst)
            pieces.Add(new TextPiece(SignShapes.WordOf(worst), SignShapes.InkOf(worst)) { Sign = worst });
        if (supply.Supply.Name is { } name)
            pieces.Add(new TextPiece(SafeText.Clean(name), Ink.Text, 2) { MayShrink = true, BeginsLine = true });
        if (supply.Mains?.Volts is { } mains)
            pieces.Add(
                new TextPiece(
                    mains.IsSingle ? $"for {mains}" : $"{mains.Low.ToNumberString()} to {mains.High}",
                    Ink.TextQuiet,
                    3)
                { BeginsLine = true });
        if (supply.Supply.Outlets.Count == 0)
            pieces.Add(new TextPiece("no outlets", Ink.TextQuiet) { BeginsLine = true });
        return new SupplyFace(view, view.Lay(pieces, width - (2 * Padding), 5), totals, width);
    }

    /// <summary>Adds the shapes.</summary>
    /// <param name="shapes">Where they go.</param>
    /// <param name="at">The upper left corner of the box.</param>
    public void Draw(List<Shape> shapes, Point at)
    {
        TextFlow.Draw(shapes, _lines, at.X + Padding, at.Y + 18, 14);
        for (var index = 0; index < _totals.Count; index++)
        {
            var (down, across) = Math.DivRem(index, _columns);
            Draw(
                shapes,
                index,
                new Point(at.X + Padding + (across * _cellWidth), at.Y + 15 + (_lines.Count * 14) + (down * _cellRow)));
        }
    }

    private void Draw(List<Shape> shapes, int place, Point at)
    {
        // What is known to be drawn may be past the limit whatever the rest is.
        var total = _totals[place];
        var tells = total.IsWhole || AmountText.ValueOf(total.Run) > AmountText.ValueOf(total.Limit);
        var gauge = Gauge.Of(
            AmountText.ValueOf(total.Limit), tells
                ? AmountText.ValueOf(total.Run)
                : null, tells ? AmountText.ValueOf(total.Start) : null, _headroom, startsOver: true);
        GaugeShapes.Add(shapes, new Point(at.X + 4, at.Y), gauge);
        TextFlow.Draw(shapes, _totalTexts[place], at.X + GaugeWidth, at.Y + 13, DiagramMeasures.LinePitch);
    }

    private static TextPiece[] PiecesOf(TotalLoading total)
    {
        var holder = total.Holder == $"{total.Supply} in all"
            ? "in all"
            : total.Holder.Replace($" of {total.Supply}", "", StringComparison.Ordinal);
        var run = total.IsWhole
            ? AmountText.Of(total)
            : $"over {AmountText.Of(total)}";
        return
        [
            new(run, Ink.TextFigure),
            new(SafeText.Clean(holder), Ink.TextQuiet, 1) { BeginsLine = true, MayShrink = true },
        ];
    }
}
