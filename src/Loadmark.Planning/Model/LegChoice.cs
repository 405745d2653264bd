using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>Which outlets stand in one place of a feed.</summary>
/// <param name="Leg">The outlets to choose from.</param>
/// <param name="Uses">For each whether it is the one.</param>
internal sealed record LegChoice(FeedLeg Leg, List<IntVar> Uses);
