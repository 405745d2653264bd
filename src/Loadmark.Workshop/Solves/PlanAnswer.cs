using Loadmark.Core.Rigs;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;

namespace Loadmark.Workshop.Solves;

/// <summary>A plan with the rig it was made for.</summary>
/// <param name="Before">The rig when it was asked for.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Explanation">What stands in the way of what it leaves dark.</param>
/// <param name="What">What taking it does, for the undo button.</param>
public sealed record PlanAnswer(Rig Before, PlanResult Plan, PlanExplanation Explanation, string What)
{
    /// <summary>Whether the rig has changed since in something other than by taking the plan.</summary>
    /// <param name="now">The rig as it is.</param>
    public bool IsStale(Rig now) => now != Before && now != Plan.Rig;
}
