namespace Loadmark.Simulation.Settling;

/// <summary>How the steady state is sought.</summary>
public sealed record SettleOptions
{
    /// <summary>The most iterations of one Newton search, 1 or more.</summary>
    public int IterationLimit { get; init; } = 60;
}
