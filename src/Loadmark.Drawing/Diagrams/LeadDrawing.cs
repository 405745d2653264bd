using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>
/// Draws leads as what they are: a straight line; a chain's tail and pitches with a tap to each load; a reversal; outlets joined in series
/// or side by side.
/// </summary>
internal sealed class LeadDrawing
{
    private const double MostTrackPitch = 12;

    private readonly DiagramModel _view;
    private readonly DiagramLayout _layout;
    private readonly DiagramMeasures _measures;
    private readonly HashSet<string> _keys = new(StringComparer.Ordinal);

    private LeadDrawing(DiagramModel view, DiagramLayout layout)
    {
        _view = view;
        _layout = layout;
        _measures = layout.Measures;
    }

    /// <summary>Draws all leads; those that pass others last, so that they pass above.</summary>
    public static void Draw(DiagramModel view, DiagramLayout layout, List<SceneGroup> groups)
    {
        var drawing = new LeadDrawing(view, layout);
        var wander = new List<FeedRows>();
        for (var outlet = view.Part.FirstOutlet; outlet < view.Part.EndOutlet; outlet++)
        {
            foreach (var feed in view.Rows.FeedsAt[outlet])
            {
                if (feed.Wanders)
                    wander.Add(feed);
                else
                    groups.Add(drawing.Of(feed, 0));
            }
        }

        var (tracks, count) = LeadTracks.Of([.. wander.Select(drawing.IntervalOf)]);
        var pitch = Math.Min(MostTrackPitch, drawing._measures.TrackWidth / Math.Max(1, count));
        for (var index = 0; index < wander.Count; index++)
            groups.Add(drawing.Of(wander[index], drawing._measures.TrackX + (tracks[index] * pitch)));
    }

    private (double From, double To) IntervalOf(FeedRows rows)
    {
        var (from, to) = (double.MaxValue, double.MinValue);
        var home = rows.Feed.Outlets.Min(static outlet => outlet.Index);
        var others = rows.Feed.Outlets.Where(outlet => outlet.Index != home && _view.Part.HasOutlet(outlet.Index))
            .Select(outlet => _layout.Outlets[outlet.Index].Middle.Y);
        foreach (var y in others.Concat(rows.Elsewhere.Where(_view.Shows).Select(EntryY)).Append(EntryY(rows)))
            (from, to) = (Math.Min(from, y), Math.Max(to, y));
        return (from, to);
    }

    private SceneGroup Of(FeedRows rows, double trackX)
    {
        var lead = rows.Feed.Lead;
        var shapes = new List<Shape>();
        if (rows.Wanders)
            AddWandering(shapes, rows, trackX);
        AddRun(shapes, rows);
        AddLabel(shapes, rows);

        var worst = lead is null ? null : _view.WorstOf(lead.Id);
        var key = $"lead {rows.Feed.OutletNames}";
        return new SceneGroup
        {
            Key = _keys.Add(key) ? key : $"{key}, feed {rows.Feed.Index + 1}",
            Kind = SubjectKind.Lead,
            Subject = lead?.Id ?? "",
            Title = Sentences.OfLead(_view, rows),
            Severity = worst,
            Shapes = [.. shapes],
            Bounds = BoundsOf(shapes),
        };
    }

    /// <summary>The height at which a feed's lead sets out for its loads.</summary>
    private double EntryY(FeedRows rows)
    {
        if (_measures.IsNarrow)
            return _layout.LabelY[rows.Feed.Index] + (rows.Wanders ? 13 : 0);
        return rows.Here.IsEmpty ? HomeOf(rows).Middle.Y : _layout.Loads[rows.Here[0].Index].Middle.Y;
    }

    /// <summary>The height at which a second feed comes to a load, beside the first.</summary>
    private double EntryY(Core.Ratings.WiredLoad load) => _layout.Loads[load.Index].Middle.Y + 9;

    private Box HomeOf(FeedRows rows) => _layout.Outlets[rows.Feed.Outlets.Min(static outlet => outlet.Index)];

