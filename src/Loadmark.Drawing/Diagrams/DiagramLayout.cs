using Loadmark.Core.Ratings;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Where everything of a rig stands.</summary>
internal sealed class DiagramLayout
{
    /// <summary>The room above and below what stands in a row.</summary>
    private const double RowGap = 4;

    private const double SupplyGap = 14;
    private const double LabelRow = 20;

    /// <summary>A label with room below it for the line that joins other outlets.</summary>
    private const double WanderingRow = LabelRow + 8;

    private const double CardWidth = 236;

    private readonly DiagramModel _view;
    private double _y;

    private DiagramLayout(DiagramModel view, DiagramMeasures measures, double top)
    {
        _view = view;
        Measures = measures;
        _y = top;
        Supplies = new Box[view.Rig.Supplies.Count];
        Outlets = new Box[view.Rig.Outlets.Count];
        Loads = new Box[view.Rig.Loads.Count];
        LabelY = new double[view.Rig.Feeds.Count];
        Faces = new SupplyFace[Supplies.Length];
    }

    public DiagramMeasures Measures { get; }

    public Box[] Supplies { get; }

    /// <summary>What stands in each supply's box.</summary>
    public SupplyFace[] Faces { get; }

    public Box[] Outlets { get; }

    public Box[] Loads { get; }

    /// <summary>In a narrow diagram the middle of the row that a feed's label has, by the feed's place in the wiring.</summary>
    public double[] LabelY { get; }

    /// <summary>The baseline of the heading over what is not fed; null when everything is.</summary>
    public double? UnfedY { get; private set; }

    /// <summary>Where the rows end.</summary>
    public double Bottom => _y;

    /// <summary>Finds a place for everything.</summary>
    public static DiagramLayout Of(DiagramModel view, DiagramMeasures measures, double top)
    {
        var layout = new DiagramLayout(view, measures, top);
        layout.PlaceSupplies();
        layout.PlaceUnfed();
        return layout;
    }

    private void PlaceSupplies()
    {
        var outlet = 0;
        for (var index = 0; index < Supplies.Length; index++)
        {
            var supply = _view.Rig.Supplies[index];
            var face = SupplyFace.Of(_view, supply, Measures.SupplyWidth);
            Faces[index] = face;
            var top = _y;
            if (Measures.IsNarrow)
            {
                Supplies[index] = new Box(Measures.SupplyX, top, Measures.SupplyWidth, face.Height);
                _y += face.Height + RowGap;
            }

            for (var count = supply.Supply.Outlets.Count; count > 0; count--)
                Place(_view.Rig.Outlets[outlet++]);
            if (!Measures.IsNarrow)
            {
                _y = Math.Max(_y, top + face.Height + RowGap);
                Supplies[index] = new Box(Measures.SupplyX, top + (RowGap / 2), Measures.SupplyWidth, _y - top - RowGap);
            }

            _y += SupplyGap;
        }
    }

    private void Place(WiredOutlet outlet)
    {
        var row = Measures.IsNarrow ? Measures.OutletRow : Measures.Row;
        Outlets[outlet.Index] = new Box(Measures.OutletX, _y + (RowGap / 2), Measures.OutletWidth, row - RowGap);
        if (Measures.IsNarrow)
            _y += row;

        var isEmpty = true;
        foreach (var feed in _view.Rows.FeedsAt[outlet.Index])
        {
            if (Measures.IsNarrow && (feed.HasLabel || feed.Wanders))
            {
                LabelY[feed.Feed.Index] = _y + (LabelRow / 2);
                _y += feed.Wanders ? WanderingRow : LabelRow;
            }

            foreach (var load in feed.Here)
            {
                isEmpty = false;
                var height = Measures.IsNarrow ? Measures.LoadRow : row;
                Loads[load.Index] = new Box(Measures.LoadX, _y + (RowGap / 2), Measures.LoadWidth, height - RowGap);
                _y += height;
            }
        }

        if (Measures.IsNarrow)
            _y += isEmpty ? 0 : 6;
        else if (isEmpty)
            _y += row;
    }

    /// <summary>What is not fed stands in a grid of its own.</summary>
    private void PlaceUnfed()
    {
        if (_view.Rows.Unfed.IsEmpty)
            return;
        if (_view.Rig.Supplies.Count == 0)
            _y += SupplyGap + 12;

        UnfedY = _y + 16;
        _y += 28;
        const double gap = 8;
        var left = Measures.IsNarrow ? Measures.SupplyX : DiagramMeasures.Margin;
        var space = Measures.Width - left - (Measures.IsNarrow ? 8 : DiagramMeasures.Margin);
        var columns = Math.Max(1, (int)((space + gap) / (CardWidth + gap)));
        var width = ((space + gap) / columns) - gap;
        for (var index = 0; index < _view.Rows.Unfed.Length; index++)
        {
            var (down, across) = Math.DivRem(index, columns);
            Loads[_view.Rows.Unfed[index].Index] = new Box(
                left + (across * (width + gap)), _y + (down * Measures.LoadRow) + (RowGap / 2), width, Measures.LoadRow - RowGap);
        }

        _y += (((_view.Rows.Unfed.Length - 1) / columns) + 1) * Measures.LoadRow;
        _y += SupplyGap;
    }
}
