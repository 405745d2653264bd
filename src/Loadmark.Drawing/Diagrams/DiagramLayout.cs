using Loadmark.Core.Ratings;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

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
        Faces = new SupplyFace?[Supplies.Length];
        LoadTexts = new List<List<PlacedPiece>>[Loads.Length];
        OutletTexts = new List<List<PlacedPiece>>[Outlets.Length];
    }

    public DiagramMeasures Measures { get; }

    public Box[] Supplies { get; }

    /// <summary>What stands in each supply's box; null for one that is not in the picture.</summary>
    public SupplyFace?[] Faces { get; }

    public Box[] Outlets { get; }

    public Box[] Loads { get; }

    /// <summary>What each load's box says, line by line.</summary>
    public List<List<PlacedPiece>>[] LoadTexts { get; }

    /// <summary>What each outlet's box says, line by line.</summary>
    public List<List<PlacedPiece>>[] OutletTexts { get; }

    /// <summary>Where the supply that stands last begins; null where none is in the picture.</summary>
    public double? LastSupplyY { get; private set; }

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
            var end = outlet + supply.Supply.Outlets.Count;
            if (end > outlet ? end <= _view.Part.FirstOutlet || outlet >= _view.Part.EndOutlet : !ShowsEmpty(outlet))
            {
                outlet = end;
                continue;
            }

            var face = SupplyFace.Of(_view, supply, Measures.SupplyWidth);
            Faces[index] = face;
            var top = _y;
            if (Measures.IsNarrow)
            {
                Supplies[index] = new Box(Measures.SupplyX, top, Measures.SupplyWidth, face.Height);
                _y += face.Height + RowGap;
            }

            for (; outlet < end; outlet++)
            {
                if (_view.Part.HasOutlet(outlet))
                    Place(_view.Rig.Outlets[outlet]);
            }

            if (!Measures.IsNarrow)
            {
                _y = Math.Max(_y, top + face.Height + RowGap);
                Supplies[index] = new Box(Measures.SupplyX, top + (RowGap / 2), Measures.SupplyWidth, _y - top - RowGap);
            }

            LastSupplyY = Supplies[index].Y;
            _y += SupplyGap;
        }
    }

    /// <summary>Whether a supply without outlets is in the picture: with the outlets before it, or at the beginning.</summary>
    private bool ShowsEmpty(int outlet) =>
        _view.Part.HasOutlet(outlet - 1) || (outlet == 0 && _view.Part.FirstOutlet == 0);

    private void Place(WiredOutlet outlet)
    {
        var text = OutletTexts[outlet.Index] = OutletDrawing.Lay(_view, Measures, outlet);
        var row = Math.Max(Measures.IsNarrow ? Measures.OutletRow : Measures.Row, DiagramMeasures.RowOf(text.Count));
        if (!Measures.IsNarrow)
            row = Math.Max(row, FirstRowOf(outlet));
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
                var laid = LoadTexts[load.Index] ??= LoadDrawing.Lay(_view, Measures, load, Measures.LoadWidth);
                var height = Math.Max(
                    Measures.IsNarrow ? Measures.LoadRow : isEmpty ? row : Measures.Row, DiagramMeasures.RowOf(laid.Count));
                if (!Measures.IsNarrow && load == feed.Here[0])
                    height = Math.Max(height, LeadDrawing.RowOf(_view, Measures, feed));
                isEmpty = false;
                Loads[load.Index] = new Box(Measures.LoadX, _y + (RowGap / 2), Measures.LoadWidth, height - RowGap);
                _y += height;
            }
        }

        if (Measures.IsNarrow)
            _y += isEmpty ? 0 : 6;
        else if (isEmpty)
            _y += row;
    }

    /// <summary>
    /// The height of the row that an outlet and the first load on it share, with room for what is said of the lead between them.
    /// </summary>
    private double FirstRowOf(WiredOutlet outlet)
    {
        var row = 0.0;
        foreach (var feed in _view.Rows.FeedsAt[outlet.Index])
        {
            row = Math.Max(row, LeadDrawing.RowOf(_view, Measures, feed));
            if (feed.Here is not [var first, ..])
                continue;
            var laid = LoadTexts[first.Index] ??= LoadDrawing.Lay(_view, Measures, first, Measures.LoadWidth);
            row = Math.Max(row, DiagramMeasures.RowOf(laid.Count));
        }

        return row;
    }

    /// <summary>What is not fed stands in a grid of its own.</summary>
    private void PlaceUnfed()
    {
        var unfed = _view.Rows.Unfed[_view.Part.FirstUnfed.._view.Part.EndUnfed];
        if (unfed.IsEmpty)
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
        foreach (var cards in unfed.Chunk(columns))
        {
            var row = Measures.LoadRow;
            foreach (var load in cards)
                row = Math.Max(row, DiagramMeasures.RowOf((LoadTexts[load.Index] = LoadDrawing.Lay(_view, Measures, load, width)).Count));
            for (var across = 0; across < cards.Length; across++)
                Loads[cards[across].Index] = new Box(left + (across * (width + gap)), _y + (RowGap / 2), width, row - RowGap);
            _y += row;
        }

        _y += SupplyGap;
    }
}
