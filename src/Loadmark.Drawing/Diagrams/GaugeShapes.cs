using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Diagrams;

/// <summary>
/// The mark gauge: a vessel open at the top, filled to the running draw, a dashed line at the starting draw, the mark at
/// the limit, a tick where the headroom begins. What runs past the limit spills over the brim.
/// </summary>
/// <remarks>
/// Rounding never tells a lie about the marks: a draw within the headroom stays below the tick, one beyond it is above
/// the tick, one at the limit ends at the mark, one over it passes the mark, and a draw above zero shows.
/// </remarks>
internal static class GaugeShapes
{
    /// <summary>The width of a vessel.</summary>
    public const double Width = 16;

    /// <summary>The height of a vessel.</summary>
    public const double Height = 30;

    /// <summary>How far the mark is above the ground of the vessel.</summary>
    internal const double Mark = 24;

    private const double Spill = 3;
    private const double Least = 1.2;

    /// <summary>Finer than any figure printed, coarser than the rounding of divisions.</summary>
    private const int Decimals = 12;

    /// <summary>Adds a gauge.</summary>
    /// <param name="shapes">Where it goes.</param>
    /// <param name="at">The upper left corner of its vessel.</param>
    /// <param name="gauge">What it shows.</param>
    public static void Add(List<Shape> shapes, Point at, Gauge gauge)
    {
        var (left, right, top, ground) = (at.X, at.X + Width, at.Y, at.Y + Height);
        var tick = Mark * (double)(1 - gauge.Headroom);
        var run = gauge.Run is { } running ? LevelOf(running, gauge.Headroom) : (double?)null;
        if (run is { } level)
        {
            var filled = Math.Min(level, Mark);
            if (filled > 0)
                shapes.Add(new RectShape(gauge.IsReading ? Ink.GaugeReading : Ink.GaugeRun, new Box(left, ground - filled, Width, filled)));
            if (level > Mark)
                AddSpill(shapes, left, top, ground - Mark);
        }

        shapes.Add(
            new PathShape(
                run is null ? Ink.GaugeOpen : Ink.GaugeVessel, [new(left, top), new(left, ground), new(right, ground), new(right, top)]));
        if (run is null)
            shapes.Add(new TextShape(Ink.TextStrong, left + (Width / 2), ground - 6, "?", TextAnchor.Middle));
        if (!gauge.HasLimit)
            return;

        if (gauge.Headroom > 0)
            shapes.Add(new LineShape(Ink.GaugeHeadroom, new(right - 3, ground - tick), new(right + 3, ground - tick)));
        shapes.Add(new LineShape(Ink.GaugeLimit, new(left - 3.5, ground - Mark), new(right + 3.5, ground - Mark)));
        if (gauge.Start is { } starting && starting > (gauge.Run ?? 0))
        {
            var y = ground - LevelOf(starting, gauge.Headroom);
            shapes.Add(
                new LineShape(
                    gauge.StartsOver && starting > 1 ? Ink.GaugeStartOver : Ink.GaugeStart, new(left - 3.5, y), new(right + 3.5, y)));
        }
    }

    /// <summary>How far above the ground a share of the limit stands.</summary>
    internal static double LevelOf(decimal share, decimal headroom)
    {
        share = Math.Round(share, Decimals);
        if (share <= 0)
            return 0;

        var level = (double)Math.Min(share, 2) * Mark;
        var tick = (double)(1 - headroom) * Mark;
        if (share > 1)
            return Math.Clamp(level, Mark + 2, Height);
        if (share == 1)
            return Mark;
        return share <= 1 - headroom
            ? Math.Max(Math.Min(level, share < 1 - headroom ? tick - 0.8 : tick), Math.Min(Least, tick))
            : Math.Clamp(level, tick + (Math.Min(1.6, Mark - tick) / 2), Mark - (Math.Min(1.6, Mark - tick) / 4));
    }

    private static void AddSpill(List<Shape> shapes, double left, double top, double mark)
    {
        var right = left + Width;
        shapes.Add(new PathShape(
            Ink.GaugeOver,
            [
                new(left, mark), new(left, top + 1.5), new(left - Spill, top + 5), new(left - Spill, top), new(left + 1, top - 2.5),
                new(left + (Width / 2), top - 3.5),
                new(right - 1, top - 2.5), new(right + Spill, top), new(right + Spill, top + 5), new(right, top + 1.5), new(right, mark),
            ],
            Closed: true));
    }
}
