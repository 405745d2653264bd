namespace Loadmark.Circuits.Devices;

/// <summary>SPICE's PULSE: up, hold, down, again and again.</summary>
/// <param name="Low">Value at rest, in the unit of its source.</param>
/// <param name="High">Value of the pulse.</param>
/// <param name="DelaySeconds">Time before the first pulse, s, 0 or more.</param>
/// <param name="RiseSeconds">Rise time, s, 0 or more (0 jumps).</param>
/// <param name="FallSeconds">Fall time, s, 0 or more (0 jumps).</param>
/// <param name="WidthSeconds">Time at the high value, s, 0 or more.</param>
/// <param name="PeriodSeconds">Time from pulse to pulse, s, at least the sum of the three; infinite for one pulse.</param>
public sealed record PulseWaveform(
    double Low, double High, double DelaySeconds, double RiseSeconds, double FallSeconds, double WidthSeconds,
    double PeriodSeconds) : SourceWaveform
{
    internal override IEnumerable<double> Figures => [Low, High, DelaySeconds, RiseSeconds, FallSeconds, WidthSeconds];

    internal override bool IsWellFormed =>
        DelaySeconds >= 0 && RiseSeconds >= 0 && FallSeconds >= 0 && WidthSeconds >= 0
        && PeriodSeconds > 0 && PeriodSeconds >= RiseSeconds + WidthSeconds + FallSeconds;

    /// <inheritdoc/>
    public override double At(double seconds)
    {
        if (seconds < DelaySeconds)
            return Low;

        // The same sums as for the corners, so that a corner is on the side that it should be on.
        var start = Start(seconds);
        var corner = start + RiseSeconds;
        if (seconds < corner)
            return Low + ((High - Low) * (seconds - start) / RiseSeconds);
        var end = corner + WidthSeconds;
        if (seconds < end)
            return High;
        return seconds < end + FallSeconds ? High + ((Low - High) * (seconds - end) / FallSeconds) : Low;
    }

    /// <inheritdoc/>
    public override double NextCorner(double seconds)
    {
        if (seconds < DelaySeconds)
            return DelaySeconds;
        var start = Start(seconds);
        var corner = start + RiseSeconds;
        if (corner > seconds)
            return corner;
        corner += WidthSeconds;
        if (corner > seconds)
            return corner;
        corner += FallSeconds;
        return corner > seconds ? corner : start + PeriodSeconds;
    }

    /// <summary>The start of the pulse that a time belongs to.</summary>
    private double Start(double seconds)
    {
        if (double.IsInfinity(PeriodSeconds))
            return DelaySeconds;
        var count = Math.Floor((seconds - DelaySeconds) / PeriodSeconds);

        // A corner computed as delay + n·period must count as the start of pulse n, whatever the division made of it.
        return DelaySeconds + ((count + 1) * PeriodSeconds) <= seconds
            ? DelaySeconds + ((count + 1) * PeriodSeconds)
            : DelaySeconds + (count * PeriodSeconds);
    }
}
