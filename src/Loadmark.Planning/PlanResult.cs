using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Objective;

namespace Loadmark.Planning;

/// <summary>A planned wiring with what is proven about it.</summary>
public sealed record PlanResult
{
    /// <summary>What is known of the plan, see <see cref="PlanStatus"/>.</summary>
    public required PlanStatus Status { get; init; }

    /// <summary>The rig with the planned wiring in place of its own; loads that are not fed are on no feed.</summary>
    public required Rig Rig { get; init; }

    /// <summary>The tags of the loads that are not fed, in the order of the file.</summary>
    public required ValueList<string> Unfed { get; init; }

    /// <summary>The levels of the objective, in their order.</summary>
    public required ValueList<ObjectiveLevel> Objective { get; init; }

    /// <summary>What the rules say of the planned rig.</summary>
    public required CheckResult Check { get; init; }
}
