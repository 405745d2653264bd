namespace Loadmark.Meters.Instruments;

/// <summary>How to talk to an instrument.</summary>
public sealed record InstrumentOptions
{
    /// <summary>How long an answer may take, over zero; three seconds unless set.</summary>
    public TimeSpan Timeout { get; init; } = TimeSpan.FromSeconds(3);

    /// <summary>How many bytes an answer may have, over zero; 4,096 unless set.</summary>
    public int LongestLine { get; init; } = 4096;

    /// <summary>By which clock the time is told.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
