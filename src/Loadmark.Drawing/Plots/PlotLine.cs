using System.Collections.Immutable;

namespace Loadmark.Drawing.Plots;

/// <summary>A line of a plot.</summary>
/// <param name="Name">What it is of: an outlet or a load.</param>
/// <param name="Values">The line's points, from left to right.</param>
/// <param name="IsStep">Whether each value holds until the next, rather than being joined to it.</param>
public sealed record PlotLine(string Name, ImmutableArray<PlotValue> Values, bool IsStep = false)
{
    /// <summary>The line's value at a place: the step's, or between its neighbours; null outside of the line.</summary>
    public double? At(double x)
    {
        var (low, high) = (0, Values.Length - 1);
        if (high < 0 || !(x >= Values[0].X && x <= Values[high].X))
            return null;

        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (Values[middle].X <= x)
                low = middle;
            else
                high = middle - 1;
        }

        var here = Values[low];
        if (IsStep || low + 1 == Values.Length || Values[low + 1].X <= here.X)
            return double.IsFinite(here.Y) ? here.Y : null;
        var next = Values[low + 1];
        var value = here.Y + ((next.Y - here.Y) * (x - here.X) / (next.X - here.X));
        return double.IsFinite(value) ? value : null;
    }
}
