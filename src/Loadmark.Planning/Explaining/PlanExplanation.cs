using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Why a plan does not feed everything, and what would mend it.</summary>
/// <param name="Reasons">
/// Small sets of loads that cannot hold together; each was seen to fail, and to hold with one load less. Every load that the plan leaves
/// dark is in at least one of them.
/// </param>
/// <param name="Dark">The loads that the plan leaves dark, in the order of the file, each with the outlet that it lacks.</param>
/// <param name="Changes">
/// Changes after which everything is fed, smallest first; each was planned again and seen to work, and the rules refuse nothing of it.
/// </param>
public sealed record PlanExplanation(ValueList<Reason> Reasons, ValueList<DarkLoad> Dark, ValueList<PlanChange> Changes)
{
    /// <summary>Where nobody asked why.</summary>
    public static PlanExplanation None { get; } = new([], [], []);
}
