using Loadmark.Planning;
using Loadmark.Planning.Tests.Oracle;
using Loadmark.Planning.Tests.Oracle.Naive;

namespace Loadmark.Bench;

/// <summary>One rig planned.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Milliseconds">How long it took.</param>
/// <param name="Naive">What the naive model found; null where it was not asked.</param>
/// <param name="NaiveMilliseconds">How long that took.</param>
/// <param name="FirstFit">The levels of the first-fit wiring; null where it was not tried.</param>
internal sealed record PlanningRun(PlanResult Plan, double Milliseconds, NaiveAnswer? Naive, double NaiveMilliseconds, decimal[]? FirstFit)
{
    /// <summary>The first level that is not proven; null when all are.</summary>
    public string? Open => Plan.Objective.Items.FirstOrDefault(level => !level.IsProven)?.Name;

    /// <summary>Whether every load is fed.</summary>
    public bool IsWhole => Plan.Unfed.Count == 0;

    /// <summary>The plan's levels compared with the naive model's: below zero where the plan is better.</summary>
    public int AgainstNaive => Naive?.Vector is { } other ? Levels.Compare(Levels.Of(Plan.Rig), other) : Naive is null ? 0 : -1;

    /// <summary>The first level in which the first-fit wiring is worse; null where it is as good.</summary>
    public string? FirstFitWorseIn
    {
        get
        {
            var own = Levels.Of(Plan.Rig);
            for (var level = 0; FirstFit is { } other && level < own.Length; level++)
            {
                if (own[level] != other[level])
                    return Plan.Objective[level].Name;
            }

            return null;
        }
    }
}
