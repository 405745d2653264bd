namespace Loadmark.Circuits.Analyses;

/// <summary>How a steady state is sought.</summary>
public sealed record OperatingPointOptions
{
    /// <summary>
    /// Whether loads below their drop-out voltage are switched off, the worst first, until the rest holds; otherwise all stay on.
    /// </summary>
    public bool DropsOut { get; init; } = true;

    /// <summary>The most iterations of one Newton search, 1 or more.</summary>
    public int IterationLimit { get; init; } = 60;

    /// <summary>
    /// The most work of one search, in equations evaluated (see <see cref="Networks.Network.Work"/>), over 0; what was not found by then
    /// is not found.
    /// </summary>
    public long MostWork { get; init; } = long.MaxValue;
}
