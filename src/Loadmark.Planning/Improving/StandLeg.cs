using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Improving;

/// <summary>One outlet (or pair side by side) that a feed stands on.</summary>
/// <param name="Part">The outlet and its setting.</param>
/// <param name="Limit">What it can give; null when nothing tells.</param>
/// <param name="Draws">What the loads count against that; null with it.</param>
internal sealed record StandLeg(SourcePart Part, SourceLimit? Limit, LegDraws? Draws);
