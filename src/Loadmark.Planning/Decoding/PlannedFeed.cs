using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>A feed whose loads and outlets are still to be named.</summary>
/// <param name="Source">What it takes from.</param>
/// <param name="Lead">The id of its lead; null for a plain straight one.</param>
/// <param name="Loads">The places of its loads in the rig, ascending.</param>
internal sealed record PlannedFeed(Source Source, string? Lead, List<int> Loads);
