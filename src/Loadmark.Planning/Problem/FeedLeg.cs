using System.Collections.Immutable;

namespace Loadmark.Planning.Problem;

/// <summary>The outlets of which one (or one pair side by side) stands in one place of a feed: all at one voltage.</summary>
/// <param name="Parts">The outlets; the limits of those that have one are counted alike.</param>
/// <param name="Limits">For each of them what it can give; null where nothing tells, and then for all.</param>
internal sealed record FeedLeg(ImmutableArray<SourcePart> Parts, ImmutableArray<SourceLimit?> Limits)
{
    /// <summary>The voltage that the draws of the leg's loads are computed with.</summary>
    public Volts Volts => Parts[0].Setting.Basis;

    /// <summary>How draws count against the limits of the leg's outlets; null where nothing tells the limits.</summary>
    public DrawScale? Scale => Limits[0]?.Scale;
}
