using Loadmark.Core.Display;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Draws the key: what the signs in this picture mean, and only those that are in it.</summary>
internal sealed class KeyDrawing
{
    private const double RowHeight = 36;
    private const double SignWidth = 30;
    private const double Gap = 16;

    private readonly List<Shape> _shapes = [];
    private readonly double _left;
    private readonly double _right;
    private double _x;
    private double _y;

    private KeyDrawing(DiagramMeasures measures, double top)
    {
        _left = measures.IsNarrow ? 8 : DiagramMeasures.Margin;
        _right = measures.Width - _left;
        _x = _left;
        _y = top + (RowHeight / 2) + 4;
    }

    /// <summary>Draws the key.</summary>
    /// <returns>The key, and where it ends.</returns>
    public static (SceneGroup Key, double Bottom) Draw(DiagramModel view, DiagramMeasures measures, double top)
    {
        var key = new KeyDrawing(measures, top);
        key._shapes.Add(new LineShape(Ink.Hair, new(key._left, top), new(key._right, top)));
        key.AddItems(view);
        var bottom = key._y + (RowHeight / 2);
        return (new SceneGroup
        {
            Key = "key",
            Kind = SubjectKind.Decoration,
            Shapes = [.. key._shapes],
            Bounds = new Box(key._left, top, key._right - key._left, bottom - top),
        }, bottom);
    }

    private void AddItems(DiagramModel view)
    {
        var headroom = view.Check.Headroom;
        var outlets = view.Rig.Outlets.Items;
        if (outlets.Any(outlet => view.ReadingOf(outlet) is not null))
            AddGauge("reading", new Gauge(0.55m, null, 0, HasLimit: false, IsReading: true));
        else
            AddGauge("running draw", new Gauge(0.55m, null, 0, HasLimit: false));
        Add("starting draw", static at => [new LineShape(Ink.GaugeStart, new(at.X - 11, at.Y), new(at.X + 11, at.Y))]);
        Add("limit", static at => [new LineShape(Ink.GaugeLimit, new(at.X - 11, at.Y), new(at.X + 11, at.Y))]);
        if (headroom > 0)
            Add(
                $"{FigureDisplay.Percent(headroom)} headroom begins",
                static at =>
                    [
                        new LineShape(Ink.GaugeVessel, new(at.X, at.Y - 8), new(at.X, at.Y + 8)),
                        new LineShape(Ink.GaugeHeadroom, new(at.X - 3, at.Y), new(at.X + 3, at.Y)),
                    ]);
        if (view.Check.Outlets.Items.Any(static outlet => outlet.StartsOver))
            Add("starting past the limit", static at => [new LineShape(Ink.GaugeStartOver, new(at.X - 11, at.Y), new(at.X + 11, at.Y))]);
        if (view.Check.Outlets.Items.Any(static outlet => outlet.RunsOver))
            AddGauge("past the limit", new Gauge(1.4m, null, 0, HasLimit: true));
        if (view.Check.Outlets.Items.Any(static outlet => outlet.Run is null || outlet.Limit is not { Value: > 0 }))
            AddGauge("not known", new Gauge(null, null, 0, HasLimit: false));
        if (outlets.Any(static outlet => outlet.Rating.Isolated.Value))
            Add(
                "isolated",
                static at =>
                    [
                        .. Stub(at, 2),
                        new LineShape(Ink.LeadLine, new(at.X - 2, at.Y - 5), new(at.X - 2, at.Y + 5)),
                        new LineShape(Ink.LeadLine, new(at.X + 2, at.Y - 5), new(at.X + 2, at.Y + 5)),
                    ]);
        if (outlets.Any(static outlet => OutletDrawing.SharesReturn(outlet)))
            Add(
                "shared return",
                static at =>
                    [
                        new LineShape(Ink.ReturnRail, new(at.X, at.Y - 8), new(at.X, at.Y + 8)),
                        .. Stub(at, 0),
                        new CircleShape(Ink.LeadPlug, at, 3),
                    ]);
        if (view.Rig.Feeds.Items.Any(static feed => feed.Lead is { Type: LeadType.DaisyChain }))
            Add(
                "plug of a chain",
                static at =>
                    [
                        new LineShape(Ink.LeadLine, new(at.X, at.Y - 8), new(at.X, at.Y + 8)),
                        new LineShape(Ink.LeadLine, at, new(at.X + 10, at.Y)),
                        new CircleShape(Ink.LeadPlug, at, 3),
                    ]);
        if (view.Rig.Feeds.Items.Any(static feed => feed.Reverses))
            Add("reverses polarity", static at => [.. Stub(at, 9), .. LeadDrawing.Reversal(at)]);
        if (view.Check.Outlets.Items.Any(static outlet => outlet.DrawIsAssumed))
            Add("assumed", static at => [new TextShape(Ink.TextStrong, at.X, at.Y + 4, "~", TextAnchor.Middle)]);
    }

    private static Shape[] Stub(Point at, double gap) =>
        [
            new LineShape(Ink.LeadLine, new(at.X - 12, at.Y), new(at.X - gap, at.Y)),
            new LineShape(Ink.LeadLine, new(at.X + gap, at.Y), new(at.X + 12, at.Y)),
        ];

    private void AddGauge(string word, Gauge gauge) => Add(word, at =>
    {
        var shapes = new List<Shape>();
        GaugeShapes.Add(shapes, new Point(at.X - (GaugeShapes.Width / 2), at.Y - (GaugeShapes.Height / 2)), gauge);
        return shapes;
    });

    private void Add(string word, Func<Point, IEnumerable<Shape>> sign)
    {
        var width = SignWidth + TextWidth.Of(word, TextRole.Small, isBold: false);
        if (_x > _left && _x + width > _right)
        {
            _x = _left;
            _y += RowHeight;
        }

        _shapes.AddRange(sign(new Point(_x + 12, _y)));
        _shapes.Add(new TextShape(Ink.TextQuiet, _x + SignWidth, _y + 4, word, TextAnchor.Start, TextRole.Small));
        _x += width + Gap;
    }
}
