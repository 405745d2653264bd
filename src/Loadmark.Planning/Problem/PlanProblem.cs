using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>A rig as a plan sees it: groups of alike loads and outlets, leads and limits.</summary>
internal sealed record PlanProblem
{
    /// <summary>The rig with its pinned feeds only.</summary>
    public required WiredRig Pinned { get; init; }

    /// <summary>The loads that no pinned feed feeds.</summary>
    public required ImmutableArray<LoadGroup> Loads { get; init; }

    /// <summary>The outlets that may be used.</summary>
    public required ImmutableArray<OutletGroup> Outlets { get; init; }

    /// <summary>Every outlet at every setting.</summary>
    public required ImmutableArray<Source> Singles { get; init; }

    /// <summary>Leads that make feeds of their own kind.</summary>
    public required ImmutableArray<LeadSlot> Slots { get; init; }

    /// <summary>For each kind of slot the ids of its leads, one for each slot.</summary>
    public required ImmutableArray<ImmutableArray<string>> SlotLeads { get; init; }

    /// <summary>Leads for one load that do more than a plain one.</summary>
    public required ImmutableArray<SingleLead> SingleLeads { get; init; }

    /// <summary>For each return of a pooled problem how many returns it stands for; those that are not here stand for themselves.</summary>
    public ImmutableDictionary<string, int> ReturnCounts { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Whether outlets, leads and totals stand for several that are alike.</summary>
    public bool IsPooled { get; init; }

    /// <summary>Supplies that are alike, side by side: for each the groups of its outlets.</summary>
    public required ImmutableArray<ImmutableArray<ImmutableArray<OutletGroup>>> AlikeSupplies { get; init; }

    /// <summary>Limits of supplies and banks.</summary>
    public required ImmutableArray<TotalLimit> Totals { get; init; }

    /// <summary>
    /// Where loads are plugged in now, by their places in the rig, where as few of them as possible are to be moved; null where that does
    /// not count.
    /// </summary>
    public ImmutableDictionary<int, LoadHome>? Homes { get; init; }

    /// <summary>
    /// Whether wirings may be missed, so that nothing is proven: two outlets of which one has several loads now are not looked at side by
    /// side, and a lead that is in more feeds now than there are of it is left in the first.
    /// </summary>
    public bool IsNarrowed { get; init; }

    /// <summary>All leads that can stand in for one another with a lead; null for a plain one.</summary>
    /// <param name="lead">The id of a lead.</param>
    public ImmutableArray<string>? LeadsLike(string? lead)
    {
        if (lead is null)
            return null;
        foreach (var ids in SlotLeads.Concat(SingleLeads.Select(static single => single.Ids)))
        {
            if (ids.Contains(lead))
                return ids;
        }

        return null;
    }

    /// <summary>For each load that is in a group, by its place in the rig, that group.</summary>
    public Dictionary<int, LoadGroup> GroupsOfLoads() =>
        Loads.SelectMany(static group => group.Members.Select(member => (member, group)))
            .ToDictionary(static pair => pair.member, static pair => pair.group);

    /// <summary>For each shared return the loads that pinned feeds put on it.</summary>
    public required ImmutableDictionary<string, ImmutableArray<WiredLoad>> PinnedOnReturn { get; init; }

    /// <summary>Whether no return may have a finding of noise.</summary>
    public bool IsQuiet { get; init; }

    /// <summary>What the pinned loads on a shared return are to others that might come to it.</summary>
    /// <param name="shared">The return.</param>
    public IEnumerable<Occupant> PinnedOccupants(string shared)
    {
        var audio = new SignalPath(Pinned.Rig);
        return PinnedOnReturn.GetValueOrDefault(shared, [])
            .Select(load => IsQuiet ? audio.OccupantOf(load).KeptApart : audio.OccupantOf(load));
    }
}
