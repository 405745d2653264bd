using Loadmark.Core.Rigs;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;

namespace Loadmark.Answers;

/// <summary>A plan, and why it is no better.</summary>
/// <param name="Result">The plan.</param>
/// <param name="Explanation">Why it is no better; empty where nobody asked.</param>
/// <param name="Moves">What changes against the present wiring; empty where there is none.</param>
internal sealed record ExplainedPlan(PlanResult Result, PlanExplanation Explanation, ValueList<LoadMove> Moves);