    /// <summary>From the outlet to the loads beside it.</summary>
    private void AddRun(List<Shape> shapes, FeedRows rows)
    {
        var home = HomeOf(rows);
        if (rows.Here.IsEmpty)
        {
            if (!_measures.IsNarrow)
                return;
            AddLine(shapes, new(_measures.TrunkX, home.Bottom), new(_measures.TrunkX, EntryY(rows)));
            return;
        }

        var entry = _layout.Loads[rows.Here[0].Index].Middle.Y;
        var last = _layout.Loads[rows.Here[^1].Index].Middle.Y;
        var trunk = _measures.TrunkX;
        if (_measures.IsNarrow)
        {
            AddLine(shapes, new(trunk, home.Bottom), new(trunk, last));
        }
        else
        {
            var isSimple = rows.Here.Length == 1 && !rows.IsChain;
            if (entry == home.Middle.Y)
                AddLine(shapes, new(home.Right, entry), new(isSimple ? _measures.LoadX : trunk, entry));
            else
                AddLine(
                    shapes,
                    new(home.Right, home.Middle.Y),
                    new(home.Right + 7, home.Middle.Y),
                    new(home.Right + 7, entry),
                    new(isSimple ? _measures.LoadX : trunk, entry));
            shapes.Add(new RectShape(Ink.LeadPlug, new Box(home.Right, home.Middle.Y - 2.5, 4, 5)));
            if (!isSimple)
                AddLine(shapes, new(trunk, entry), new(trunk, last));
        }

        foreach (var load in rows.Here)
        {
            var y = _layout.Loads[load.Index].Middle.Y;
            if (_measures.IsNarrow || rows.Here.Length > 1 || rows.IsChain)
                AddLine(shapes, new(trunk, y), new(_measures.LoadX, y));
            if (rows.IsChain)
                shapes.Add(new CircleShape(Ink.LeadPlug, new(trunk, y), 3));
            shapes.Add(new RectShape(Ink.LeadPlug, new Box(_measures.LoadX - 4, y - 2.5, 4, 5)));
        }

        if (rows.FreePlugs > 0)
        {
            AddLine(shapes, new(trunk, last), new(trunk, last + 9));
            shapes.Add(new CircleShape(Ink.LeadSpecial, new(trunk, last + 11.5), 2.6));
        }
    }

    /// <summary>Up and down past other rows: from the other outlets of a joint, and to loads that stand elsewhere.</summary>
    private void AddWandering(List<Shape> shapes, FeedRows rows, double trackX)
    {
        var entry = EntryY(rows);
        var (from, to) = IntervalOf(rows);
        shapes.Add(new LineShape(Ink.Halo, new(trackX, from), new(trackX, to)));
        AddLine(shapes, new(trackX, from), new(trackX, to));
        if (_measures.IsNarrow)
            AddLine(shapes, new(trackX, entry), new(_measures.TrunkX, entry));
        else if (rows.Here.IsEmpty)
        {
            AddLine(shapes, new(HomeOf(rows).Right, entry), new(trackX, entry));
            shapes.Add(new RectShape(Ink.LeadPlug, new Box(HomeOf(rows).Right, entry - 2.5, 4, 5)));
        }

        shapes.Add(new CircleShape(Ink.LeadPlug, new(trackX, entry), 2.6));

        var home = rows.Feed.Outlets.Min(static outlet => outlet.Index);
        var before = entry;
        foreach (var outlet in rows.Feed.Outlets.OrderBy(static outlet => outlet.Index))
        {
            if (outlet.Index == home || !_view.Part.HasOutlet(outlet.Index))
                continue;
            var box = _layout.Outlets[outlet.Index];
            var y = box.Middle.Y;
            AddLine(shapes, new(box.Right, y), new(trackX, y));
            shapes.Add(new RectShape(Ink.LeadPlug, new Box(box.Right, y - 2.5, 4, 5)));
            AddJoint(shapes, rows.Feed.Joined, new(trackX, (y + before) / 2));
            before = y;
        }

        foreach (var load in rows.Elsewhere.Where(_view.Shows))
        {
            var y = EntryY(load);
            var box = _layout.Loads[load.Index];
            if (!_measures.IsNarrow)
                shapes.Add(new LineShape(Ink.Halo, new(trackX + 4, y), new(box.X - 6, y)));
            AddLine(shapes, new(trackX, y), new(_measures.IsNarrow ? box.Right : box.X, y));
            shapes.Add(new RectShape(Ink.LeadPlug, new Box(_measures.IsNarrow ? box.Right : box.X - 4, y - 2.5, 4, 5)));
        }
    }

    /// <summary>A plus where voltages add, two bars where currents do.</summary>
    private static void AddJoint(List<Shape> shapes, Joint joint, Point at)
    {
        shapes.Add(new CircleShape(Ink.LeadSpecial, at, 6));
        if (joint == Joint.Series)
        {
            shapes.Add(new LineShape(Ink.LeadSpecial, new(at.X - 3, at.Y), new(at.X + 3, at.Y)));
            shapes.Add(new LineShape(Ink.LeadSpecial, new(at.X, at.Y - 3), new(at.X, at.Y + 3)));
            return;
        }

        foreach (var x in (ReadOnlySpan<double>)[at.X - 1.8, at.X + 1.8])
            shapes.Add(new LineShape(Ink.LeadSpecial, new(x, at.Y - 3.2), new(x, at.Y + 3.2)));
    }

