using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>One outlet (or pair side by side) of a feed's site.</summary>
/// <param name="Part">The outlet and its setting.</param>
/// <param name="Limit">What it can give; null when nothing tells.</param>
/// <param name="Draws">What the loads count against that; null with it.</param>
internal sealed record SiteOutlet(SourcePart Part, SourceLimit? Limit, LegDraws? Draws);
