namespace Loadmark.Simulation.Spreading;

/// <summary>How a rig is sampled.</summary>
public sealed record SpreadOptions
{
    /// <summary>The most samples that are taken: their figures are kept until the end.</summary>
    public const int MostSamples = 100_000;

    /// <summary>How many samples, 1 to <see cref="MostSamples"/>.</summary>
    public int Samples { get; init; } = 1000;

    /// <summary>The seed of the random numbers. The same seed gives the same answer, on however many threads.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>On how many threads, 1 or more; null: one for each core.</summary>
    public int? Threads { get; init; }

    /// <summary>How far the figures may be from what the rig says.</summary>
    public SpreadWidths Widths { get; init; } = new();

    /// <summary>Who is told how far it has come, from any thread; null: nobody.</summary>
    public IProgress<SpreadProgress>? Progress { get; init; }
}
