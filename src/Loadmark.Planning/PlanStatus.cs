namespace Loadmark.Planning;

/// <summary>What is known of a plan.</summary>
public enum PlanStatus
{
    /// <summary>Every load is fed, and no wiring is better: every level of the objective is proven.</summary>
    Optimal,

    /// <summary>Every load is fed; whether a better wiring exists was not proven within the time.</summary>
    Feasible,

    /// <summary>Not every load can be fed, which is proven; the plan feeds as many as can be.</summary>
    Infeasible,

    /// <summary>Neither a wiring for every load nor a proof that there is none was found within the time.</summary>
    Unknown,
}
