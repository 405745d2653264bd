using System.Collections.Immutable;

namespace Loadmark.Circuits.Devices;

/// <summary>Straight lines between points; the first value before them, the last value after them.</summary>
/// <param name="Points">At least one point, times ascending strictly (s), values in the unit of the source.</param>
public sealed record PiecewiseLinearWaveform(ImmutableArray<(double Seconds, double Value)> Points) : SourceWaveform
{
    internal override IEnumerable<double> Figures => Points.SelectMany(point => new[] { point.Seconds, point.Value });

    internal override bool IsWellFormed =>
        Points.Length > 0 && Points.Zip(Points.Skip(1), (one, next) => one.Seconds < next.Seconds).All(ascends => ascends);

    /// <inheritdoc/>
    public override double At(double seconds)
    {
        var points = Points;
        if (seconds <= points[0].Seconds)
            return points[0].Value;
        for (var index = 1; index < points.Length; index++)
        {
            if (seconds >= points[index].Seconds)
                continue;
            var (start, from) = points[index - 1];
            var (end, to) = points[index];
            return from + ((to - from) * (seconds - start) / (end - start));
        }

        return points[^1].Value;
    }

    /// <inheritdoc/>
    public override double NextCorner(double seconds)
    {
        foreach (var point in Points)
        {
            if (point.Seconds > seconds)
                return point.Seconds;
        }

        return double.PositiveInfinity;
    }
}
