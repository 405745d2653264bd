namespace Loadmark.Web.Views;

/// <summary>How much one page may ask of the machine.</summary>
public sealed record PageLimits
{
    /// <summary>The longest that a solve looks for something better.</summary>
    public TimeSpan SolveTime { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>How many solves run at once over all pages; others wait.</summary>
    public int SolvesAtOnce { get; init; } = 2;

    /// <summary>The largest backup that is taken from a browser, in bytes: 1 GB.</summary>
    public long LargestBackup { get; init; } = 1_000_000_000;
}
