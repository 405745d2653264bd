using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Why a plan does not feed everything, and what would mend it.</summary>
/// <param name="Reasons">Small sets of loads that cannot hold together; each was seen to fail, and to hold with one load less.</param>
/// <param name="Changes">Changes after which everything is fed, smallest first; each was planned again and seen to work.</param>
public sealed record PlanExplanation(ValueList<Reason> Reasons, ValueList<PlanChange> Changes);
