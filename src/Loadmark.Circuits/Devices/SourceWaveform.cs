namespace Loadmark.Circuits.Devices;

/// <summary>A value over time.</summary>
public abstract record SourceWaveform
{
    /// <summary>The value at a time; at a jump, the value after it.</summary>
    /// <param name="seconds">Time, s. Before 0 the value at 0 holds.</param>
    public abstract double At(double seconds);

    /// <summary>The next time after a given one at which the value bends or jumps; infinite where there is none.</summary>
    /// <param name="seconds">Time, s.</param>
    public abstract double NextCorner(double seconds);

    /// <summary>The longest step that still sees the shape between corners, s; infinite for straight lines.</summary>
    public virtual double LongestStep => double.PositiveInfinity;

    /// <summary>The numbers that must be finite.</summary>
    internal abstract IEnumerable<double> Figures { get; }

    /// <summary>Whether the shape makes sense beyond being finite.</summary>
    internal virtual bool IsWellFormed => true;
}