    private void AddLabel(List<Shape> shapes, FeedRows rows)
    {
        var away = AwayText(_view, rows);
        if ((!rows.HasLabel && away.Length == 0) || (rows.Here.IsEmpty && !_measures.IsNarrow))
            return;

        var entry = _measures.IsNarrow ? _layout.LabelY[rows.Feed.Index] : EntryY(rows);
        var left = _measures.IsNarrow ? _measures.TrunkX + 14 : _measures.TrackX + _measures.TrackWidth;
        var right = _measures.IsNarrow ? _measures.LoadX + _measures.LoadWidth : _measures.TrunkX - 7;
        if (rows.Feed.Reverses)
        {
            var at = _measures.IsNarrow ? new Point(_measures.TrunkX, entry) : new Point(right - 9, entry);
            shapes.AddRange(Reversal(at));
            right -= _measures.IsNarrow ? 0 : 22;
        }

        var (pieces, below) = (PiecesOf(_view, rows), BelowOf(_view, rows));
        if (_measures.IsNarrow)
        {
            TextFlow.Draw(shapes, _view.Lay([.. below, .. pieces], right - left, 1), left, entry + 4, DiagramMeasures.LinePitch);
            return;
        }

        var above = _view.Lay(pieces, right - left, 1);
        TextFlow.Draw(shapes, above, left, entry - 6 - ((above.Count - 1) * DiagramMeasures.LinePitch), DiagramMeasures.LinePitch);
        TextFlow.Draw(shapes, _view.Lay(below, right - left, 1), left, entry + 13, DiagramMeasures.LinePitch);
    }

    /// <summary>The height that a row needs for what is said of the lead of a feed, px; 0 where the usual one will do.</summary>
    public static double RowOf(DiagramModel view, DiagramMeasures measures, FeedRows rows)
    {
        if (!view.Options.TellsAll)
            return 0;
        var space = measures.TrunkX - 7 - (rows.Feed.Reverses ? 22 : 0) - measures.TrackX - measures.TrackWidth;
        var above = HeightOf(view.Lay(PiecesOf(view, rows), space, 1), 10);
        var below = HeightOf(view.Lay(BelowOf(view, rows), space, 1), 8);
        return 2 * Math.Max(above, below);

        static double HeightOf(List<List<PlacedPiece>> lines, double from) =>
            lines.Count == 0 ? 0 : from + (lines.Count * DiagramMeasures.LinePitch);
    }

    /// <summary>What stands above a lead's line.</summary>
    private static List<TextPiece> PiecesOf(DiagramModel view, FeedRows rows)
    {
        var pieces = new List<TextPiece>();
        if (rows.Feed.Lead is { } lead)
        {
            pieces.Add(new TextPiece(SafeText.Clean(lead.Id), Ink.TextQuiet) { MayShrink = true });
            if (lead.ToBuy)
                pieces.Add(new TextPiece(ToBuyMark.Words, Ink.TextStrong));
            if (view.WorstOf(lead.Id) is { } worst)
                pieces.Add(new TextPiece(SignShapes.WordOf(worst), SignShapes.InkOf(worst)) { Sign = worst });
        }

        return pieces;
    }

    /// <summary>What stands below a lead's line.</summary>
    private static TextPiece[] BelowOf(DiagramModel view, FeedRows rows)
    {
        var joined = rows.Feed.Joined == Joint.None ? "" : $"{rows.Feed.VoltsText} in {rows.Feed.Joined.ToString().ToLowerInvariant()}";
        return
        [
            new TextPiece(joined, Ink.TextQuiet) { MayShrink = true },
            new TextPiece(AwayText(view, rows), Ink.TextStrong) { MayShrink = true },
        ];
    }

    /// <summary>What a lead joins that stands in another picture of the same rig; empty where all of it is in this one.</summary>
    private static string AwayText(DiagramModel view, FeedRows rows)
    {
        var away = rows.Feed.Outlets.Where(outlet => !view.Part.HasOutlet(outlet.Index)).Select(static outlet => outlet.Name)
            .Concat(rows.Elsewhere.Where(load => !view.Shows(load)).Select(static load => load.Id)).ToList();
        return away.Count == 0 ? "" : SafeText.Clean($"also on another page: {Phrases.List([.. away])}");
    }

    /// <summary>Two conductors that change sides.</summary>
    internal static IEnumerable<Shape> Reversal(Point at) =>
    [
        new RectShape(Ink.LeadSpecial, new Box(at.X - 9, at.Y - 6, 18, 12), 2),
        new LineShape(Ink.LeadSpecial, new(at.X - 5.5, at.Y - 3), new(at.X + 5.5, at.Y + 3)),
        new LineShape(Ink.LeadSpecial, new(at.X - 5.5, at.Y + 3), new(at.X + 5.5, at.Y - 3)),
    ];

    private static void AddLine(List<Shape> shapes, params ReadOnlySpan<Point> points) =>
        shapes.Add(new PathShape(Ink.LeadLine, [.. points]));

    private static Box BoundsOf(List<Shape> shapes)
    {
        Box? bounds = null;
        foreach (var shape in shapes)
        {
            if (shape is PathShape path)
            {
                for (var index = 1; index < path.Points.Length; index++)
                {
                    var stretch = Box.Between(path.Points[index - 1], path.Points[index]);
                    bounds = bounds?.Union(stretch) ?? stretch;
                }
            }
        }

        return (bounds ?? default).Grow(3);
    }
}
