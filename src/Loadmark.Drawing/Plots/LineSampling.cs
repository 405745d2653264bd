using System.Collections.Immutable;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Plots;

/// <summary>Turns the values of a line into what can be seen of it: within the plot, and no more points than pixels can show.</summary>
internal static class LineSampling
{
    /// <summary>The stretches of a line within a frame.</summary>
    /// <param name="values">The points in px, from left to right; what is no number breaks the line.</param>
    /// <param name="frame">The frame.</param>
    public static List<ImmutableArray<Point>> Clip(IEnumerable<Point> values, Box frame)
    {
        var stretches = new List<ImmutableArray<Point>>();
        var current = ImmutableArray.CreateBuilder<Point>();
        Point? before = null;
        foreach (var point in values)
        {
            if (!double.IsFinite(point.X) || !double.IsFinite(point.Y))
            {
                End();
                before = null;
                continue;
            }

            if (before is { } last)
                Join(last, point);
            before = point;
        }

        End();
        return stretches;

        void End()
        {
            if (current.Count > 1)
                stretches.Add(current.ToImmutable());
            current.Clear();
        }

        void Join(Point from, Point to)
        {
            if (Within(from, to, frame) is not var (first, last))
            {
                End();
                return;
            }

            if (current.Count == 0 || current[^1] != first)
            {
                End();
                current.Add(first);
            }

            current.Add(last);
        }
    }

    /// <summary>Keeps of each px to the right the first, the lowest, the highest and the last point: the picture stays the same.</summary>
    public static IEnumerable<Point> Thin(IEnumerable<Point> points)
    {
        var column = new List<Point>();
        var at = double.NaN;
        foreach (var point in points)
        {
            var here = Math.Floor(point.X);
            if (column.Count > 0 && (here != at || !double.IsFinite(point.Y)))
            {
                foreach (var kept in Extremes(column))
                    yield return kept;
                column.Clear();
            }

            at = here;
            if (double.IsFinite(point.Y))
                column.Add(point);
            else
                yield return point;
        }

        foreach (var kept in Extremes(column))
            yield return kept;
    }

    private static IEnumerable<Point> Extremes(List<Point> column)
    {
        if (column.Count <= 4)
            return column;

        var (low, high) = (0, 0);
        for (var index = 1; index < column.Count; index++)
        {
            low = column[index].Y > column[low].Y ? index : low;
            high = column[index].Y < column[high].Y ? index : high;
        }

        return new[] { 0, low, high, column.Count - 1 }.Order().Distinct().Select(index => column[index]);
    }

    /// <summary>The part of a stretch within a frame, after Liang and Barsky (from memory); null when there is none.</summary>
    private static (Point From, Point To)? Within(Point from, Point to, Box frame)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var (enter, leave) = (0.0, 1.0);
        foreach (var (p, q) in (ReadOnlySpan<(double, double)>)
        [
            (-dx, from.X - frame.X),
            (dx, frame.Right - from.X),
            (-dy, from.Y - frame.Y),
            (dy, frame.Bottom - from.Y),
        ])
        {
            if (p == 0 && q < 0)
                return null;
            if (p < 0)
                enter = Math.Max(enter, q / p);
            else if (p > 0)
                leave = Math.Min(leave, q / p);
        }

        if (enter > leave)
            return null;
        return (
            enter == 0 ? from : new Point(from.X + (enter * dx), from.Y + (enter * dy)),
            leave == 1 ? to : new Point(from.X + (leave * dx), from.Y + (leave * dy)));
    }
}
