using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>A feed whose outlets, and at first its loads, are still to be named.</summary>
/// <param name="Joined">How its outlets are joined.</param>
/// <param name="Volts">The voltage that draws are computed with.</param>
/// <param name="Parts">The feed's outlets and their settings, one or two.</param>
/// <param name="Lead">The id of its lead; null for a plain straight one.</param>
/// <param name="Groups">The groups of its loads, once for each load.</param>
internal sealed record PlannedFeed(Joint Joined, Volts Volts, ImmutableArray<SourcePart> Parts, string? Lead, List<LoadGroup> Groups)
{
    /// <summary>The places of the feed's loads in the rig, ascending.</summary>
    public List<int> Loads { get; } = [];
}
