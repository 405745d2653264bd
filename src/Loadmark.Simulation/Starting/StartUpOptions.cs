namespace Loadmark.Simulation.Starting;

/// <summary>How the first seconds after switch-on are computed.</summary>
public sealed record StartUpOptions
{
    /// <summary>The time that is computed at least, s, where nothing else is asked for.</summary>
    public const double CommonSeconds = 3;

    /// <summary>How long, over 0 s; null: three of the slowest starts, five time constants of heaters, and at least 3 s.</summary>
    public Seconds? Duration { get; init; }

    /// <summary>From when on what repeats is not computed again but told as it was, s; infinite: all is computed.</summary>
    public double RepeatsAfter { get; init; } = CommonSeconds;

    /// <summary>The distance of the evenly spaced points of the waveforms, beside those at events; over 0 s.</summary>
    public Seconds Spacing { get; init; } = new(0.005m);
}
