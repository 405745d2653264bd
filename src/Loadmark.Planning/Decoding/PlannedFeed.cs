using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>A feed whose outlets are still to be named.</summary>
/// <param name="Joined">How its outlets are joined.</param>
/// <param name="Parts">Its outlets and their settings, one or two.</param>
/// <param name="Lead">The id of its lead; null for a plain straight one.</param>
/// <param name="Loads">The places of its loads in the rig, ascending.</param>
internal sealed record PlannedFeed(Joint Joined, ImmutableArray<SourcePart> Parts, string? Lead, List<int> Loads);
