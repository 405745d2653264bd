using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>
/// What leads for several loads, or with two outlets, may take from: sources that put the same on the plug and the loads on
/// the same kind of return, and differ in size only. Which of them it is, the model chooses apart from the loads; so the
/// loads are counted once for a class and not for every outlet in it.
/// </summary>
/// <param name="Joined">How outlets are joined.</param>
/// <param name="Point">What stands at the plug.</param>
/// <param name="SharedReturn">The return it shares with other outlets; null when it has its own.</param>
/// <param name="Legs">One, or for outlets in series two.</param>
/// <param name="MustBeCertain">Whether only what is known to suit a load may feed it from here.</param>
internal sealed record FeedClass(Joint Joined, FeedPoint Point, string? SharedReturn, ImmutableArray<FeedLeg> Legs, bool MustBeCertain)
{
    /// <summary>The voltage that draws are computed with.</summary>
    public Volts Volts => Point.Volts ?? Legs[0].Volts;

    /// <summary>What counts in the objective when a load is fed from the class; null when the load must not be.</summary>
    public LoadCost? CostOf(LoadGroup load, LeadEnds lead) =>
        Legs.Any(leg => leg.Parts[0].Group.Bars(load)) ? null : lead.CostOf(Point, load.Rating, MustBeCertain);

    /// <summary>Whether several loads may be put on the class: every limit is known.</summary>
    public bool AllowsSeveral => Legs.All(static leg => leg.Scale is not null);

    /// <summary>Whether the two legs choose from the same outlets, so that exchanging the two is no other choice.</summary>
    public bool LegsAreAlike => Legs is [var first, var second] && ReferenceEquals(first, second);

    /// <summary>The first outlet of each leg; where something is plugged in now, there is no other sort.</summary>
    public ImmutableArray<SourcePart> FirstParts => [.. Legs.Select(static leg => leg.Parts[0])];

    /// <summary>How many outlets of a group one choice takes in one leg.</summary>
    public int OutletsALeg => Joined == Joint.Parallel ? 2 : 1;
}
