using Loadmark.Planning;

namespace Loadmark.Bench;

/// <summary>One rig planned.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Milliseconds">How long it took.</param>
internal sealed record PlanningRun(PlanResult Plan, double Milliseconds)
{
    /// <summary>The first level that is not proven; null when all are.</summary>
    public string? Open => Plan.Objective.Items.FirstOrDefault(level => !level.IsProven)?.Name;
}
