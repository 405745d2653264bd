namespace Loadmark.Core.Readings;

/// <summary>One reading of what a load draws.</summary>
public sealed record DrawReading
{
    /// <summary>The current that was measured: running or starting.</summary>
    public DrawKind Kind { get; init; }

    /// <summary>What the meter showed; zero or more.</summary>
    public required Amps Current { get; init; }

    /// <summary>How long the starting current lasted; null when it was not timed, and of a running current.</summary>
    public Seconds? Duration { get; init; }

    /// <summary>How far the meter may be off; null when that is not known.</summary>
    public MeterAccuracy? Meter { get; init; }

    /// <summary>When the reading was taken (UTC).</summary>
    public required DateTimeOffset Taken { get; init; }

    /// <summary>What whoever took the reading has to say of it; null for nothing.</summary>
    public string? Note { get; init; }
}
