namespace Loadmark.Planning.Cutting;

/// <summary>What is known of a way of cutting.</summary>
public enum CuttingStatus
{
    /// <summary>No other way is better, on any level of the objective: proven.</summary>
    Optimal,

    /// <summary>Everything in it can be cut so; whether another way is better was not proven, or not asked.</summary>
    Feasible,
}
